// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QColor>

namespace bw {

// 0: all of a, 1: all of b.
[[nodiscard]] inline QColor mixedInk(const QColor& a, const QColor& b, double ofB) {
    const auto part = [ofB](int x, int y) { return static_cast<int>(x + (y - x) * ofB + 0.5); };
    return {part(a.red(), b.red()), part(a.green(), b.green()), part(a.blue(), b.blue())};
}

} // namespace bw
