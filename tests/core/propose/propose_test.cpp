// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/propose/propose.hpp"

#include "core/propose/may_stand.hpp"
#include "core/propose/propose_gym.hpp"
#include "core/propose/random_draft.hpp"
#include "support/catch.hpp"
#include "support/draws.hpp"
#include "support/fixtures.hpp"

#include <algorithm>
#include <map>

using namespace bw;
using namespace bw::test;

namespace {

// All fillings of the open slots with their penalties, by the check alone.
std::vector<std::pair<double, Names>> allFillings(const RandomDraft& draft,
                                                  const std::vector<Place>& places) {
    std::vector<std::pair<double, Names>> out;
    std::vector<Names> options;
    for (const Place p : places) options.push_back(mayStand(draft.gym, draft.block, p));
    Names chosen;
    const std::function<void()> choose = [&] {
        if (chosen.size() == places.size()) {
            const Block full = withExercises(draft.gym, draft.block, places, chosen);
            out.emplace_back(check(draft.gym, full).penalty, chosen);
            return;
        }
        for (const ExerciseId& id : options[chosen.size()]) {
            if (std::count(chosen.begin(), chosen.end(), id) > 0) continue;
            chosen.push_back(id);
            choose();
            chosen.pop_back();
        }
    };
    choose();
    return out;
}

std::size_t apart(const Names& a, const Names& b) {
    std::size_t n = 0;
    for (std::size_t i = 0; i < a.size(); ++i) n += a[i] == b[i] ? 0 : 1;
    return n;
}

// The least penalty of a filling that is apart enough from all of these.
std::optional<double> leastApart(const std::vector<std::pair<double, Names>>& all,
                                 const std::vector<Names>& from, std::size_t places) {
    std::optional<double> least;
    for (const auto& [penalty, names] : all) {
        const bool far = std::all_of(from.begin(), from.end(), [&](const Names& other) {
            return apart(names, other) >= std::min<std::size_t>(2, places);
        });
        if (far && (!least || penalty < *least)) least = penalty;
    }
    return least;
}
} // namespace

TEST_CASE("Answers are as good as trying all fillings through the check") {
    int tried = 0, several = 0;
    for (std::uint64_t seed = 1000; tried < draws(80); ++seed) {
        const RandomDraft draft = randomDraft(seed, 18, 1 + static_cast<int>(seed % 3));
        const auto places = openSlots(draft.block);
        const auto all = allFillings(draft, places);
        const auto proposal = propose(draft.gym, draft.block, {.answers = 4});
        INFO("seed " << seed);
        REQUIRE(proposal.ok() == !all.empty());
        if (!proposal) continue;
        ++tried;
        CHECK(proposal->provedBest());
        std::vector<Names> before;
        for (const ProposedMonth& answer : proposal->answers) {
            const Names names = namesOf(answer);
            const auto same = std::find_if(all.begin(), all.end(),
                                           [&](const auto& one) { return one.second == names; });
            REQUIRE(same != all.end());
            CHECK(answer.penalty == same->first);
            const auto least = leastApart(all, before, places.size());
            REQUIRE(least);
            CHECK(answer.penalty == Approx(*least));
            before.push_back(names);
        }
        if (proposal->answers.size() < 4) CHECK_FALSE(leastApart(all, before, places.size()));
        several += proposal->answers.size() > 1 ? 1 : 0;
    }
    CHECK(several > draws(40));
}

namespace {
std::string whyNot(const Gym& gym, const Block& draft, const ProposeOptions& options = {}) {
    const auto answer = propose(gym, draft, options);
    return answer ? "answered" : answer.why().english();
}
} // namespace

TEST_CASE("Hard limits hold: the role, the pattern, the kit, and nothing twice") {
    const Gym gym = pairGym();
    const Block draft =
        oneGroup({openSlot({Pattern::Hinge}), openSlot({Pattern::Squat, Pattern::Hinge})});
    const auto proposal = propose(gym, draft);
    REQUIRE(proposal);
    REQUIRE(proposal->answers.size() == 1);
    CHECK(namesOf(proposal->answers[0]) == Names{ex("hinge"), ex("squat")});
    CHECK(proposal->answers[0].penalty == check(gym, proposal->answers[0].block).penalty);
    CHECK(proposal->penaltyNow == check(gym, draft).penalty);
}

