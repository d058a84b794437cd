// SPDX-License-Identifier: GPL-3.0-or-later
// Session-RPE load: minutes of a session times how hard it was, 0 to 10; of a week the sum, with
// monotony (mean of the days over their standard deviation) and strain (sum times monotony). Foster
// C. Med Sci Sports Exerc 1998;30(7):1164-1168; Foster C et al. J Strength Cond Res
// 2001;15(1):109-115. For information: no limit of it is known that holds for everybody.
#pragma once
#include "blockwright/model/gym.hpp"
#include "blockwright/ramp/class_plan.hpp"

#include <span>
#include <vector>

namespace bw {

struct WeekLoad {
    double total = 0, mean = 0;
    double deviation = 0;                   // of all days of the week, rest days as 0
    std::optional<double> monotony, strain; // none where all days are alike
};
// One number a day. The deviation divides by the number of days, not by one less; Foster does not
// say which.
[[nodiscard]] WeekLoad weekLoad(std::span<const double> days);

struct SessionWeek {
    Week week = Week::first();
    int days = 7;
    int visits = 0;
    double minutes = 0; // of one session, as planned
    double rpe = 0;     // mean of the sessions; 10 less the repetitions in reserve
    int reckoned = 0;   // sessions of a member that wrote down no reserve and count as planned
    WeekLoad load;
};

// What each week asks: planned minutes, RPE by the stair, the visits of the month spread over the
// week.
[[nodiscard]] std::vector<SessionWeek> plannedLoads(const Gym& gym, const Block& block);
// What one member did in the month: each day with results is a session of the planned minutes, its
// RPE the mean of its sets. Results of other months are passed over.
[[nodiscard]] std::vector<SessionWeek> memberLoads(const Gym& gym, const Block& block,
                                                   std::span<const LiftResult> results);

// What these figures can't say, for the page that shows them.
[[nodiscard]] std::vector<Message> loadCaveats(const Block& block);

} // namespace bw
