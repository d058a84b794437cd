// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/stair/stair_geometry.hpp"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
constexpr double kMostRpe = 10, kPad = 8, kOnStep = 3; // lines of words on a step
constexpr int kMostTenths = 100, kSnap = 5;
} // namespace

double StairGeometry::yOf(Rir rir) const {
    return plot.top() + plot.height() * rir.reps() / kMostRpe;
}

Rir StairGeometry::rirAt(double y) const {
    const double tenths = (y - plot.top()) / plot.height() * kMostTenths;
    const int snapped = static_cast<int>(std::lround(tenths / kSnap)) * kSnap;
    return Rir::fromTenths(std::clamp(snapped, 0, kMostTenths)).value();
}

QRectF StairGeometry::column(int n) const {
    return {plot.left() + n * week, plot.top(), week, plot.height()};
}

QRectF StairGeometry::step(int n, Rir rir) const {
    QRectF out = column(n);
    out.setTop(yOf(rir));
    return out;
}

int StairGeometry::weekAt(QPointF point) const {
    if (point.x() < plot.left() || week <= 0) return -1;
    const int n = static_cast<int>((point.x() - plot.left()) / week);
    return n < weeks ? n : -1;
}

QRectF StairGeometry::line(int n, Rir rir, Line what, const QFont& font) const {
    const double high = QFontMetricsF(font).height();
    const double top = std::min(yOf(rir) + kPad / 2, plot.bottom() - kOnStep * high - kPad / 2);
    const QRectF words = column(n).adjusted(kPad, 0, -kPad, 0);
    const double y = what == Line::Effort   ? std::min(yOf(rir), top) - high - 2
                     : what == Line::Name   ? top
                     : what == Line::Rounds ? top + high
                                            : top + 2 * high;
    return {words.left(), y, words.width(), high};
}

StairGeometry stairGeometry(QRectF area, int left, int week, int weeks, const QFont& font) {
    const double head = QFontMetricsF(font).height() + kPad;
    return {QRectF(area.left() + left, area.top() + head, week * weeks,
                   std::max(1.0, area.height() - head - kPad)),
            static_cast<double>(week), weeks};
}

} // namespace bw
