// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/draft.hpp"
#include "support/catch.hpp"

using namespace bw;
using namespace bw::test;

namespace {
Range<Rir> rir(int lo, int hi) {
    return Range<Rir>::between(Rir::fromTenths(lo * 10).value(), Rir::fromTenths(hi * 10).value());
}
} // namespace

// One to two minutes of work in a superset: common practice, no source.
TEST_CASE("a round of a strength pair takes one to two minutes of work") {
    struct Case {
        int first, second; // seconds
        bool found;
    };
    const auto c = GENERATE(values<Case>(
        {{20, 39, true}, {20, 40, false}, {45, 45, false}, {60, 60, false}, {60, 61, true}}));
    Draft d = cleanDraft();
    d.slot(kStrength, 0, 0).dose = secondsDose(c.first, c.first);
    d.slot(kStrength, 0, 1).dose = secondsDose(c.second, c.second);
    const auto found = d.find("superset-work");
    REQUIRE(found.size() == (c.found ? 1 : 0));
    if (!c.found) return;
    CHECK(found[0].level == Level::Look);
    CHECK(found[0].place == Place{kStrength, 0});
    CHECK(found[0].measured == c.first + c.second); // set-ups of 10 s each are left out
    CHECK(found[0].limit == band(60, 120));
    CHECK(found[0].unit == "s");
    CHECK(found[0].basis.english() == "Common practice.");
}

TEST_CASE("only pairs with both exercises, in strength, are supersets") {
    Draft d = cleanDraft();
    d.slot(kStrength, 0, 0).dose = secondsDose(300, 300);
    CHECK(d.find("superset-work").size() == 1);
    SECTION("an open slot leaves it unjudged") {
        d.slot(kStrength, 0, 1) = Slot{};
        CHECK(d.find("superset-work").empty());
    }
    SECTION("a tri-set is not a pair") {
        d.group(kStrength).slots.push_back(d.slot(kStrength, 1, 0));
        CHECK(d.find("superset-work").empty());
    }
    SECTION("a finisher is not strength") {
        d.section(kStrength).kind = SectionKind::Finisher;
        CHECK(d.find("superset-work").empty());
    }
    SECTION("an exercise that has left the Shelf leaves it unjudged") {
        d.gym.shelf.remove(ex("step-up"));
        CHECK(d.find("superset-work").empty());
    }
}

TEST_CASE("a superset that is too long gets shorter by fewer reps or a quicker tempo") {
    Draft d = cleanDraft();
    d.slot(kStrength, 0, 1).dose = reps(16, 20);
    d.slot(kStrength, 0, 1).tempo = Tempo::parse("4120").value(); // 18 x 7 s + 5 x 4 s
    const Finding f = d.find("superset-work").at(0);
    CHECK(f.measured == 146);
    const Draft fewer = d.after(remedy(f, "Set the dose of step-up (C2) to 12–16"));
    CHECK(fewer.find("superset-work").empty());
    const Draft quicker = d.after(remedy(f, "Set the tempo of step-up (C2) to 2120"));
    CHECK(quicker.find("superset-work").empty());
    for (const Remedy& r : f.remedies)
        if (r.action) CHECK(d.after(r).find("superset-work").empty());
}

TEST_CASE("a superset that is too short gets longer, but not by its heavy set") {
    Draft d = cleanDraft();
    d.slot(kStrength, 0, 1).dose = reps(8, 8); // 32 s + 20 s
    const Finding f = d.find("superset-work").at(0);
    CHECK(f.measured == 52);
    CHECK(d.after(remedy(f, "Set the dose of step-up (C2) to 10")).find("superset-work").empty());
    for (const Remedy& r : f.remedies) {
        INFO(r.label.english());
        CHECK(r.label.english().find("dose of front-squat") == std::string::npos);
        if (r.action) CHECK(d.after(r).find("superset-work").empty());
    }
    CHECK(
        d.after(remedy(f, "Set the tempo of step-up (C2) to 4010")).find("superset-work").empty());
}

TEST_CASE("a pair far outside says what to try even when no single change is enough") {
    Draft d = cleanDraft();
    d.slot(kStrength, 0, 0).dose = secondsDose(150, 150);
    d.slot(kStrength, 0, 1).dose = secondsDose(150, 150);
    const Finding f = d.find("superset-work").at(0);
    REQUIRE(f.remedies.size() == 1);
    CHECK_FALSE(f.remedies[0].action);
}

