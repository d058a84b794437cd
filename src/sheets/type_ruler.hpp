// SPDX-License-Identifier: GPL-3.0-or-later
// Widths and heights of text in millimetres. Measured once at a large size and scaled, so that a
// layout does not depend on the resolution of whatever paints it.
#pragma once
#include "sheets/page.hpp"

#include <QFont>
#include <QStringList>

#include <array>
#include <unordered_map>

namespace bw {

// Painter units of a font's size: hundredths of a millimetre, fine enough for whole numbers.
inline constexpr double kUnitsPerMm = 100.0;
// The font in which paintPage() writes, em in those units. Ligatures are off, to keep text
// searchable.
[[nodiscard]] QFont sheetFont(const QString& family, Type type);

class TypeRuler {
public:
    explicit TypeRuler(const QString& family);

    [[nodiscard]] double width(const QString& text, Type type) const;
    [[nodiscard]] QRectF inkBox(const QString& text,
                                Type type) const; // baseline's left end at 0, 0
    [[nodiscard]] double cap(double em) const { return cap_ * em; }
    [[nodiscard]] double emOfCap(double height) const { return height / cap_; }

    // At spaces; a word longer than the line after a hyphen, dash, slash or plus, failing that
    // anywhere. Fewest lines; Even ones then share the words. Nothing but the spaces at breaks is
    // dropped.
    enum class Lines { Even, Full };
    [[nodiscard]] QStringList wrap(const QString& text, Type type, double width,
                                   Lines lines = Lines::Even) const;

private:
    [[nodiscard]] QStringList pieces(const QString& word, Type type, double width) const;
    [[nodiscard]] QStringList fill(const QStringList& words, Type type, double width) const;

    std::array<QFont, 2> fonts_;                                        // by Weight
    double cap_ = 0;                                                    // of an em
    mutable std::array<std::unordered_map<QString, double>, 2> widths_; // of an em
    mutable std::array<std::unordered_map<QString, QRectF>, 2> boxes_;  // at the reference size
};

} // namespace bw
