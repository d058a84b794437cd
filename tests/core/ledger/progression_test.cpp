// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/progression.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
struct Ladder {
    Gym gym;
    Ladder() {
        Exercise e = exercise("chin-up", Pattern::VerticalPull);
        e.easier = {ex("band-chin-up")};
        e.harder = {ex("gone"), ex("retired"), ex("ring-chin-up"), ex("slow-chin-up")};
        gym.shelf.put(e);
        gym.shelf.put(exercise("band-chin-up", Pattern::VerticalPull));
        Exercise retired = exercise("retired", Pattern::VerticalPull);
        retired.retired = true;
        gym.shelf.put(retired);
        Exercise ring = exercise("ring-chin-up", Pattern::VerticalPull);
        ring.needs = {{{kit("rings"), 1, {}}}};
        gym.shelf.put(ring);
        gym.shelf.put(exercise("slow-chin-up", Pattern::VerticalPull));
        gym.put(KitItem{kit("rings"), "Rings", 2, Claim::Set, {}, {}, {}, {}});
    }
    [[nodiscard]] BodyStep after(int reps, Range<int> window = rounds(5, 10),
                                 const Member* member = nullptr) const {
        return nextBodyStep(gym, *gym.shelf.find(ex("chin-up")), reps, window, member);
    }
};
} // namespace

// 5 and 6 stay, up to 10 climb, 8 to 10 in good form go on: common practice, no source.
TEST_CASE("repetitions without load climb a window and then go on to the harder option") {
    const Ladder ladder;
    struct Row {
        int done;
        BodyMove move;
        Range<int> aim;
    };
    for (const Row& row : {Row{1, BodyMove::Easier, rounds(5, 6)},
                           {4, BodyMove::Easier, rounds(5, 6)},
                           {5, BodyMove::Stay, rounds(5, 6)},
                           {6, BodyMove::Stay, rounds(5, 6)},
                           {7, BodyMove::Climb, rounds(8, 8)},
                           {8, BodyMove::Harder, rounds(5, 6)},
                           {10, BodyMove::Harder, rounds(5, 6)},
                           {15, BodyMove::Harder, rounds(5, 6)}}) {
        INFO(row.done);
        const BodyStep step = ladder.after(row.done);
        CHECK(step.move == row.move);
        CHECK(step.aim == row.aim);
    }
}

TEST_CASE("the option is the first that is offered, whose kit is here and no flag rules out") {
    Ladder ladder;
    CHECK(ladder.after(9).option->id == ex("ring-chin-up"));
    CHECK(ladder.after(9).text.english() == "9 last time: with good form go on to ring-chin-up for "
                                            "5–6; else climb on here.");
    ladder.gym.put(KitItem{kit("rings"), "Rings", 0, Claim::Set, {}, {}, {}, {}});
    CHECK(ladder.after(9).option->id == ex("slow-chin-up"));
    Exercise slow = *ladder.gym.shelf.find(ex("slow-chin-up"));
    (void)slow.demands.set(Demand::Grip, 3);
    ladder.gym.shelf.put(slow);
    const Member member{MemberId::parse("m-1").value(),
                        "Ann",
                        {{Demand::Grip, FlagLevel::Limit, {}, {}}},
                        true,
                        {}};
    const BodyStep none = ladder.after(9, rounds(5, 10), &member);
    CHECK(none.option == nullptr);
    CHECK(none.aim == rounds(10, 10));
    CHECK(none.text.english() ==
          "9 last time, and no harder option fits: climb on, add load or slow it down.");
    CHECK(ladder.after(3).option->id == ex("band-chin-up"));
}

TEST_CASE("a short window still has a stay, a climb and an end") {
    const Ladder ladder;
    const auto move = [&](int done, int lo, int hi) {
        return ladder.after(done, rounds(lo, hi)).move;
    };
    CHECK(move(5, 5, 7) == BodyMove::Stay);
    CHECK(move(6, 5, 7) == BodyMove::Stay);
    CHECK(move(7, 5, 7) == BodyMove::Harder);
    CHECK(move(5, 5, 6) == BodyMove::Stay);
    CHECK(move(6, 5, 6) == BodyMove::Harder);
    CHECK(move(13, 12, 17) == BodyMove::Stay);
    CHECK(move(14, 12, 17) == BodyMove::Climb);
    CHECK(move(15, 12, 17) == BodyMove::Harder);
}
