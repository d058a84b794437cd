// SPDX-License-Identifier: GPL-3.0-or-later
#include "bundle_support.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
std::vector<std::string> keysOf(const Json& object) {
    std::vector<std::string> keys;
    for (const auto& [key, value] : object.items()) keys.push_back(key);
    return keys;
}
} // namespace

TEST_CASE("every bundle of the project reads back equal after it was written") {
    for (const auto& path : projectBundles()) {
        INFO(path);
        const auto b = readGood(readText(path), &shelfGym());
        const auto text = writeBundle(b);
        CHECK(same(readGood(text, &shelfGym()), b));
        CHECK(writeBundle(readGood(text, &shelfGym())) == text);
    }
}

TEST_CASE("the example of the page is written with the very values and keys it has") {
    const auto written = Json::parse(writeBundle(readGood(docExample())));
    const Json original = example();
    CHECK(keysOf(written) == keysOf(original));
    CHECK(keysOf(written["gym"]) == keysOf(original["gym"]));
    CHECK(keysOf(written["gym"]["class"]) == keysOf(original["gym"]["class"]));
    CHECK(keysOf(written["blocks"][0]) == keysOf(original["blocks"][0]));
    CHECK(written["gym"] == original["gym"]);
    CHECK(written["blocks"][0]["sections"][0] == original["blocks"][0]["sections"][0]);
    CHECK(written["blocks"][0]["stair"] == original["blocks"][0]["stair"]);
    CHECK(written["blocks"][0]["accepted"] == original["blocks"][0]["accepted"]);
    CHECK(written["members"] == original["members"]);
    CHECK(written["results"] == original["results"]);
}

TEST_CASE("numbers are written as short as they can be, and one for both ends") {
    Bundle b = readGood(docExample());
    b.kit[2].bar = Mass::fromLb(45).value();
    b.blocks[0].sections[0].groups[0].rest = Range<Millis>(Millis{60'500});
    const auto text = writeBundle(b);
    CHECK(text.find("\"bar_kg\": 20.41165665,") != text.npos); // 45 x 0.45359237 exactly
    CHECK(text.find("\"rest_seconds\": 60.5,") != text.npos);
    CHECK(text.find("\"reps\": 5,") != text.npos);
    CHECK(text.find("\"budget_seconds\": [1320, 1800]") != text.npos);
    CHECK(text.find("0.0") == text.npos);
    CHECK(text.ends_with("}\n"));
    CHECK(same(readGood(text), b));
}

TEST_CASE("the smallest and the largest of every quantity survive") {
    Bundle b = readGood(docExample());
    b.results[0].load = Mass::fromMicrograms(1).value();
    b.results[1].load = Mass::fromMicrograms(Mass::kMost).value();
    b.shelf[2].muscles = {{MuscleId::parse("neck").value(), Share::fromBillionths(1).value()},
                          {MuscleId::parse("lats").value(), Share()}};
    b.shelf[2].pace =
        Pace::of(Measure::Metres, {Rate::fromBillionths(1).value(), Rate::of(1000).value(), {}})
            .value();
    b.blocks[0].sections[1].groups[0].slots[0].dose =
        Dose::of(Measure::Metres, 1, 20'000'000).value();
    b.settings->limits = {
        {"", {1.0 / 3, 1.0 / 3, true}}, {"x", {-1e9, 1e9, true}}, {"y", {5e-324, 5e-324, false}}};
    b.blocks[0].accepted[0].measured = -1e9;
    b.blocks[0].accepted.push_back(b.blocks[0].accepted[0]);
    b.blocks[0].accepted[1].measured.reset();
    b.blocks[0].accepted[1].limit = {5e-324, 5e-324, false};
    b.members[0].flags[0].note = "two\nlines\t\"quoted\" \\ ünï";
    CHECK(same(readGood(writeBundle(b)), b));
}

TEST_CASE("unknown keys are written again where they were") {
    Json bundle = example();
    const std::vector<std::string> places{"/season",
                                          "/gym/founded",
                                          "/gym/class/music",
                                          "/gym/kit/0/colour",
                                          "/shelf/0/video",
                                          "/shelf/0/needs/0/0/grip",
                                          "/blocks/0/mood",
                                          "/blocks/0/stair/0/x",
                                          "/blocks/0/accepted/0/x",
                                          "/blocks/0/accepted/0/facts/x",
                                          "/blocks/0/sections/0/x",
                                          "/blocks/0/sections/0/groups/0/x",
                                          "/blocks/0/sections/0/groups/0/slots/0/x",
                                          "/members/0/x",
                                          "/members/0/flags/0/x",
                                          "/results/0/x"};
    const Json odd = Json::parse(
        R"({"a/b~": [1, -2.50, 1e400, 123456789012345678901234567890], "": null})", nullptr, false);
    CHECK(odd.is_discarded()); // 1e400 is no number for anyone
    const Json value = Json::parse(R"({"a/b~": [1, -2.5, true, "\u0000\u20ac"], "": null})");
    for (const auto& place : places) bundle[Json::json_pointer(place)] = value;
    const auto reading = readBundle(bundle.dump());
    REQUIRE(reading.bundle);
    CHECK(reading.notes.size() == places.size());
    const auto written = Json::parse(writeBundle(*reading.bundle));
    for (const auto& place : places) CHECK(written.at(Json::json_pointer(place)) == value);
    CHECK(same(readGood(writeBundle(*reading.bundle)), *reading.bundle));
}

TEST_CASE("numbers in unknown keys keep every figure") {
    const auto b = readGood(R"({"format": "blockwright-bundle", "version": 1,
        "x": [123456789012345678901234567890, 18446744073709551615, 9007199254740993, 2.50, -0.0, 1E5]})");
    CHECK(
        b.extras.json ==
        R"({"x":[123456789012345678901234567890,18446744073709551615,9007199254740993,2.50,-0.0,1E5]})");
    CHECK(same(readGood(writeBundle(b)), b));
}

TEST_CASE("unknown keys of a gym without settings stay with the gym") {
    const auto b = readGood(R"({"format": "blockwright-bundle", "version": 1,
        "gym": {"kit": [], "founded": 1987}})");
    CHECK_FALSE(b.settings);
    CHECK(b.hasKit);
    CHECK(b.gymExtras.json == R"({"founded":1987})");
    CHECK(same(readGood(writeBundle(b)), b));
}

TEST_CASE("a result stands on one line, a long exercise on many") {
    const auto text = writeBundle(readGood(docExample()));
    CHECK(text.find("    {\"member\": \"m-001\", \"date\": \"2026-09-03\", \"exercise\": "
                    "\"front-rack-squat\", "
                    "\"set\": 1, \"reps\": 5, \"rir\": 2, \"load_kg\": 40},\n") != text.npos);
    CHECK(text.find("      \"id\": \"goblet-squat\",\n") != text.npos);
}
