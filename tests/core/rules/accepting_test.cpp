// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/accepting.hpp"

#include "core/rules/draft.hpp"
#include "support/catch.hpp"

#include <limits>
#include <set>

using namespace bw;
using namespace bw::test;

namespace {
Block twoPairs() {
    return block(
        "2026-09",
        {section(SectionKind::WarmUp,
                 {group(rounds(1, 1), secondsRange(0, 0), {slot("squat", reps(8, 8))})}),
         section(SectionKind::Strength,
                 {group(rounds(2, 3), secondsRange(60, 60),
                        {slot("squat", reps(5, 5)), slot("press", reps(10, 10))}),
                  group(rounds(2, 3), secondsRange(60, 60),
                        {slot("press", reps(10, 10)), slot("squat", reps(5, 5)), Slot{}})})});
}

Finding look(double measured, std::string unit = "s") {
    Finding f;
    f.rule = "superset-work";
    f.level = Level::Look;
    f.place = {1, 0};
    f.measured = measured;
    f.limit = {60, 120, true};
    f.unit = std::move(unit);
    return f;
}

// Is what was accepted at `then` still the same at `now`?
bool holds(double then, double now, const std::string& unit = "s") {
    return factsHold(makeAcceptance(twoPairs(), look(then, unit), "why"), look(now, unit));
}

// A draft with one look, at its power pair.
Draft restless() {
    Draft d = cleanDraft();
    d.group(kPower).rest = secondsRange(20, 20);
    return d;
}
void accept(Draft& d, const Finding& f) {
    d.block.accepted.push_back(makeAcceptance(d.block, f, "They talk."));
}
} // namespace

TEST_CASE("a place is written by its kind and its exercises") {
    const Block b = twoPairs();
    CHECK(placeKey(b, {}) == "session");
    CHECK(placeKey(b, {1}) == "section strength");
    CHECK(placeKey(b, {1, 0}) == "group strength press squat");
    CHECK(placeKey(b, {1, 1}) == "group strength - press squat");
    CHECK(placeKey(b, {0, 0, 0}) == "slot warm-up squat");
    CHECK(placeKey(b, {1, 0, 0}) == "slot strength squat");
    CHECK(placeKey(b, {1, 1, 1}) == "slot strength squat #2");
    CHECK(placeKey(b, {1, 1, 2}) == "slot strength -");
}

TEST_CASE("every place of a draft has a key of its own") {
    Block b = twoPairs();
    b.sections.push_back(b.sections[1]);
    b.sections[1].groups.push_back(b.sections[1].groups[0]);
    std::set<std::string> keys{placeKey(b, {})};
    std::size_t places = 1;
    for (int s = 0; s < 3; ++s) {
        keys.insert(placeKey(b, {s}));
        ++places;
        for (int g = 0; groupAt(b, {s, g}); ++g) {
            keys.insert(placeKey(b, {s, g}));
            ++places;
            for (int i = 0; slotAt(b, {s, g, i}); ++i, ++places)
                keys.insert(placeKey(b, {s, g, i}));
        }
    }
    CHECK(places > 15);
    CHECK(keys.size() == places);
}

TEST_CASE("moving rows within their sort of section keeps the key, another exercise does not") {
    Block b = twoPairs();
    const std::string key = placeKey(b, {1, 1});
    std::swap(b.sections[1].groups[0], b.sections[1].groups[1]);
    std::swap(b.sections[1].groups[0].slots[0], b.sections[1].groups[0].slots[2]);
    CHECK(placeKey(b, {1, 0}) == key);
    b.sections.insert(b.sections.begin(), section(SectionKind::Strength, {}));
    CHECK(placeKey(b, {2, 0}) == key);
    b.sections[2].groups[0].slots[0].exercise = ex("row");
    CHECK(placeKey(b, {2, 0}) != key);
}

