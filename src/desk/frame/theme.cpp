// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/theme.hpp"

#include "desk/frame/ink_style.hpp"

#include <QApplication>
#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
constexpr QRgb kOrange = 0xffE69F00, kSkyBlue = 0xff56B4E9, kBluishGreen = 0xff009E73,
               kReddishPurple = 0xffCC79A7;

const Inks* g_inks = nullptr; // of the theme that was applied

QPalette paletteOf(const Inks& k) {
    QPalette p;
    p.setColor(QPalette::Window, k.desk);
    p.setColor(QPalette::WindowText, k.ink);
    p.setColor(QPalette::Base, k.paper);
    p.setColor(QPalette::AlternateBase, k.desk);
    p.setColor(QPalette::Text, k.ink);
    p.setColor(QPalette::PlaceholderText, k.quiet);
    p.setColor(QPalette::Button, k.paper);
    p.setColor(QPalette::ButtonText, k.ink);
    p.setColor(QPalette::BrightText, k.onAccent);
    p.setColor(QPalette::ToolTipBase, k.paper);
    p.setColor(QPalette::ToolTipText, k.ink);
    p.setColor(QPalette::Highlight, k.accent);
    p.setColor(QPalette::HighlightedText, k.onAccent);
    p.setColor(QPalette::Link, k.accent);
    p.setColor(QPalette::Mid, k.line);
    p.setColor(QPalette::Midlight, k.line);
    p.setColor(QPalette::Dark, k.line);
    p.setColor(QPalette::Light, k.paper);
    p.setColor(QPalette::Shadow, k.ink);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        p.setColor(QPalette::Disabled, role, k.quiet);
    return p;
}
} // namespace

