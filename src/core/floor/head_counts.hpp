// SPDX-License-Identifier: GPL-3.0-or-later
// All ways in which so many members can start at so many groups, by head count.
#pragma once
#include <vector>

namespace bw {

struct HeadCounts {
    std::vector<std::vector<int>> all; // the most even first
    bool complete = true;              // false: only those without a crowd, and all in one place
};

// There are C(members + groups - 1, groups - 1) of them; more than `most` are not made. Then the
// largest crowd at one group is bounded as little as it takes.
[[nodiscard]] HeadCounts headCounts(int members, int groups, int most);

} // namespace bw
