// SPDX-License-Identifier: GPL-3.0-or-later
// A small scale with what was measured on it and the limit: a bar against a wall, or a pointer
// against a band.
#pragma once
#include "blockwright/rules/finding.hpp"

#include <QRectF>

class QColor;
class QPainter;

namespace bw {

struct Inks;

struct Gauge {
    bool shown = false;
    bool band = false;
    double measured = 0, lo = 0, hi = 0; // 0 to 1 along the scale

    static Gauge of(const Finding& finding);
    bool operator==(const Gauge&) const = default;
};

void paintGauge(QPainter& painter, const QRectF& room, const Gauge& gauge, const QColor& colour,
                const Inks& inks);

} // namespace bw
