// SPDX-License-Identifier: GPL-3.0-or-later
// Which groups stand on which page, and how far down. Whole sections stay together while they fit
// on a page, whole groups always unless one alone is longer than a page.
#pragma once
#include "sheets/wall/wall_boxes.hpp"

#include <vector>

namespace bw {

struct WallPiece {
    int section = 0;
    int group = -1;                    // -1: the section has none, its name stands alone
    std::size_t first = 0, end = 0;    // rows
    bool head = false;                 // the section's name stands here
    bool again = false;                // and has stood on an earlier page
    bool opens = true, closes = true;  // the group begins, ends here
    double gap = 0;                    // above; may be stretched
    double headHeight = 0, height = 0; // height without gap and head; may be stretched
    double top = 0;                    // of its head, down from the top of the body
};
// A piece never goes over its page, but for a row that alone is longer.
using WallPages = std::vector<std::vector<WallPiece>>;

struct WallRoom { // height of the body
    double firstPage = 0, laterPages = 0;
};

[[nodiscard]] bool fitsPages(const WallPages& pages, WallRoom room);
[[nodiscard]] WallPages wallFlow(const WallBoxes& boxes, const WallType& type, WallRoom room);

} // namespace bw
