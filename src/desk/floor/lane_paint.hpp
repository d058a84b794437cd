// SPDX-License-Identifier: GPL-3.0-or-later
// The picture of the lanes: from minutes to pixels, and ink.
//
//   names      of the sections, over where they last
//   ruler      minutes
//   lanes      each with the brackets of the groups above its sets; the first set of a round is as
//              high as the lane, each further one a step lower; waits are hatched, rests light
//   gutter     the members' numbers, left of all
//
// Names, ruler and gutter stay where they are when the lanes are scrolled.
#pragma once
#include "desk/floor/lane_plan.hpp"
#include "desk/frame/theme.hpp"

#include <QFont>
#include <QRectF>

class QPainter;

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
[[nodiscard]] LaneGeometry laneGeometry(QRectF area, const LanePlan& plan, const QFont& font,
                                        double zoom);
[[nodiscard]] double laneHeightLeast(const QFont& font);
[[nodiscard]] double laneHeadHeight(const QFont& font); // names and ruler

struct LaneMarks {
    int lane = -1, piece = -1;         // where the keyboard is
    int overLane = -1, overPiece = -1; // where the pointer is
    bool focus = false;
};

// One mark by itself, for the legend.
enum class LaneMark { Sets, Wait, Rest, Through };
void paintLaneMark(QPainter& painter, LaneMark mark, const QRectF& box, const Inks& inks);

void paintLanes(QPainter& painter, const FloorView& view, const LanePlan& plan,
                const LaneGeometry& geometry, const LaneMarks& marks, const Inks& inks);

} // namespace bw
