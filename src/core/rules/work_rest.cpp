// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/work_rest.hpp"

#include <algorithm>

namespace bw {

namespace {
WorkRest row(int fromSeconds, int toSeconds, int least, int most) {
    return {Range<Millis>::between(Millis{fromSeconds * 1000}, Millis{toSeconds * 1000}),
            Range<int>::between(least, most)};
}
constexpr int kLongest = 2 * 60 * 60; // the longest dose
} // namespace

const std::array<WorkRest, 4>& workRestTable() {
    static const std::array<WorkRest, 4> rows{row(5, 10, 12, 20), row(15, 30, 3, 5),
                                              row(60, 180, 3, 4), row(180, kLongest, 1, 3)};
    return rows;
}

std::optional<Range<Millis>> restAfter(Millis work) {
    const auto& rows = workRestTable();
    const auto* const it = std::find_if(rows.begin(), rows.end(),
                                        [&](const WorkRest& r) { return r.work.holds(work); });
    if (it == rows.end()) return std::nullopt;
    return Range<Millis>::between(work * it->times.lo(), work * it->times.hi());
}

} // namespace bw
