// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ramp/session_load.hpp"

#include "blockwright/time/timing.hpp"
#include "core/ledger/decimals.hpp"
#include "core/model/weeks.hpp"

#include <cmath>

namespace bw {

namespace {
constexpr int kDaysAWeek = 7;
constexpr double kRpeOfNoReserve = 10; // Zourdos et al., J Strength Cond Res 2016;30(1):267-275

double rpeOf(Rir rir) { return kRpeOfNoReserve - rir.reps(); }

SessionWeek plannedWeek(const Gym& gym, const Block& block, Week week) {
    SessionWeek out;
    out.week = week;
    out.minutes = seconds(timeSession(gym.settings, gym.shelf, block, week).total.planned) / 60;
    out.rpe = rpeOf(block.step(week).rir);
    return out;
}

// The sets of one day that said how many were in reserve.
struct Day {
    int sets = 0, said = 0;
    double rpe = 0; // summed
};

std::map<Date, Day> daysIn(const Block& block, std::span<const LiftResult> results) {
    std::map<Date, Day> days;
    for (const LiftResult& r : results) {
        if (r.date.month() != block.month) continue;
        Day& day = days[r.date];
        ++day.sets;
        if (!r.rir) continue;
        ++day.said;
        day.rpe += rpeOf(*r.rir);
    }
    return days;
}

void fill(SessionWeek& week, const DaysOfWeek& span, const std::map<Date, Day>& days) {
    const double planned = week.rpe;
    std::vector<double> loads;
    double rpes = 0;
    for (Date date = span.from; date < span.to; date = date.plusDays(1)) {
        const auto it = days.find(date);
        if (it == days.end()) {
            loads.push_back(0);
            continue;
        }
        const Day& day = it->second;
        const double rpe = day.said > 0 ? day.rpe / day.said : planned;
        week.reckoned += day.said > 0 ? 0 : 1;
        ++week.visits;
        rpes += rpe;
        loads.push_back(week.minutes * rpe);
    }
    week.days = static_cast<int>(loads.size());
    week.rpe = week.visits > 0 ? rpes / week.visits : 0;
    week.load = weekLoad(loads);
}
} // namespace

WeekLoad weekLoad(std::span<const double> days) {
    WeekLoad out;
    if (days.empty()) return out;
    const auto count = static_cast<double>(days.size());
    for (const double day : days) out.total += day;
    out.mean = out.total / count;
    double squares = 0;
    bool alike = true;
    for (const double day : days) {
        squares += (day - out.mean) * (day - out.mean);
        alike = alike && day == days.front();
    }
    if (alike) return out;
    out.deviation = std::sqrt(squares / count);
    out.monotony = out.mean / out.deviation;
    out.strain = out.total * *out.monotony;
    return out;
}

std::vector<SessionWeek> plannedLoads(const Gym& gym, const Block& block) {
    std::vector<SessionWeek> out;
    for (const Week week : weeksOf(block)) {
        SessionWeek w = plannedWeek(gym, block, week);
        w.visits = block.visitsPerWeek;
        std::vector<double> days(kDaysAWeek, 0.0);
        for (int i = 0; i < w.visits; ++i)
            days[static_cast<std::size_t>(i % kDaysAWeek)] += w.minutes * w.rpe;
        w.load = weekLoad(days);
        out.push_back(w);
    }
    return out;
}

std::vector<SessionWeek> memberLoads(const Gym& gym, const Block& block,
                                     std::span<const LiftResult> results) {
    const auto days = daysIn(block, results);
    std::vector<SessionWeek> out;
    for (const Week week : weeksOf(block)) {
        SessionWeek w = plannedWeek(gym, block, week);
        fill(w, daysOf(block, week), days);
        out.push_back(w);
    }
    return out;
}

std::vector<Message> loadCaveats(const Block& block) {
    std::vector<Message> out{
        {"Minutes times effort say how much of a strain a week was felt to be. They are for "
         "information: no limit is known that holds for everybody.",
         {}},
        {"Effort is reckoned as 10 less the repetitions in reserve, not asked half an hour after "
         "the session, as the method has it.",
         {}}};
    std::vector<double> days(kDaysAWeek, 0.0);
    for (int i = 0; i < block.visitsPerWeek; ++i)
        days[static_cast<std::size_t>(i % kDaysAWeek)] += 1;
    if (const auto monotony = weekLoad(days).monotony)
        out.push_back({"With %1 like sessions a week monotony is always %2, so it says next to "
                       "nothing here.",
                       {std::to_string(block.visitsPerWeek), decimals(*monotony, 2)}});
    return out;
}

} // namespace bw
