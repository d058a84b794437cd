// SPDX-License-Identifier: GPL-3.0-or-later
// A short class whose every time can be added up by hand, and the draft of it.
//
//   opening 3:00, closing 2:00 (the gym's usual)
//   A  2 rounds of 8 squats at 3 s, 30 s rest                             78 s
//   B  2-3 rounds of 5 squats and 10 presses at 3 s, 60-120 s rest        150 s, 247.5 s, 375 s
//   C  2 rounds of 10 rows at 3 s and an open slot, 60 s rest             120 s
//   warm-up: A, budget 1-2 min; strength: 1 min of talk, B, its rest, C, budget 7-8 min
#pragma once
#include "desk/bench/draft.hpp"
#include "edit/memory_file.hpp"
#include "support/fixtures.hpp"

#include <memory>

namespace bw::test {

inline Gym railGymOf(int classMinutes) {
    Gym gym;
    gym.settings.classMinutes = classMinutes;
    gym.shelf.put(exercise("squat", Pattern::Squat));
    gym.shelf.put(exercise("press", Pattern::HorizontalPush));
    gym.shelf.put(exercise("row", Pattern::HorizontalPull));
    Section warmUp =
        section(SectionKind::WarmUp,
                {group(rounds(2, 2), secondsRange(30, 30), {slot("squat", reps(8, 8))})});
    warmUp.budget = secondsRange(60, 120);
    Section strength =
        section(SectionKind::Strength,
                {group(rounds(2, 3), secondsRange(60, 120),
                       {slot("squat", reps(5, 5)), slot("press", reps(10, 10))}),
                 group(rounds(2, 2), secondsRange(60, 60), {slot("row", reps(10, 10)), Slot{}})});
    strength.talk = Millis{60'000};
    strength.budget = secondsRange(420, 480);
    Block b = block("2026-09", {warmUp, strength});
    b.title = "Low tide";
    gym.put(b);
    return gym;
}

struct RailGym {
    explicit RailGym(int classMinutes = 20) : RailGym(railGymOf(classMinutes)) {}
    explicit RailGym(Gym gym) {
        auto owned = std::make_unique<MemoryFile>(std::move(gym));
        file = owned.get();
        open = OpenGym::over(std::move(owned)).value();
        draft = std::make_unique<Draft>(*open);
    }
    [[nodiscard]] const Block& stored() const { return *open->gym().block(month("2026-09")); }

    MemoryFile* file = nullptr;
    std::unique_ptr<OpenGym> open;
    std::unique_ptr<Draft> draft;
};

} // namespace bw::test
