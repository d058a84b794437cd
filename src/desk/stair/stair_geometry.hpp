// SPDX-License-Identifier: GPL-3.0-or-later
// From effort to pixels. A step is as high as its RPE, 10 less the repetitions in reserve, from
// the floor at 0; so the stair is drawn true, and can be read off the ruler on its left.
#pragma once
#include "blockwright/model/effort.hpp"

#include <QFont>
#include <QPointF>
#include <QRectF>

namespace bw {

struct StairGeometry {
    QRectF plot; // the steps, from RPE 10 down to the floor
    double week = 0;
    int weeks = 0;

    [[nodiscard]] double yOf(Rir rir) const;
    [[nodiscard]] Rir rirAt(double y) const; // to the nearest half
    [[nodiscard]] QRectF column(int week) const;
    [[nodiscard]] QRectF step(int week, Rir rir) const; // from its tread to the floor
    [[nodiscard]] int weekAt(QPointF point) const;      // -1: beside the steps

    // Words on a step: the week's name, its rounds, its intent; above its tread the effort.
    enum class Line { Effort, Name, Rounds, Intent };
    [[nodiscard]] QRectF line(int week, Rir rir, Line line, const QFont& font) const;
};

[[nodiscard]] StairGeometry stairGeometry(QRectF area, int left, int week, int weeks,
                                          const QFont& font);

} // namespace bw
