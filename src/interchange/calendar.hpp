// SPDX-License-Identifier: GPL-3.0-or-later
// A month's classes for a calendar program: iCalendar, RFC 5545. One event a class, on the local
// clock of whoever reads it, with the session in its description. An event keeps its UID from one
// export to the next, so that a calendar brings it up to date rather than add it again.
#pragma once
#include "blockwright/model/gym.hpp"

#include <chrono>
#include <set>
#include <string>

namespace bw {

struct ClassTimes {
    std::set<unsigned> days;          // 1 Monday to 7 Sunday; none: usualDays()
    std::optional<Millis> start;      // after midnight; none: all day
    std::chrono::sys_seconds written; // now, UTC
};

// Spread over the week by the visits of the month: three are Monday, Wednesday, Friday (common
// practice, no source).
[[nodiscard]] std::set<unsigned> usualDays(int visitsPerWeek);
[[nodiscard]] std::string writeCalendar(const Gym& gym, const Block& block,
                                        const ClassTimes& times);

} // namespace bw
