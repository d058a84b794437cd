// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/draft.hpp"
#include "support/catch.hpp"

using namespace bw;
using namespace bw::test;

TEST_CASE("a power rest below a minute is looked at") {
    Draft d = cleanDraft();
    d.group(kPower).rest = secondsRange(59, 90);
    const auto found = d.find("power-rest");
    REQUIRE(found.size() == 1);
    CHECK(found[0].level == Level::Look);
    CHECK(found[0].place == Place{kPower, 0});
    CHECK(found[0].measured == 59);
    CHECK(found[0].limit == band(60, 120));
    CHECK(found[0].unit == "s");
    CHECK(found[0].basis.english().find("ACSM 2009") != std::string::npos);
    CHECK(found[0].text.english().find("Group B (box-jump + ball-throw) rests 59–90 s") == 0);
    const Draft fixed = d.after(remedy(found[0], "Set the rest of group B to 60–90 s"));
    CHECK(fixed.find("power-rest").empty());
}

TEST_CASE("a power rest above two minutes is only noted") {
    Draft d = cleanDraft();
    d.group(kPower).rest = secondsRange(120, 180);
    const auto found = d.find("power-rest");
    REQUIRE(found.size() == 1);
    CHECK(found[0].level == Level::Note);
    CHECK(found[0].measured == 180);
    CHECK(d.after(remedy(found[0], "Set the rest of group B to 2 min")).find("power-rest").empty());
    d.group(kPower).rest = secondsRange(60, 120);
    CHECK(d.find("power-rest").empty());
}

TEST_CASE("a power group of one round has no rest to judge") {
    Draft d = cleanDraft();
    d.group(kPower).rest = secondsRange(0, 0);
    CHECK(d.find("power-rest").size() == 1);
    d.group(kPower).rounds = rounds(1, 2);
    CHECK(d.find("power-rest").size() == 1);
    d.group(kPower).rounds = rounds(1, 1);
    CHECK(d.find("power-rest").empty());
}

TEST_CASE("the gym sets its own power rest, and it is then the basis") {
    Draft d = cleanDraft();
    d.limit("power-rest.seconds", 90, 180, true);
    const auto found = d.find("power-rest");
    REQUIRE(found.size() == 1);
    CHECK(found[0].limit == band(90, 180));
    CHECK(found[0].basis.english() == "This gym's setting.");
    CHECK(d.after(found[0].remedies.at(0)).group(kPower).rest == secondsRange(90, 120));
}

TEST_CASE("the strength rest depends on the month's format") {
    struct Case {
        std::optional<Format> format;
        int lo, hi;
    };
    const auto c = GENERATE(values<Case>({{Format::HeavyThenLong, 60, 120},
                                          {Format::StraightHeavy, 120, 180},
                                          {Format::Opposed, 60, 180},
                                          {Format::HeavyThenFast, 60, 180},
                                          {Format::RoundTrip, 60, 180},
                                          {std::nullopt, 60, 180}}));
    Draft d = cleanDraft();
    d.block.format = c.format;
    d.section(kStrength).groups.pop_back();
    d.group(kStrength).rest = secondsRange(c.lo, c.hi);
    CHECK(d.find("strength-rest").empty());
    d.group(kStrength).rest = secondsRange(c.lo - 1, c.hi);
    const Finding below = d.find("strength-rest").at(0);
    CHECK(below.level == Level::Look);
    CHECK(below.measured == c.lo - 1);
    CHECK(below.limit == band(c.lo, c.hi));
    CHECK(d.after(below.remedies.at(0)).find("strength-rest").empty());
    d.group(kStrength).rest = secondsRange(c.lo, c.hi + 1);
    const Finding above = d.find("strength-rest").at(0);
    CHECK(above.measured == c.hi + 1);
    CHECK(d.after(above.remedies.at(0)).find("strength-rest").empty());
    d.group(kStrength).rounds = rounds(1, 1);
    CHECK(d.find("strength-rest").empty());
}

TEST_CASE("each format's rest can be set by the gym") {
    Draft d = cleanDraft();
    d.limit("strength-rest.heavy_then_long_seconds", 30, 90, true);
    CHECK(d.find("strength-rest").size() == 2);
    CHECK(d.find("strength-rest")[0].basis.english() == "This gym's setting.");
    d.block.format = Format::Opposed;
    CHECK(d.find("strength-rest").empty());
}
