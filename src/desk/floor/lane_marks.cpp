// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/lane_marks.hpp"

#include "desk/floor/lane_geometry.hpp"

#include <QPainter>

#include <cmath>

namespace bw {

QColor faint(QColor color, double alpha) {
    color.setAlphaF(static_cast<float>(alpha));
    return color;
}

QColor restInk(QColor section) { return faint(std::move(section), 0.2); }

QPixmap waitHatch(const QColor& ink, double scale) {
    constexpr int kSide = 6;
    QPixmap tile(QSize(kSide, kSide) * scale);
    tile.setDevicePixelRatio(scale);
    tile.fill(Qt::transparent);
    QPainter p(&tile);
    p.setRenderHint(QPainter::Antialiasing);
    p.setPen(QPen(ink, 1.3));
    for (const int shift : {-kSide, 0, kSide})
        p.drawLine(QPointF(shift - 1, kSide + 1), QPointF(shift + kSide + 1, -1));
    return tile;
}

void paintWait(QPainter& p, const QRectF& box, const QPixmap& hatch, const Inks& k) {
    p.setBrushOrigin(box.topLeft());
    p.fillRect(box, QBrush(hatch));
    p.setPen(QPen(k.wall, 1));
    if (box.width() > 3) p.drawRect(box.adjusted(0.5, 0.5, -0.5, -0.5));
}

void paintThrough(QPainter& p, const QRectF& box, const Inks& k) {
    p.setPen(QPen(k.quiet, 1, Qt::DotLine));
    const double y = std::round(box.bottom()) - 0.5;
    p.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
}

void paintWall(QPainter& p, double x, double top, double bottom, const Inks& k) {
    p.fillRect(QRectF(std::round(x) - 1, top, 2.5, bottom - top), k.wall);
}

void paintLaneMark(QPainter& p, LaneMark mark, const QRectF& box, const Inks& k) {
    const QColor ink = k.section[static_cast<std::size_t>(SectionKind::Strength)];
    const double half = box.width() / 2;
    switch (mark) {
    case LaneMark::Sets:
        p.fillRect(box.adjusted(0, 0, -half - 0.75, 0), ink);
        p.fillRect(box.adjusted(half, box.height() * (1 - setShare(1)), 0, 0), ink);
        return;
    case LaneMark::Wait:
        return paintWait(p, box, waitHatch(k.wall, p.device()->devicePixelRatioF()), k);
    case LaneMark::Rest: p.fillRect(box, restInk(ink)); return;
    case LaneMark::Through: return paintThrough(p, box, k);
    case LaneMark::Wall: return paintWall(p, box.center().x(), box.top(), box.bottom(), k);
    }
}

} // namespace bw
