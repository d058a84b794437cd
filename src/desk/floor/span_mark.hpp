// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
class QColor;
class QPainter;

namespace bw {

// Where 8 in 10 simulated classes lie, with a notch at the half: the one mark for it on every
// picture. `y` is its middle.
void paintSpanMark(QPainter& painter, double p10, double p50, double p90, double y,
                   const QColor& ink, const QColor& ground);
inline constexpr double kSpanMarkHigh = 7;

} // namespace bw
