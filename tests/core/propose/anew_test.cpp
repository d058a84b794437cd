// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/propose/propose.hpp"
#include "core/propose/may_stand.hpp"
#include "core/propose/propose_gym.hpp"
#include "core/propose/random_draft.hpp"
#include "support/catch.hpp"
#include "support/draws.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

TEST_CASE("Made anew, a month keeps what is locked, its main lifts and each slot's pattern") {
    int better = 0;
    for (std::uint64_t seed = 1; better < draws(5); ++seed) {
        const RandomDraft draft = randomDraft(seed, 18, 2);
        const auto filled = propose(draft.gym, draft.block, {.answers = 1});
        if (!filled) continue;
        Block now = filled->answers[0].block;
        const auto places = openSlots(draft.block);
        slotAt(now, places[0])->locked = true;
        const auto anew = propose(draft.gym, now, {.answers = 3, .places = {}, .anew = true});
        INFO("seed " << seed);
        if (!anew) continue;
        CHECK(anew->penaltyNow == check(draft.gym, now).penalty);
        for (const ProposedMonth& answer : anew->answers) {
            CHECK(answer.penalty == check(draft.gym, answer.block).penalty);
            for (const ProposedSlot& slot : answer.slots) {
                const Slot& was = *slotAt(now, slot.place);
                CHECK(!was.locked);
                CHECK((!was.main || slot.exercise != was.exercise)); // or it is stale
                if (was.exercise && was.patterns.empty())
                    CHECK(draft.gym.shelf.find(slot.exercise)->patterns.largest() ==
                          draft.gym.shelf.find(*was.exercise)->patterns.largest());
            }
        }
        better += anew->answers[0].penalty < anew->penaltyNow ? 1 : 0;
    }
}

TEST_CASE("Made anew, what stands in a slot may come back, but not a main lift gone stale") {
    Gym gym = pairGym();
    const Block month = oneGroup({slot("squat", reps(5, 5)), slot("hinge", reps(5, 5))});
    const ProposeOptions anew{.answers = 3, .places = {}, .anew = true};
    SECTION("it may: there is no other squat, and no kit for the other hinge") {
        const auto proposal = propose(gym, month, anew);
        REQUIRE(proposal);
        REQUIRE(proposal->answers.size() == 1);
        CHECK(proposal->answers[0].block == month);
    }
    Exercise front = *gym.shelf.find(ex("squat"));
    front.id = ex("front-squat");
    gym.shelf.put(front);
    Block lifts = month;
    slotAt(lifts, {0, 0, 0})->main = true;
    SECTION("a main lift stays as long as it is not stale") {
        const auto proposal = propose(gym, lifts, anew);
        REQUIRE(proposal);
        for (const ProposedMonth& answer : proposal->answers) {
            CHECK(slotAt(answer.block, {0, 0, 0})->exercise == ex("squat"));
            CHECK(answer.slots.size() == 1);
        }
    }
    SECTION(
        "after more months in a row than the gym allows it must change, and keeps its pattern") {
        for (const char* before : {"2026-06", "2026-07", "2026-08"}) {
            Block earlier = lifts;
            earlier.month = Month::parse(before).value();
            gym.put(earlier);
        }
        const auto proposal = propose(gym, lifts, anew);
        REQUIRE(proposal);
        for (const ProposedMonth& answer : proposal->answers)
            CHECK(slotAt(answer.block, {0, 0, 0})->exercise == ex("front-squat"));
    }
}
