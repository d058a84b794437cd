// SPDX-License-Identifier: GPL-3.0-or-later
// One entry of the Shelf: what an exercise trains, what it asks of a body and of the gym, how long
// it takes, and its neighbours (easier, harder, swaps).
#pragma once
#include "blockwright/model/kit.hpp"
#include "blockwright/model/pace.hpp"
#include "blockwright/model/shares.hpp"

#include <array>
#include <map>
#include <string>
#include <vector>

namespace bw {

// 0 to 3 of each kind of demand: 0 none, 3 a main limit of the exercise.
class Demands {
public:
    // Level outside 0 to 3 is refused.
    Result<bool> set(Demand d, int level);
    [[nodiscard]] int operator[](Demand d) const { return level_[static_cast<std::size_t>(d)]; }
    bool operator==(const Demands&) const = default;

private:
    std::array<int, kCount<Demand>> level_{};
};

struct Exercise {
    ExerciseId id;
    std::string name; // 1 to 200 characters
    Shares<Pattern> patterns;
    Shares<Plane> planes; // may be none()
    std::map<MuscleId, Share> muscles;
    Sides sides = Sides::Both;
    std::vector<RoleId> roles;
    Demands demands;
    int skill = 1; // 1 anyone, 2 needs teaching, 3 needs weeks of coaching
    Pace pace;
    Millis setup{0}; // walk over, grab, adjust, before each set; 0 to 10 min
    KitNeeds needs;
    LoadId load;
    std::vector<ExerciseId> easier, harder, swaps;
    std::string noEasier, noHarder; // why the ladder ends here; empty: not said
    std::vector<std::string> cues, cautions;
    bool retired = false; // kept for the months that used it, no longer offered
    Extras extras;

    [[nodiscard]] bool hasRole(std::string_view role) const;
    bool operator==(const Exercise&) const = default;
};

// An exercise of which no more is said: both sides, skill 1, bodyweight, no kit, no patterns yet.
[[nodiscard]] Exercise blankExercise(ExerciseId id, std::string name, Pace pace);

} // namespace bw
