// SPDX-License-Identifier: GPL-3.0-or-later
// Draws the rows of one page: section names, groups with their bracket, names and doses.
#pragma once
#include "sheets/page_pen.hpp"
#include "sheets/wall/wall_flow.hpp"

namespace bw {

struct WallPlan { // everything decided, nothing drawn yet
    WallStyle style;
    WallType type;
    WallColumns columns;
    WallBoxes boxes;
    WallPages pages;
    bool sound = false;     // nothing goes over its page, names have a width to stand in
    double columnHeads = 0; // height of the line that names tempo and effort; 0: none
};

// top: of the page's body, column heads included.
void drawWallRows(PagePen& pen, const WallContent& content, const WallPlan& plan, std::size_t page,
                  double top);

} // namespace bw
