// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/lane_geometry.hpp"

#include "desk/frame/paper.hpp"

#include <QFontMetricsF>

#include <array>
#include <cmath>

namespace bw {

namespace {
constexpr double kBeyond = 1.02; // room right of the last thing
} // namespace

double setShare(int slot) {
    constexpr std::array kStairs{1.0, 0.7, 0.5, 0.36};
    return kStairs[std::min(static_cast<std::size_t>(slot), kStairs.size() - 1)];
}

Millis LaneGeometry::time(double x) const {
    if (perMinute <= 0) return Millis{0};
    return Millis{std::llround((x - lanes.left() + scrolledX) / perMinute * 60'000)};
}

int LaneGeometry::laneAt(double y) const {
    return high > 0 ? static_cast<int>(std::floor((y - lanes.top() + scrolledY) / high)) : -1;
}

QRectF LaneGeometry::pieceRect(int index, const LanePiece& piece) const {
    QRectF box(x(piece.from), top(index) + bracket + 1, x(piece.to) - x(piece.from),
               high - bracket - 3);
    if (piece.kind == LanePiece::Kind::Set) {
        box.setTop(box.bottom() - std::round(box.height() * setShare(piece.place.slot)));
    }
    if (piece.kind == LanePiece::Kind::Set || piece.kind == LanePiece::Kind::Hold)
        box.setWidth(std::max(box.width() - 0.75, 1.0)); // neighbours don't run together
    return box;
}

LaneGeometry laneGeometry(QRectF area, const LanePlan& plan, double names, const QFont& font,
                          double zoom) {
    const double small = QFontMetricsF(smallFont(font)).height();
    const bool kit = plan.order == LaneOrder::Kit;
    LaneGeometry g;
    g.gutter = std::ceil(std::min(names, area.width() / 4) + 12);
    g.names = QRectF(area.left(), area.top(), area.width(), std::ceil(small + 7));
    g.ruler = QRectF(area.left(), g.names.bottom(), area.width(), std::ceil(small + 4));
    g.lanes = area.adjusted(g.gutter, g.names.height() + g.ruler.height(), 0, 0);
    const auto count = static_cast<double>(std::max<std::size_t>(1, plan.lanes.size()));
    const double least = std::ceil(kit ? small + 5 : 2 * small + 2);
    g.high = std::floor(std::clamp(g.lanes.height() / count, least, least * 1.7));
    g.bracket = kit ? 1 : std::floor(small * 0.95);
    const double minutes = static_cast<double>(plan.latest().count()) / 60'000 * kBeyond;
    if (minutes > 0) g.perMinute = g.lanes.width() / minutes * zoom;
    return g;
}

} // namespace bw
