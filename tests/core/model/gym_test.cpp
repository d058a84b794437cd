// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

TEST_CASE("the Shelf finds by id, replaces by id and keeps its order") {
    Shelf shelf;
    for (const char* id : {"a", "b", "c"}) shelf.put(exercise(id, Pattern::Squat));
    shelf.put(exercise("b", Pattern::Hinge));
    CHECK(shelf.size() == 3);
    CHECK(shelf.entries()[1]->id == ex("b"));
    CHECK(shelf.find(ex("b"))->patterns.has(Pattern::Hinge));
    CHECK(shelf.find(ex("d")) == nullptr);
    CHECK(shelf.entry(ex("d")) == nullptr);
}

TEST_CASE("the Shelf still finds everything after one was taken out") {
    Shelf shelf;
    for (const char* id : {"a", "b", "c", "d"}) shelf.put(exercise(id, Pattern::Squat));
    CHECK(shelf.remove(ex("b")));
    CHECK_FALSE(shelf.remove(ex("b")));
    for (const char* id : {"a", "c", "d"}) CHECK(shelf.find(ex(id))->id == ex(id));
    shelf.put(exercise("b", Pattern::Squat));
    CHECK(shelf.entries().back()->id == ex("b"));
}

TEST_CASE("a copied Shelf does not see what the first one changes later") {
    Shelf first;
    first.put(exercise("a", Pattern::Squat));
    const Shelf copy = first;
    first.put(exercise("a", Pattern::Hinge));
    CHECK(copy.find(ex("a"))->patterns.has(Pattern::Squat));
}

TEST_CASE("a gym finds its months, kit and members, and replaces them by name") {
    Gym gym;
    CHECK(gym.latest() == nullptr);
    gym.put(block("2026-09", {}));
    gym.put(block("2026-07", {}));
    CHECK(gym.latest()->month == month("2026-09"));
    CHECK(gym.block(month("2026-08")) == nullptr);
    Block again = block("2026-07", {});
    again.title = "Low tide";
    gym.put(again);
    CHECK(gym.blocks.size() == 2);
    CHECK(gym.block(month("2026-07"))->title == "Low tide");

    gym.put(KitItem{kit("sled-lane"), "Sled lane", 2, Claim::Set, {}, {}, {}, {}});
    gym.put(KitItem{kit("sled-lane"), "Sled lane", 3, Claim::Set, {}, {}, {}, {}});
    CHECK(gym.kit.size() == 1);
    CHECK(gym.findKit(kit("sled-lane"))->units == 3);
    CHECK(gym.findKit(kit("air-bike")) == nullptr);

    const auto id = MemberId::parse("m-001").value();
    gym.put(Member{id, "A member", {}, true, {}});
    CHECK(gym.findMember(id)->name == "A member");
    CHECK(gym.findMember(MemberId::parse("m-002").value()) == nullptr);
}

TEST_CASE("sections weigh a quarter, a half, the whole and a half unless the gym says otherwise") {
    const SectionWeights w;
    const auto at = [&](SectionKind k) { return w.of[static_cast<std::size_t>(k)].part(); };
    CHECK(at(SectionKind::WarmUp) == 0.25);
    CHECK(at(SectionKind::Power) == 0.5);
    CHECK(at(SectionKind::Strength) == 1);
    CHECK(at(SectionKind::Finisher) == 0.5);
}
