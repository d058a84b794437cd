// SPDX-License-Identifier: GPL-3.0-or-later
// The picture of the lanes. Above a member's sets stand the letters of the groups, each with a line
// as long as the stay in it.
#pragma once
#include "desk/floor/lane_geometry.hpp"
#include "desk/frame/theme.hpp"

class QPainter;

namespace bw {

struct LaneMarks {
    int lane = -1, piece = -1;         // where the keyboard is
    int overLane = -1, overPiece = -1; // where the pointer is
    bool focus = false;
};

void paintLanes(QPainter& painter, const FloorView& view, const LanePlan& plan,
                const LaneGeometry& geometry, const LaneMarks& marks, const Inks& inks);
// The widest name of a lane.
[[nodiscard]] double laneNamesWidth(const FloorView& view, const LanePlan& plan, const QFont& font);

} // namespace bw
