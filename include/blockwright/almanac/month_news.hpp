// SPDX-License-Identifier: GPL-3.0-or-later
// What is new in a month against the latest one before it that the gym has.
#pragma once
#include "blockwright/model/gym.hpp"
#include "blockwright/model/place.hpp"

#include <optional>
#include <vector>

namespace bw {

struct NewsLine {
    ExerciseId exercise;
    Place place;                // the first slot that takes it
    bool changed = false;       // not in the month before
    bool fresh = false;         // in no month before at all
    int mainStreak = 0;         // calendar months in a row as a main lift, this one included
    std::optional<Month> since; // with changed: the month that had it last; none: fresh
    bool operator==(const NewsLine&) const = default;
};

struct MonthNews {
    std::optional<Month> previous; // compared with; none: this is the first, and nothing is new
    std::vector<NewsLine> lines;   // one an exercise, in order of the session
    std::vector<ExerciseId> gone;  // in the previous month and not here, in its order
    bool formatChanged = false;
};

// The block need not be stored in the gym.
[[nodiscard]] MonthNews monthNews(const Gym& gym, const Block& block);

} // namespace bw
