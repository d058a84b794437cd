// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/exercise.hpp"

#include <algorithm>

namespace bw {

Result<Pace> Pace::of(Measure usual, Rates rates) {
    const Pace pace(usual, rates);
    if (!pace.times(usual))
        return Message{"An exercise measured in %1 needs its pace: %2.",
                       {std::string(wordOf(usual)), usual == Measure::Reps ? "seconds_per_rep"
                                                    : usual == Measure::Metres
                                                        ? "metres_per_second"
                                                        : "kcal_per_minute"}};
    return pace;
}

bool Pace::times(Measure m) const {
    switch (m) {
    case Measure::Reps: return rates_.secondsPerRep.has_value();
    case Measure::Seconds: return true;
    case Measure::Metres: return rates_.metresPerSecond.has_value();
    case Measure::Kcal: return rates_.kcalPerMinute.has_value();
    }
    return false;
}

Result<bool> Demands::set(Demand d, int level) {
    if (level < 0 || level > 3) return Message{"A demand must be from 0 to 3.", {}};
    auto& at = level_[static_cast<std::size_t>(d)];
    const bool changed = at != level;
    at = level;
    return changed;
}

bool Exercise::hasRole(std::string_view role) const {
    return std::any_of(roles.begin(), roles.end(),
                       [&](const RoleId& r) { return r.text() == role; });
}

Exercise blankExercise(ExerciseId id, std::string name, Pace pace) {
    return Exercise{.id = std::move(id),
                    .name = std::move(name),
                    .patterns = {},
                    .planes = {},
                    .muscles = {},
                    .sides = Sides::Both,
                    .roles = {},
                    .demands = {},
                    .skill = 1,
                    .pace = pace,
                    .setup = Millis{0},
                    .needs = {},
                    .load = LoadId::parse("bodyweight").value(),
                    .easier = {},
                    .harder = {},
                    .swaps = {},
                    .noEasier = {},
                    .noHarder = {},
                    .cues = {},
                    .cautions = {},
                    .retired = false,
                    .extras = {}};
}

} // namespace bw
