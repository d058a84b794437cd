// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/ink.hpp"

#include <algorithm>
#include <cmath>

namespace bw {

QColor colourOf(Ink ink, bool blackAndWhite) {
    if (blackAndWhite) return ink == Ink::Tint ? QColor(Qt::white) : QColor(Qt::black);
    switch (ink) {
    case Ink::Text: return {0x1B, 0x1B, 0x1B};
    case Ink::Quiet: return {0x55, 0x55, 0x55};
    case Ink::Accent: return {0x0F, 0x6B, 0x6B};
    case Ink::Hair: return {0x8C, 0x8C, 0x8C};
    case Ink::Tint: break;
    }
    return {0xE4, 0xEF, 0xEE};
}

namespace {
double luminance(const QColor& c) {
    const auto linear = [](double v) {
        return v <= 0.03928 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}
} // namespace

double contrast(const QColor& a, const QColor& b) {
    const double la = luminance(a), lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

} // namespace bw
