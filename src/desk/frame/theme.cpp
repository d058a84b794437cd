// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/theme.hpp"

#include "desk/frame/ink_style.hpp"

#include <QApplication>
#include <QCoreApplication>

namespace bw {

namespace {
constexpr QRgb kOrange = 0xffE69F00, kSkyBlue = 0xff56B4E9, kBluishGreen = 0xff009E73,
               kReddishPurple = 0xffCC79A7;

QPalette g_system; // as the desktop gave it

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

const Inks& inksOf(bool dark) {
    static const Inks light{
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
    static const Inks dark_{
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
        .onSection = {QColor(0x1F1016), QColor(0x1F1600), QColor(0x00140E), QColor(0x06202E)}};
    return dark ? dark_ : light;
}

const Inks& inks() {
    return inksOf(QApplication::palette().color(QPalette::Window).lightness() < 128);
}

void applyTheme(QApplication& app, Theme theme) {
    static const bool once = [] {
        g_system = QApplication::palette();
        return true;
    }();
    (void)once;
    const bool systemDark = g_system.color(QPalette::Window).lightness() < 128;
    QApplication::setStyle(new InkStyle); // the application owns it
    app.setPalette(paletteOf(inksOf(theme == Theme::System ? systemDark : theme == Theme::Dark)));
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