TEST_CASE("the gym sets how long its supersets are") {
    Draft d = cleanDraft();
    d.limit("superset-work.seconds", 30, 60, true);
    const auto found = d.find("superset-work");
    REQUIRE(found.size() == 2);
    CHECK(found[0].limit == band(30, 60));
    CHECK(found[0].basis.english() == "This gym's setting.");
}

TEST_CASE("in heavy-then-long the first exercise has fewer reps") {
    Draft d = cleanDraft();
    std::swap(d.slot(kStrength, 0, 0), d.slot(kStrength, 0, 1));
    const auto found = d.find("heavy-first");
    REQUIRE(found.size() == 1); // of the short second set nothing more is said
    CHECK(found[0].level == Level::Look);
    CHECK(found[0].place == Place{kStrength, 0});
    CHECK(found[0].also == std::vector<Place>{Place{kStrength, 0, 0}, Place{kStrength, 0, 1}});
    CHECK(found[0].measured == 11);
    CHECK(found[0].limit == number(5));
    CHECK(found[0].unit == "reps");
    const Draft fixed = d.after(remedy(found[0], "Swap the two exercises of group C"));
    CHECK(fixed.block == cleanDraft().block);
}

TEST_CASE("as many reps in the first as in the second are too many") {
    Draft d = cleanDraft();
    d.slot(kStrength, 0, 0).dose = reps(10, 12);
    const Finding f = d.find("heavy-first").at(0);
    CHECK(f.measured == f.limit.hi);
    CHECK(d.after(remedy(f, "Set the dose of front-squat (C1) to 5")).find("heavy-first").empty());
    d.slot(kStrength, 0, 0).dose = reps(10, 11);
    CHECK(d.find("heavy-first").empty());
}

TEST_CASE("in heavy-then-long the first exercise is the higher effort") {
    Draft d = cleanDraft();
    d.slot(kStrength, 0, 0).effort = rir(1, 2);
    CHECK(d.find("heavy-first").empty()); // nothing to compare with
    d.slot(kStrength, 0, 1).effort = rir(2, 2);
    CHECK(d.find("heavy-first").empty());
    d.slot(kStrength, 0, 1).effort = rir(1, 2);
    const Finding f = d.find("heavy-first").at(0);
    CHECK(f.measured == 1.5);
    CHECK(f.limit == number(1.5));
    const Draft fixed = d.after(remedy(f, "Leave one more repetition in reserve in step-up (C2)"));
    CHECK(fixed.slot(kStrength, 0, 1).effort == rir(2, 3));
    CHECK(fixed.find("heavy-first").empty());
}

TEST_CASE("in heavy-then-long the second exercise has eight reps or more") {
    Draft d = cleanDraft();
    d.slot(kStrength, 0, 1).dose = reps(8, 12);
    CHECK(d.find("heavy-first").empty());
    d.slot(kStrength, 0, 1).dose = reps(7, 12);
    const Finding f = d.find("heavy-first").at(0);
    CHECK(f.level == Level::Look);
    CHECK(f.place == Place{kStrength, 0, 1});
    CHECK(f.measured == 7);
    CHECK(f.limit == number(8));
    CHECK(d.after(remedy(f, "Set the dose of step-up (C2) to 8–12")).find("heavy-first").empty());
    d.limit("heavy-first.second_reps", 6);
    CHECK(d.find("heavy-first").empty());
    d.limit("heavy-first.second_reps", 12);
    CHECK(d.find("heavy-first").at(0).basis.english() == "This gym's setting.");
}

TEST_CASE("a long set may be long in seconds, and other formats may be otherwise") {
    Draft d = cleanDraft();
    d.slot(kStrength, 0, 1).dose = secondsDose(40, 40);
    CHECK(d.find("heavy-first").empty());
    std::swap(d.slot(kStrength, 1, 0), d.slot(kStrength, 1, 1));
    CHECK(d.find("heavy-first").size() == 1);
    d.block.format = Format::Opposed;
    CHECK(d.find("heavy-first").empty());
}
