// SPDX-License-Identifier: GPL-3.0-or-later
// Paper and ink: the colours of every screen, in a light and a dark set. Data colours are those of
// the colour-blind-safe palette of Okabe and Ito (Color Universal Design, 2008); no meaning hangs
// on colour alone. Text on its ground keeps 4.5:1 or more (WCAG 2.1, 1.4.3), and 7:1 (1.4.6) in
// the sets of high contrast, black on white and white on black; a test computes it.
#pragma once
#include "blockwright/model/vocabulary.hpp"
#include "blockwright/rules/finding.hpp"

#include <QColor>
#include <QPalette>

#include <array>
#include <functional>

class QApplication;

namespace bw {

struct Inks {
    QColor desk;                                                // behind the sheets of paper
    QColor paper;                                               // a sheet
    QColor ink;                                                 // text on paper or desk
    QColor quiet;                                               // lesser text on paper or desk
    QColor line;                                                // hairlines
    QColor accent;                                              // the one accent, on paper
    QColor onAccent;                                            // text on the accent
    QColor wash;                                                // selected rows
    QColor column;                                              // the column of places
    QColor onColumn;                                            // text on it
    QColor columnNow;                                           // the chosen place
    QColor wall;                                                // the class end
    std::array<QColor, 3> level;                                // by Level, as text on paper
    std::array<QColor, kCount<SectionKind>> section, onSection; // by SectionKind
    bool dark = false, highContrast = false;
    double stroke = 1; // pixels, of a line that carries meaning
};

// System follows the desktop: dark or not, high contrast or not. Contrast is dark where it is.
enum class Theme { System, Light, Dark, Contrast };

void applyTheme(QApplication& app, Theme theme);
// The set of the theme that was applied last; before that the one that goes with the palette.
[[nodiscard]] const Inks& inks();
[[nodiscard]] const Inks& inksOf(bool dark, bool highContrast = false);
// What the desktop gives a program that sets no colours of its own. A test may put another in.
[[nodiscard]] std::function<QPalette()>& desktopPalette();
// ■ ▲ ●
[[nodiscard]] QString levelShape(Level level);
[[nodiscard]] QString levelWord(Level level);

} // namespace bw
