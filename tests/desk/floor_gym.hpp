// SPDX-License-Identifier: GPL-3.0-or-later
// A class of six that queues for one sled, and the Floor over it.
//
//   opening 3:00, closing 2:00 (the gym's usual), a class of 20 minutes
//   A  2 rounds of 8 squats, 30 s rest
//   B  2 rounds of 60 s with the sled and 10 presses, 60 s rest; C  2 rounds of 10 rows, 60 s rest
//   warm-up: A; strength: 1 min of talk, B, C, all together
#pragma once
#include "desk/floor/floor_runner.hpp"
#include "desk/rail_gym.hpp"
#include "edit/block_verbs.hpp"
#include "support/catch.hpp"

#include <QTest>

namespace bw::test {

inline Gym queueGym(int sleds = 1) {
    Gym gym;
    gym.settings.name = "Tide Mill";
    gym.settings.classMinutes = 20;
    gym.settings.places = 6;
    gym.put(KitItem{kit("sled"), "Sled", sleds, Claim::Set, {}, {}, {}, {}});
    Exercise push = exercise("sled-push", Pattern::Squat, 1);
    push.name = "Sled push";
    push.needs = {{{kit("sled"), 1, {}}}};
    gym.shelf.put(push);
    for (const char* id : {"squat", "press", "row"})
        gym.shelf.put(exercise(id, Pattern::HorizontalPush));
    Section warmUp =
        section(SectionKind::WarmUp,
                {group(rounds(2, 2), secondsRange(30, 30), {slot("squat", reps(8, 8))})});
    Section strength =
        section(SectionKind::Strength,
                {group(rounds(2, 2), secondsRange(60, 60),
                       {slot("sled-push", reps(60, 60)), slot("press", reps(10, 10))}),
                 group(rounds(2, 2), secondsRange(60, 60), {slot("row", reps(10, 10))})});
    strength.talk = Millis{60'000};
    gym.put(block("2026-09", {warmUp, strength}));
    return gym;
}

struct FloorGym : RailGym {
    explicit FloorGym(Gym gym = queueGym()) : RailGym(std::move(gym)), runner(*draft, kRuns) {}
    static constexpr int kRuns = 200;
    // Until all that was asked for has been played.
    bool played() {
        const bool settled = QTest::qWaitFor([&] { return runner.settled(); }, 30'000);
        QCoreApplication::processEvents(); // what was just told is shown
        return settled && !runner.behind();
    }
    // What the terminal would say.
    [[nodiscard]] FloorAnswer answer(FloorOptions options = {}) const {
        options.week = draft->week();
        options.runs = kRuns;
        options.timeline = true;
        return simulateFloor(open->gym(), *draft->block(), options).value();
    }
    void retitle(const std::string& title) {
        REQUIRE(editBlock(*open, {month("2026-09"), {}}, {"title", {}}, [&](Block& b) {
                    b.title = title;
                }).ok());
    }
    void setSled(int units) {
        KitItem sled = *open->gym().findKit(kit("sled"));
        sled.units = units;
        REQUIRE(open->change({{"kit", {}}, {PutKit{sled}}, {}, {}}).ok());
    }

    FloorRunner runner;
};

} // namespace bw::test
