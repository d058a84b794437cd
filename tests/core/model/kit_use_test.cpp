// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/kit_use.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
KitItem item(const char* id, int units) {
    return {.id = kit(id),
            .name = id,
            .units = units,
            .claim = Claim::Group,
            .loads = {},
            .bar = {},
            .plates = {},
            .extras = {}};
}
Exercise with(const char* id, KitNeeds needs) {
    Exercise e = exercise(id, Pattern::Squat);
    e.needs = std::move(needs);
    return e;
}
KitNeed need(const char* id, int count = 1) { return {kit(id), count, {}}; }

// A goblet squat with a bell or a dumbbell, a press with two dumbbells and a bench, a jump.
Gym smallGym() {
    Gym gym;
    for (const KitItem& i : {item("bell", 4), item("dumbbell", 4), item("bench", 1)}) gym.put(i);
    gym.shelf.put(with("goblet", {{need("bell")}, {need("dumbbell")}}));
    gym.shelf.put(with("press", {{need("dumbbell", 2), need("bench")}}));
    gym.shelf.put(with("jump", {}));
    Exercise old = with("old-press", {{need("dumbbell", 2)}});
    old.retired = true;
    gym.shelf.put(old);
    gym.put(block(
        "2026-09",
        {section(SectionKind::Strength,
                 {group(rounds(2, 2), secondsRange(60, 60),
                        {slot("goblet", reps(8, 8)), slot("old-press", reps(8, 8)), Slot{}})})}));
    return gym;
}
} // namespace

TEST_CASE("Exercises that can use kit are told from those that need it; retired ones don't count") {
    const auto uses = kitUses(smallGym().shelf);
    CHECK(uses.at(kit("bell")) == KitUse{1, 0});
    CHECK(uses.at(kit("dumbbell")) == KitUse{2, 1});
    CHECK(uses.at(kit("bench")) == KitUse{1, 1});
    CHECK(uses.size() == 3);
}

TEST_CASE("What goes with kit is what nothing else can do, in the Shelf and in the months") {
    const Gym gym = smallGym();
    CHECK(lossBy(gym, item("bell", 0)).nothing());
    CHECK(lossBy(gym, item("dumbbell", 5)).nothing());
    const KitLoss one = lossBy(gym, item("dumbbell", 1)); // two are needed
    REQUIRE(one.exercises.size() == 1);
    CHECK(one.exercises[0]->id == ex("press"));
    CHECK(one.slots == std::map<Month, std::vector<Place>>{{month("2026-09"), {{0, 0, 1}}}});
}

TEST_CASE("What the gym could not do before is no loss") {
    Gym gym = smallGym();
    gym.put(item("bench", 0));
    const KitLoss loss = lossBy(gym, item("dumbbell", 0));
    CHECK(loss.exercises.empty());
    CHECK(loss.slots.size() == 1); // the retired one of the month
}
