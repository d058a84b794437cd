// SPDX-License-Identifier: GPL-3.0-or-later
// What the rule book says of a draft. A finding names where, what was measured, the limit, where
// the limit comes from, and what to try.
#pragma once
#include "blockwright/model/gym.hpp"
#include "blockwright/model/message.hpp"
#include "blockwright/model/place.hpp"

#include <functional>
#include <string>
#include <vector>

namespace bw {

// Something to try. With an action the program can do it: a pure change of a copy of the draft.
struct Remedy {
    Message label;                      // an order: "Cut the rest to 60–90 s"
    std::function<void(Block&)> action; // empty: only the coach can
};

struct Finding {
    std::string rule; // "superset-work"
    Level level = Level::Note;
    Place place;
    std::vector<Place> also; // further rows it speaks of
    std::vector<int> weeks;  // in which weeks of the block, from 1
    double measured = 0;
    LimitValue limit;
    std::string limitName; // of the rule: "look_share"
    std::string unit;      // "s", "share", "reps", ""; of measured and limit
    Message basis;
    Message text;
    std::vector<Remedy> remedies;
    // Tells apart what one rule finds several times in one place: "pull". Else empty. A finding is
    // known again, from week to week and from draft to draft, by its rule, place and this.
    std::string about;
};

} // namespace bw
