// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/propose/propose.hpp"

#include "blockwright/floor/study.hpp"
#include "blockwright/model/fitting.hpp"
#include "core/propose/random_draft.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <algorithm>
#include <map>

using namespace bw;
using namespace bw::test;

namespace {
// The roles of a slot, as docs/proposals.md has them.
std::vector<std::string> rolesOf(const Block& block, Place p) {
    const Slot& slot = *slotAt(block, p);
    if (slot.role) return {slot.role->text()};
    const SectionKind kind = sectionAt(block, p)->kind;
    if (kind != SectionKind::Strength) return {std::string(wordOf(kind))};
    const bool pair = groupAt(block, p)->slots.size() == 2, last = pair && p.slot == 1;
    if (block.format == Format::HeavyThenLong && pair)
        return {last ? "strength-long" : "strength-heavy"};
    if (block.format == Format::HeavyThenFast && last) return {"power"};
    return {"strength-heavy", "strength-long"};
}

bool standsIn(const Block& block, const ExerciseId& id) {
    for (const Section& section : block.sections)
        for (const Group& group : section.groups)
            for (const Slot& slot : group.slots)
                if (slot.exercise == id) return true;
    return false;
}

std::vector<ExerciseId> mayStand(const Gym& gym, const Block& block, Place p) {
    const Slot& slot = *slotAt(block, p);
    const auto roles = rolesOf(block, p);
    std::vector<ExerciseId> out;
    for (const auto& e : gym.shelf.entries()) {
        const bool role = std::any_of(roles.begin(), roles.end(),
                                      [&](const std::string& r) { return e->hasRole(r); });
        const bool pattern =
            slot.patterns.empty() ||
            std::count(slot.patterns.begin(), slot.patterns.end(), e->patterns.largest()) > 0;
        const bool dose = !slot.dose || canTime(slot, *e, *slot.dose);
        if (role && pattern && dose && !e->retired && ownsKitFor(gym, *e) &&
            !standsIn(block, e->id))
            out.push_back(e->id);
    }
    return out;
}

std::vector<Place> openSlots(const Block& block) {
    std::vector<Place> out;
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s)
        for (int g = 0; g < static_cast<int>(sectionAt(block, {s})->groups.size()); ++g)
            for (int i = 0; i < static_cast<int>(groupAt(block, {s, g})->slots.size()); ++i)
                if (slotAt(block, {s, g, i})->open()) out.push_back({s, g, i});
    return out;
}

using Names = std::vector<ExerciseId>;

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

Names namesOf(const ProposedMonth& answer) {
    Names out;
    for (const ProposedSlot& slot : answer.slots) out.push_back(slot.exercise);
    return out;
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
    for (std::uint64_t seed = 1000; tried < 80; ++seed) {
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
    CHECK(several > 40);
}

namespace {
Gym pairGym() {
    Gym gym;
    gym.put(KitItem{kit("bell"), "Bell", 1, Claim::Group, {}, {}, {}, {}});
    const auto put = [&](const char* id, Pattern pattern, const char* role) -> Exercise {
        Exercise e = exercise(id, pattern);
        e.roles = {RoleId::parse(role).value()};
        gym.shelf.put(e);
        return e;
    };
    put("squat", Pattern::Squat, "strength-heavy");
    put("hinge", Pattern::Hinge, "strength-heavy");
    Exercise bells = put("bell-hinge", Pattern::Hinge, "strength-heavy");
    bells.needs = {{{kit("bell"), 2, {}}}};
    gym.shelf.put(bells);
    return gym;
}

Slot openSlot(std::vector<Pattern> patterns, const char* role = "strength-heavy") {
    Slot s;
    s.role = RoleId::parse(role).value();
    s.patterns = std::move(patterns);
    return s;
}

Block oneGroup(std::vector<Slot> slots) {
    return block("2026-09",
                 {section(SectionKind::Strength,
                          {group(rounds(2, 3), secondsRange(60, 90), std::move(slots))})});
}

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

TEST_CASE("Made anew, a month keeps what is locked, its main lifts and each slot's pattern") {
    int better = 0;
    for (std::uint64_t seed = 1; better < 5; ++seed) {
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
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
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
    for (std::uint64_t seed = 1; seed <= 30; ++seed) {
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
    CHECK(answered > 8);
}

TEST_CASE(
    "Where members would queue in the best on paper, one with other kit is found and is first") {
    Gym gym;
    gym.put(KitItem{kit("bell"), "Bell", 1, Claim::Group, {}, {}, {}, {}});
    Exercise bell = exercise("a-bell-hinge", Pattern::Hinge);
    bell.roles = {RoleId::parse("strength-heavy").value()};
    Exercise free = bell;
    free.id = ex("b-free-hinge");
    bell.needs = {{{kit("bell"), 1, {}}}};
    gym.shelf.put(bell);
    gym.shelf.put(free);
    const Block draft = oneGroup({openSlot({Pattern::Hinge})});
    const ProposeOptions asked{.answers = 1};
    const auto paper = propose(gym, draft, asked);
    REQUIRE(paper);
    REQUIRE(namesOf(paper->answers[0]) == Names{bell.id});
    FloorPlay play;
    play.options.runs = 50;
    play.keep = 1;
    const Proposal played = onFloor(gym, draft, asked, *paper, play);
    REQUIRE(played.onFloor);
    REQUIRE(played.answers.size() == 1);
    CHECK(played.reordered);
    CHECK(namesOf(played.answers[0]) == Names{free.id});
    CHECK(played.bound == paper->bound);
    const Block& best = played.answers[0].block;
    const auto study = studyFloor(gym, best, play.options);
    REQUIRE(study);
    CHECK(played.answers[0].penalty == check(gym, best, {}, &*study).penalty);
    SECTION("dropped at once it stays as it was") {
        std::stop_source drop;
        drop.request_stop();
        play.drop = drop.get_token();
        const Proposal same = onFloor(gym, draft, asked, *paper, play);
        CHECK_FALSE(same.onFloor);
        CHECK(namesOf(same.answers[0]) == Names{bell.id});
    }
    SECTION("nothing else fits: the answer stays, with what the class adds") {
        gym.shelf = {};
        gym.shelf.put(bell);
        const Proposal only = onFloor(gym, draft, asked, *paper, play);
        CHECK(namesOf(only.answers[0]) == Names{bell.id});
        CHECK(only.answers[0].penalty > paper->answers[0].penalty);
        CHECK_FALSE(only.reordered);
    }
}
