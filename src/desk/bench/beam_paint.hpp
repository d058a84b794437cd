// SPDX-License-Identifier: GPL-3.0-or-later
// One beam in ink. The month is the beam with its weights, the window a dashed one behind it; a
// bracket beyond each end shows how far the month may tilt, a thin one how far the window may.
#pragma once
#include "desk/bench/beam_scale.hpp"
#include "desk/frame/theme.hpp"

#include <QFont>
#include <QRectF>

class QPainter;

namespace bw {

enum class BeamSide { None, Left, Right };

struct BeamGeometry {
    QRectF beam, sides, month, window; // from top to bottom
    QPointF pivot;
    double arm = 0; // from the pivot to where a weight hangs

    static BeamGeometry of(const QRectF& room, const QFont& small);
    // Where the end of an arm stands, so far from the pivot.
    [[nodiscard]] QPointF end(double tilt, double reach) const; // reach below 0: the left one
    [[nodiscard]] QRectF half(BeamSide side) const;             // to click
};

[[nodiscard]] int beamHeight(const QFont& small);
// `cursor`: the side that is framed.
void paintBeam(QPainter& painter, const BeamScale& scale, const BeamGeometry& geometry,
               const QFont& small, BeamSide cursor, const Inks& inks);

} // namespace bw
