// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/findings_gauge.hpp"

#include "desk/frame/mixed_ink.hpp"
#include "desk/frame/theme.hpp"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
constexpr double kBeyond = 1.2; // the scale ends a fifth above the largest figure
} // namespace

Gauge Gauge::of(const Finding& f) {
    const double values[] = {f.measured, f.limit.lo, f.limit.hi};
    if (!std::all_of(std::begin(values), std::end(values),
                     [](double v) { return std::isfinite(v); }))
        return {};
    const double least = std::min(0.0, *std::min_element(std::begin(values), std::end(values)));
    const double most = *std::max_element(std::begin(values), std::end(values)) * kBeyond;
    if (most <= least) return {};
    const auto at = [&](double v) { return (v - least) / (most - least); };
    return {true, f.limit.band, at(f.measured), at(f.limit.lo), at(f.limit.hi)};
}

void paintGauge(QPainter& p, const QRectF& room, const Gauge& gauge, const QColor& colour,
                const Inks& k) {
    if (!gauge.shown) return;
    const auto x = [&](double part) { return room.left() + part * room.width(); };
    const double y = std::round(room.center().y());
    const QColor track = k.highContrast ? mixedInk(k.paper, k.ink, 0.25) : k.line;
    p.fillRect(QRectF(room.left(), y - 2, room.width(), 4), track);
    if (gauge.band) {
        p.fillRect(QRectF(x(gauge.lo), y - 2, x(gauge.hi) - x(gauge.lo), 4), k.quiet);
        p.fillRect(QRectF(x(gauge.lo) - 0.5, y - 5, 1, 10), k.quiet);
        p.fillRect(QRectF(x(gauge.hi) - 0.5, y - 5, 1, 10), k.quiet);
    } else {
        p.fillRect(QRectF(room.left(), y - 2, x(gauge.measured) - room.left(), 4), colour);
        p.fillRect(QRectF(x(gauge.hi) - 1, y - 6, 2, 12), k.ink);
    }
    const double m = x(gauge.measured);
    const QPointF plumb[] = {{m - 4, y - 7}, {m + 4, y - 7}, {m, y - 1}};
    p.setPen(Qt::NoPen);
    p.setBrush(colour);
    p.drawPolygon(plumb, 3);
    p.setBrush(Qt::NoBrush);
}

} // namespace bw