TEST_CASE("A slot that can't be filled says which limit leaves nothing") {
    const Gym gym = pairGym();
    CHECK(
        whyNot(gym, oneGroup({openSlot({}, "finisher")})) ==
        "Nothing on the Shelf can stand in the slot strength/1/1. None of its 3 exercises has the "
        "role finisher.");
    CHECK(whyNot(gym, oneGroup({openSlot({Pattern::Carry})})) ==
          "Nothing on the Shelf can stand in the slot strength/1/1. None of the 3 of its role is "
          "mainly of the pattern carry.");
    CHECK(
        whyNot(gym, oneGroup({slot("squat", reps(5, 5)), openSlot({Pattern::Squat})})) ==
        "Nothing on the Shelf can stand in the slot strength/1/2. All of the 1 that would fit are "
        "in the session already.");
    Slot rowed = openSlot({});
    rowed.dose = Dose::of(Measure::Kcal, 8000, 8000).value();
    CHECK(whyNot(gym, oneGroup({rowed})) ==
          "Nothing on the Shelf can stand in the slot strength/1/1. None of the 3 of its role and "
          "pattern can be timed by the dose 8 cal.");
    CHECK(whyNot(gym, oneGroup({openSlot({Pattern::Hinge}), openSlot({Pattern::Hinge})})) ==
          "There are not enough different exercises for these slots: each may stand only once in a "
          "session. Fill some of them by hand, or add exercises to the Shelf.");
    CHECK(whyNot(gym, oneGroup({slot("squat", reps(5, 5))})) == "There is no open slot to fill.");
}

TEST_CASE("Locked slots stay, and a slot that is named is exchanged") {
    const Gym gym = pairGym();
    Block draft = oneGroup({slot("squat", reps(5, 5)), openSlot({Pattern::Hinge})});
    Slot& first = draft.sections[0].groups[0].slots[0];
    SECTION("an open slot is filled and the others stay") {
        const auto proposal = propose(gym, draft);
        REQUIRE(proposal);
        CHECK(proposal->answers[0].block.sections[0].groups[0].slots[0] == first);
    }
    SECTION("a swap brings another exercise and keeps the dose") {
        const auto proposal = propose(gym, draft, {.answers = 1, .places = {{0, 0, 0}}});
        REQUIRE(proposal);
        CHECK(namesOf(proposal->answers[0]) == Names{ex("hinge")});
        CHECK(proposal->answers[0].slots[0].dose == reps(5, 5));
        CHECK(proposal->answers[0].block.sections[0].groups[0].slots[1].open());
    }
    SECTION("a locked slot is refused") {
        first.locked = true;
        CHECK(whyNot(gym, draft, {.answers = 1, .places = {{0, 0, 0}}}) ==
              "strength/1/1 is locked: proposals leave it alone. Unlock it first.");
    }
}

TEST_CASE("For a member, flags are hard limits") {
    Gym gym = pairGym();
    Exercise squat = *gym.shelf.find(ex("squat"));
    REQUIRE(squat.demands.set(Demand::Knee, 2));
    gym.shelf.put(squat);
    Member m{MemberId::parse("m-1").value(),
             "Ana",
             {{Demand::Knee, FlagLevel::Avoid, {}, {}}},
             true,
             {}};
    gym.put(m);
    const Block draft = oneGroup({openSlot({})});
    const auto proposal = propose(gym, draft, {.answers = 5, .places = {}, .member = m.id});
    REQUIRE(proposal);
    REQUIRE(proposal->answers.size() == 1);
    CHECK(namesOf(proposal->answers[0]) == Names{ex("hinge")});
}

TEST_CASE("The answers are the same with one thread and with two") {
    for (int seed = 1; seed <= draws(15); ++seed) {
        const RandomDraft draft = randomDraft(seed, 30, 4);
        const auto one = propose(draft.gym, draft.block);
        ProposeOptions options;
        options.threads = 2;
        const auto two = propose(draft.gym, draft.block, options);
        INFO("seed " << seed);
        REQUIRE(one.ok() == two.ok());
        if (!one) continue;
        CHECK(one->bound == two->bound);
        REQUIRE(one->answers.size() == two->answers.size());
        for (std::size_t i = 0; i < one->answers.size(); ++i)
            CHECK(namesOf(one->answers[i]) == namesOf(two->answers[i]));
    }
}

TEST_CASE("A search that is stopped at once still has an answer, and an honest gap") {
    int answered = 0;
    for (int seed = 1; seed <= draws(30); ++seed) {
        const RandomDraft draft = randomDraft(seed, 30, 3);
        const auto full = propose(draft.gym, draft.block);
        std::stop_source stop;
        stop.request_stop();
        const auto early = propose(draft.gym, draft.block, {}, stop.get_token());
        if (!full || !early) continue;
        ++answered;
        const double penalty = early->answers.front().penalty;
        INFO("seed " << seed);
        CHECK(penalty >= full->answers.front().penalty);
        CHECK(penalty - early->gap() <= full->answers.front().penalty + 1e-9);
        CHECK(penalty == check(draft.gym, early->answers.front().block).penalty);
    }
    CHECK(answered > draws(8));
}
