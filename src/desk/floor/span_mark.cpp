// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/span_mark.hpp"

#include <QPainter>

#include <algorithm>

namespace bw {

void paintSpanMark(QPainter& painter, double p10, double p50, double p90, double y,
                   const QColor& ink, const QColor& ground) {
    constexpr double kHalf = kSpanMarkHigh / 2;
    const double wide = std::max(p90 - p10, 4.0); // a steady class is a dot
    const QRectF box((p10 + p90 - wide) / 2, y - kHalf, wide, kSpanMarkHigh);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    painter.drawRoundedRect(box, kHalf, kHalf);
    painter.setBrush(Qt::NoBrush);
    if (wide < 8) return;
    painter.fillRect(QRectF(p50 - 1, box.top(), 2, box.height()), ground);
}

} // namespace bw