namespace {
const Inks& lightInks() {
    static const Inks k{
        .desk = 0xF0EDE4,
        .paper = 0xFDFCF8,
        .ink = 0x1F2A30,
        .quiet = 0x56646B,
        .line = 0xCFC9BB,
        .accent = 0x0F6B6B,
        .onAccent = 0xFFFFFF,
        .wash = 0xE3EEEC,
        .column = 0x22333B,
        .onColumn = 0xDDE5E4,
        .columnNow = 0x0F6B6B,
        .wall = 0xA3231C,
        .level = {QColor(0xA3231C), QColor(0x8A5200), QColor(0x2F5F92)},
        .section = {QColor(kReddishPurple), QColor(kOrange), QColor(kBluishGreen),
                    QColor(kSkyBlue)},
        .onSection = {QColor(0x1F1016), QColor(0x1F1600), QColor(0x00140E), QColor(0x06202E)}};
    return k;
}

const Inks& darkInks() {
    static const Inks k{
        .desk = 0x151B1E,
        .paper = 0x1E2629,
        .ink = 0xECE8DD,
        .quiet = 0xA9B3B3,
        .line = 0x415055,
        .accent = 0x5CC0B7,
        .onAccent = 0x06201E,
        .wash = 0x25383A,
        .column = 0x0E1416,
        .onColumn = 0xC9D3D2,
        .columnNow = 0x1F5553,
        .wall = 0xF08A80,
        .level = {QColor(0xF08A80), QColor(0xE9B04A), QColor(0x8DBBEA)},
        .section = {QColor(kReddishPurple), QColor(kOrange), QColor(kBluishGreen),
                    QColor(kSkyBlue)},
        .onSection = {QColor(0x1F1016), QColor(0x1F1600), QColor(0x00140E), QColor(0x06202E)},
        .dark = true};
    return k;
}

// Lighter shades of the same four, for black words on them; what lies on white is outlined.
constexpr std::array<QRgb, 4> kBright{0xffEFB3D3, 0xffFFC04D, 0xff4FD6AC, 0xff8FD0F7};

const Inks& blackOnWhite() {
    static const Inks k{.desk = 0xFFFFFF,
                        .paper = 0xFFFFFF,
                        .ink = Qt::black,
                        .quiet = 0x333333,
                        .line = Qt::black,
                        .accent = 0x00308F,
                        .onAccent = 0xFFFFFF,
                        .wash = 0xFFE98A,
                        .column = Qt::black,
                        .onColumn = 0xFFFFFF,
                        .columnNow = 0x00308F,
                        .wall = 0x8B0000,
                        .level = {QColor(0x8B0000), QColor(0x5C3700), QColor(0x00308F)},
                        .section = {kBright[0], kBright[1], kBright[2], kBright[3]},
                        .onSection = {Qt::black, Qt::black, Qt::black, Qt::black},
                        .highContrast = true,
                        .stroke = 2};
    return k;
}

const Inks& whiteOnBlack() {
    static const Inks k{.desk = Qt::black,
                        .paper = Qt::black,
                        .ink = 0xFFFFFF,
                        .quiet = 0xD9D9D9,
                        .line = 0xFFFFFF,
                        .accent = 0xFFE14D,
                        .onAccent = Qt::black,
                        .wash = 0x333333,
                        .column = Qt::black,
                        .onColumn = 0xFFFFFF,
                        .columnNow = 0x00308F,
                        .wall = 0xFFB3AB,
                        .level = {QColor(0xFFB3AB), QColor(0xFFC04D), QColor(0x9CD3FF)},
                        .section = {kBright[0], kBright[1], kBright[2], kBright[3]},
                        .onSection = {Qt::black, Qt::black, Qt::black, Qt::black},
                        .dark = true,
                        .highContrast = true,
                        .stroke = 2};
    return k;
}

bool isDark(const QPalette& p) { return p.color(QPalette::Window).lightness() < 128; }

// WCAG 2.1, contrast ratio of relative luminances.
double contrastOf(const QColor& a, const QColor& b) {
    const auto part = [](double v) {
        return v <= 0.03928 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
    };
    const auto light = [&](const QColor& c) {
        return 0.2126 * part(c.redF()) + 0.7152 * part(c.greenF()) + 0.0722 * part(c.blueF());
    };
    const double x = light(a), y = light(b);
    return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
}

// Black and white, or nearly; 21 is the most there is. Common practice, no source: a plain desktop
// stays below 19, one for high contrast does not.
bool isHighContrast(const QPalette& p) {
    return contrastOf(p.color(QPalette::WindowText), p.color(QPalette::Window)) >= 19 &&
           contrastOf(p.color(QPalette::ButtonText), p.color(QPalette::Button)) >= 19;
}

// A palette of our own stands over the desktop's, so it must go for a moment.
QPalette readDesktop() {
    QApplication::setPalette(QPalette());
    return QApplication::palette();
}
} // namespace

const Inks& inksOf(bool dark, bool highContrast) {
    if (highContrast) return dark ? whiteOnBlack() : blackOnWhite();
    return dark ? darkInks() : lightInks();
}

const Inks& inks() { return g_inks ? *g_inks : inksOf(isDark(QApplication::palette())); }

std::function<QPalette()>& desktopPalette() {
    static std::function<QPalette()> read = readDesktop;
    return read;
}

void applyTheme(QApplication& app, Theme theme) {
    const QPalette desktop = desktopPalette()();
    const bool dark = theme == Theme::Dark || (theme != Theme::Light && isDark(desktop));
    const bool high =
        theme == Theme::Contrast || (theme == Theme::System && isHighContrast(desktop));
    g_inks = &inksOf(dark, high);
    QApplication::setStyle(new InkStyle); // the application owns it
    app.setPalette(paletteOf(*g_inks));
}

QString levelShape(Level level) {
    static constexpr std::array<char16_t, 3> shapes{u'■', u'▲', u'●'};
    return QString(QChar(shapes[static_cast<std::size_t>(level)]));
}

QString levelWord(Level level) {
    switch (level) {
    case Level::Stop: return QCoreApplication::translate("engine", "stop");
    case Level::Look: return QCoreApplication::translate("engine", "look");
    case Level::Note: return QCoreApplication::translate("engine", "note");
    }
    return {};
}

} // namespace bw
