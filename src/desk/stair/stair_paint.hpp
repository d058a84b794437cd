// SPDX-License-Identifier: GPL-3.0-or-later
// The drawing of the stair: a ruler of effort, steps, and what stands on them.
#pragma once
#include "blockwright/model/block.hpp"
#include "desk/frame/theme.hpp"
#include "desk/stair/stair_geometry.hpp"

#include <QString>

class QPainter;

namespace bw {

struct StairPicture {
    std::vector<StairStep> steps;
    std::vector<StairStep> stored; // dotted where they differ: a step is being moved
    int week = 0;                  // on show
    int hoverWeek = -1;            // whose words are under the mouse
    StairGeometry::Line hoverLine = StairGeometry::Line::Name;
    bool focus = false;
    QString note; // left of the ruler: what is odd, else what can be done
    bool odd = false;
};

void paintStair(QPainter& painter, const StairPicture& picture, const StairGeometry& geometry,
                const Inks& inks);

} // namespace bw
