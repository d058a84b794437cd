// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/member_substitute.hpp"
#include "core/rules/draft.hpp"
#include "support/catch.hpp"

using namespace bw;
using namespace bw::test;

namespace {
MemberId memberId(std::string_view id) { return MemberId::parse(id).value(); }

Member flagged(std::string_view id, Demand demand, FlagLevel level) {
    return {memberId(id), std::string(id), {{demand, level, {}, {}}}, true, {}};
}

// A strength pair of a press overhead and a row.
struct Overhead {
    Gym gym;
    Block draft =
        block("2026-09",
              {section(SectionKind::Strength,
                       {group(rounds(2, 3), secondsRange(60, 90),
                              {slot("overhead-press", reps(5, 5)), slot("row", reps(8, 10))})})});
    Overhead() {
        Exercise press = strength("overhead-press", Pattern::VerticalPush, 3);
        press.easier = {ex("half-press"), ex("landmine-press")};
        press.swaps = {ex("floor-press")};
        gym.shelf.put(press);
        gym.shelf.put(strength("row", Pattern::HorizontalPull, 0));
        gym.shelf.put(strength("half-press", Pattern::VerticalPush, 2));
        gym.shelf.put(strength("floor-press", Pattern::HorizontalPush, 0));
        gym.shelf.put(strength("other-push", Pattern::VerticalPush, 0));
        gym.shelf.put(strength("landmine-press", Pattern::HorizontalPush, 1));
    }
    static Exercise strength(std::string_view id, Pattern pattern, int overhead) {
        Exercise e = exercise(id, pattern);
        e.roles = {RoleId::parse("strength-heavy").value(), RoleId::parse("strength-long").value()};
        (void)e.demands.set(Demand::Overhead, overhead);
        return e;
    }
    void remove(std::string_view id) { gym.shelf.remove(ex(id)); }
    [[nodiscard]] std::string firstFor(const Member& member) const {
        const History history(gym, draft.month);
        const Facts facts = Facts::of(gym, draft, history, Week::first());
        const auto found = memberSubstitute(facts, facts.slots[0], member);
        if (!found) return "no need";
        return found->substitute ? found->substitute->id.text() : "none";
    }
};
} // namespace

TEST_CASE("avoid rules out a demand of one and more, limit only a demand of three") {
    for (const int level : {0, 1, 2, 3}) {
        const Exercise e = Overhead::strength("e", Pattern::VerticalPush, level);
        CHECK(rulesOut({Demand::Overhead, FlagLevel::Avoid, {}, {}}, e) == (level >= 1));
        CHECK(rulesOut({Demand::Overhead, FlagLevel::Limit, {}, {}}, e) == (level == 3));
        CHECK_FALSE(rulesOut({Demand::Knee, FlagLevel::Avoid, {}, {}}, e));
    }
}

TEST_CASE("an easier version of the same pattern comes first, then other kin, then the pattern") {
    Overhead o;
    const Member limited = flagged("m-1", Demand::Overhead, FlagLevel::Limit);
    CHECK(o.firstFor(limited) == "half-press");
    o.remove("half-press");
    CHECK(o.firstFor(limited) == "landmine-press"); // easier, though of another pattern
    o.remove("landmine-press");
    CHECK(o.firstFor(limited) == "floor-press"); // the swap
    o.remove("floor-press");
    CHECK(o.firstFor(limited) == "other-push"); // no kin, but trains the same
    o.remove("other-push");
    CHECK(o.firstFor(limited) == "none"); // the row is in the draft
    CHECK(o.firstFor(flagged("m-2", Demand::Knee, FlagLevel::Avoid)) == "no need");
}

TEST_CASE("a substitute is ruled out by no flag of the member") {
    Overhead o;
    Member member = flagged("m-1", Demand::Overhead, FlagLevel::Avoid);
    CHECK(o.firstFor(member) == "floor-press"); // the easier ones ask for something overhead
    Exercise floor = *o.gym.shelf.find(ex("floor-press"));
    (void)floor.demands.set(Demand::Grip, 1);
    o.gym.shelf.put(floor);
    member.flags.push_back({Demand::Grip, FlagLevel::Avoid, {}, {}});
    CHECK(o.firstFor(member) == "other-push");
}

TEST_CASE("a substitute needs its kit in the gym") {
    Overhead o;
    Exercise half = *o.gym.shelf.find(ex("half-press"));
    half.needs = {{{kit("bell"), 1, {}}}};
    o.gym.shelf.put(half);
    o.gym.put(KitItem{kit("bell"), "Bell", 0, Claim::Group, {}, {}, {}, {}});
    const Member member = flagged("m-1", Demand::Overhead, FlagLevel::Limit);
    CHECK(o.firstFor(member) == "landmine-press");
    o.gym.put(KitItem{kit("bell"), "Bell", 1, Claim::Group, {}, {}, {}, {}});
    CHECK(o.firstFor(member) == "half-press");
}

TEST_CASE("the substitutes of a draft are those of its active flagged members, with a reason") {
    Overhead o;
    Member gone = flagged("m-3", Demand::Overhead, FlagLevel::Avoid);
    gone.active = false;
    for (const Member& m : {flagged("m-1", Demand::Grip, FlagLevel::Avoid),
                            flagged("m-2", Demand::Overhead, FlagLevel::Limit), gone})
        o.gym.put(m);
    const History history(o.gym, o.draft.month);
    const Facts facts = Facts::of(o.gym, o.draft, history, Week::first());
    const auto found = memberSubstitutes(facts);
    REQUIRE(found.size() == 1);
    CHECK(found[0].place == Place{0, 0, 0});
    CHECK(found[0].member->id == memberId("m-2"));
    CHECK(found[0].text.english() == "overhead-press asks 3 of 3 for overhead. half-press asks 2, "
                                     "is its easier version, and its kit is here.");
}
