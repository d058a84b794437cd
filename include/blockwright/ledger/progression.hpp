// SPDX-License-Identifier: GPL-3.0-or-later
// The way up of an exercise that is loaded with the body alone: by repetitions within a window, at
// its end to the harder option of the Shelf and back to the start of the window.
//   window 5 to 10   below 5: easier option   5 or 6: stay   7: climb   8 to 10: harder option
#pragma once
#include "blockwright/model/gym.hpp"
#include "blockwright/model/message.hpp"

namespace bw {

enum class BodyMove { Easier, Stay, Climb, Harder };
template <> struct Spelling<BodyMove> {
    static constexpr std::array<std::string_view, 4> words{"easier", "stay", "climb", "harder"};
};

struct BodyStep {
    BodyMove move = BodyMove::Stay;
    Range<int> aim; // repetitions to aim at next time, of `option` if there is one
    const Exercise* option = nullptr; // to go over to; null: none fits, or none is due
    Message text;
};

// After `reps` were done. The option is the first that is offered on the Shelf, whose kit the gym
// has, and that no flag of the member (null: anybody) rules out. Whether the form was good enough
// for a harder option only the coach sees.
[[nodiscard]] BodyStep nextBodyStep(const Gym& gym, const Exercise& exercise, int reps,
                                    Range<int> window, const Member* member);

} // namespace bw
