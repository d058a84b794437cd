// SPDX-License-Identifier: GPL-3.0-or-later
// Where the lanes stand: from minutes to pixels.
//
//   names      of the sections, over where they last
//   ruler      minutes
//   lanes      with a gutter for their names at the left
//
// Names, ruler and gutter stay where they are when the lanes are scrolled.
#pragma once
#include "desk/floor/lane_plan.hpp"

#include <QFont>
#include <QRectF>

namespace bw {

struct LaneGeometry {
    QRectF names, ruler, lanes; // lanes: the room in which they are seen
    double gutter = 0;          // its width
    double high = 0;            // of one lane
    double bracket = 0;         // of it, for the brackets
    double perMinute = 0;       // pixels
    double scrolledX = 0, scrolledY = 0;

    [[nodiscard]] double x(Millis time) const {
        return lanes.left() - scrolledX + static_cast<double>(time.count()) / 60'000 * perMinute;
    }
    [[nodiscard]] Millis time(double x) const;
    [[nodiscard]] double top(int lane) const { return lanes.top() - scrolledY + lane * high; }
    [[nodiscard]] int laneAt(double y) const; // maybe one that is not there
    [[nodiscard]] QRectF pieceRect(int lane, const LanePiece& piece) const;
};

// Zoom 1: all of the class is as wide as the area; lanes are as high as fits, within limits.
// `names`: the widest name of a lane.
[[nodiscard]] LaneGeometry laneGeometry(QRectF area, const LanePlan& plan, double names,
                                        const QFont& font, double zoom);

// Of the room of a set: the first of a round is as high as the lane, each further one lower.
[[nodiscard]] double setShare(int slot);

} // namespace bw
