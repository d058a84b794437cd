// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/head_counts.hpp"

#include <algorithm>
#include <cstdint>
#include <functional>

namespace bw {

namespace {
// How many there are with at most `crowd` at each group; `most` + 1 stands for anything above
// `most`.
int countOf(int members, int groups, int crowd, int most) {
    std::vector<int> ways{1};
    ways.resize(static_cast<std::size_t>(members) + 1, 0);
    for (int g = 0; g < groups; ++g) {
        std::vector<int> next(ways.size(), 0);
        for (int m = 0; m <= members; ++m)
            for (int here = 0; here <= std::min(crowd, m); ++here)
                next[m] = std::min(next[m] + ways[m - here], most + 1);
        ways = std::move(next);
    }
    return ways[members];
}

// The largest that leaves at most `most` of them, and no less than an even start needs.
int largestCrowd(int members, int groups, int most) {
    int least = (members + groups - 1) / groups, largest = members;
    while (least < largest) {
        const int middle = least + (largest - least + 1) / 2;
        if (countOf(members, groups, middle, most) > most)
            largest = middle - 1;
        else
            least = middle;
    }
    return least;
}

void list(int left, int crowd, std::size_t group, std::vector<int>& counts,
          std::vector<std::vector<int>>& all) {
    const int groupsAfter = static_cast<int>(counts.size() - group) - 1;
    if (groupsAfter == 0) {
        if (left > crowd) return;
        counts[group] = left;
        all.push_back(counts);
        return;
    }
    for (int here = std::min(left, crowd); here >= 0; --here) {
        if (left - here > groupsAfter * crowd) break; // more than the others can hold
        counts[group] = here;
        list(left - here, crowd, group + 1, counts, all);
    }
}

std::int64_t unevenness(const std::vector<int>& counts) {
    std::int64_t sum = 0;
    for (const int n : counts) sum += std::int64_t{n} * n;
    return sum;
}
} // namespace

HeadCounts headCounts(int members, int groups, int most) {
    const int crowd = largestCrowd(members, groups, most);
    HeadCounts out;
    out.complete = crowd == members;
    std::vector<int> counts(static_cast<std::size_t>(groups), members / groups);
    for (int g = 0; g < members % groups; ++g) ++counts[g];
    if (out.complete || countOf(members, groups, crowd, most) <= most)
        list(members, crowd, 0, counts, out.all);
    else
        out.all.push_back(counts); // even with no crowd at all too many: the even one
    if (!out.complete) {
        std::vector<int> together{members};
        together.resize(static_cast<std::size_t>(groups), 0);
        out.all.push_back(std::move(together));
    }
    std::ranges::stable_sort(out.all, std::less{}, unevenness);
    return out;
}

} // namespace bw