TEST_CASE("an accepted finding is told apart, with its reason, and weighs nothing") {
    Draft d = restless();
    const CheckResult before = check(d.gym, d.block);
    accept(d, d.findAll("power-rest").at(0));
    const CheckResult after = check(d.gym, d.block);
    CHECK(d.findAll("power-rest").empty());
    CHECK(after.findings.size() + 1 == before.findings.size());
    CHECK(after.penalty == Approx(before.penalty - LevelWeights{}.look));
    CHECK(after.count(Level::Look) + 1 == before.count(Level::Look));
    REQUIRE(after.accepted.size() == 1);
    CHECK(after.accepted[0].finding.rule == "power-rest");
    CHECK(after.accepted[0].reason == "They talk.");
}

TEST_CASE("it is accepted in every single week, though a week's figures differ") {
    Draft d = cleanDraft();
    d.gym.settings.classMinutes = 25;
    d.group(kStrength).rounds = rounds(2, 4);
    const auto month = d.findAll("session-length");
    REQUIRE(month.size() == 1);
    accept(d, month[0]);
    std::set<double> measured;
    for (const int w : month[0].weeks) {
        const CheckResult one = check(d.gym, d.block, week(w));
        REQUIRE(one.accepted.size() == 1);
        measured.insert(one.accepted[0].finding.measured);
        for (const Finding& f : one.findings) CHECK(f.rule != "session-length");
    }
    CHECK(measured.size() > 1);
}

TEST_CASE("it comes back when its figure, limit or exercises change, and goes again with them") {
    Draft d = restless();
    accept(d, d.findAll("power-rest").at(0));
    REQUIRE(d.findAll("power-rest").empty());
    Draft changed = d;
    SECTION("the figure") { changed.group(kPower).rest = secondsRange(30, 30); }
    SECTION("the limit") { changed.limit("power-rest.seconds", 61, 120, true); }
    SECTION("the exercises") {
        changed.slot(kPower, 0, 0).exercise = changed.slot(kWarmUp, 0, 0).exercise;
    }
    CHECK(changed.findAll("power-rest").size() == 1);
    changed.gym = d.gym;
    changed.block.sections = d.block.sections;
    CHECK(changed.findAll("power-rest").empty());
}

TEST_CASE("another finding of that rule, place or matter is not accepted with it") {
    Block b = twoPairs();
    b.accepted = {makeAcceptance(b, look(134), "why")};
    Finding f = look(134);
    REQUIRE(acceptanceFor(b, f) == &b.accepted[0]);
    SECTION("another rule") { f.rule = "strength-rest"; }
    SECTION("another place") { f.place = {1, 1}; }
    SECTION("about something else") { f.about = "pull"; }
    CHECK(acceptanceFor(b, f) == nullptr);
}

TEST_CASE("facts hold while level and limit are the same") {
    const Acceptance a = makeAcceptance(twoPairs(), look(134), "why");
    Finding f = look(134);
    CHECK(factsHold(a, f));
    f.level = Level::Stop;
    CHECK_FALSE(factsHold(a, f));
    f = look(134);
    f.limit.hi = 125;
    CHECK_FALSE(factsHold(a, f));
}

TEST_CASE("facts hold while the figure stays within a twentieth, or the grain of its unit") {
    CHECK(holds(200, 210));
    CHECK(holds(200, 190));
    CHECK_FALSE(holds(200, 210.01));
    CHECK(holds(20, 25)); // 5 s is more than a twentieth
    CHECK_FALSE(holds(20, 25.1));
    CHECK(holds(0.12, 0.14, "share"));
    CHECK_FALSE(holds(0.12, 0.145, "share"));
    CHECK(holds(1.46, 1.53, ""));
    CHECK_FALSE(holds(1.46, 1.54, ""));
    CHECK_FALSE(holds(8, 7, "reps"));
    CHECK(holds(1.0 / 3, 1.0 / 3, ""));
}

TEST_CASE("a figure that is no number is only like another that is none") {
    constexpr double kNone = std::numeric_limits<double>::infinity();
    CHECK_FALSE(makeAcceptance(twoPairs(), look(kNone, ""), "why").measured);
    CHECK(holds(kNone, kNone, ""));
    CHECK_FALSE(holds(kNone, 1.5, ""));
    CHECK_FALSE(holds(1.5, kNone, ""));
}
