// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "desk/frame/theme.hpp"

#include <QPainter>

namespace bw {

// A box in a colour that tells it from others. In high contrast the colour alone would be too weak
// on its ground, so a line goes round it.
inline void fillOutlined(QPainter& p, const QRectF& box, const QColor& colour, const Inks& k) {
    p.fillRect(box, colour);
    if (!k.highContrast || box.width() < 3) return;
    p.setPen(QPen(k.ink, 1));
    p.setBrush(Qt::NoBrush);
    p.drawRect(box.adjusted(0.5, 0.5, -0.5, -0.5));
}

} // namespace bw
