// SPDX-License-Identifier: GPL-3.0-or-later
#include "bundle_support.hpp"
#include "support/catch.hpp"

using namespace bw;
using namespace bw::test;

TEST_CASE("each fault is named by the place where it is") {
    for (const auto& fault : faultTable()) {
        const auto reading = readBundle(withChange(fault).dump(1));
        INFO(fault["about"] << "\n" << listed(reading.errors));
        CHECK(pointersOf(reading.errors) == fault["errors"].get<std::vector<std::string>>());
        CHECK_FALSE(reading.bundle);
    }
}

TEST_CASE("all faults are listed in the order of the file, not just the first") {
    Json bundle = example();
    bundle["results"][1]["reps"] = -1;
    bundle["gym"]["class"]["places"] = 0;
    bundle["shelf"][0]["easier"][0] = "box-squat";
    bundle["blocks"][0]["sections"][0]["groups"][0]["slots"][1]["reps"] = "ten";
    CHECK(errorsIn(bundle.dump()) ==
          std::vector<std::string>{"/gym/class/places", "/shelf/0/easier/0",
                                   "/blocks/0/sections/0/groups/0/slots/1/reps",
                                   "/results/1/reps"});
}

TEST_CASE("of very many faults the first are listed and the rest is counted") {
    Json bundle = example();
    for (int i = 0; i < 1000; ++i) bundle["results"].push_back({{"member", "m-001"}});
    const auto reading = readBundle(bundle.dump()); // each lacks its date, exercise and reps
    REQUIRE(reading.errors.size() == kMostFaults + 1);
    CHECK(reading.errors.front().pointer == "/results/2");
    CHECK(reading.errors[kMostFaults - 1].pointer == "/results/68");
    CHECK(reading.errors.back().text.english() == "2800 more faults are not listed.");
}

TEST_CASE("a key that stands twice in one object is a fault at the second") {
    CHECK(
        errorsIn(
            R"({"format": "blockwright-bundle", "version": 1, "gym": {"name": "A", "name": "B"}})") ==
        std::vector<std::string>{"/gym/name"});
    CHECK(
        errorsIn(
            R"({"format": "blockwright-bundle", "version": 1, "x": [{"a/b": 1, "\u0061/b": 2}]})") ==
        std::vector<std::string>{"/x/0/a~1b"});
}

TEST_CASE("a gym beneath gives what the bundle only refers to") {
    Gym gym;
    layOver(gym, readGood(docExample()));
    Json bundle = example();
    for (const auto* part : {"gym", "shelf", "members"}) bundle.erase(part);
    const auto text = bundle.dump();

    CHECK(readBundle(text, &gym).bundle);
    const Gym none;
    CHECK(pointersOf(readBundle(text, &none).errors) ==
          std::vector<std::string>{"/blocks/0/sections/0/groups/0/slots/0/exercise",
                                   "/blocks/0/sections/0/groups/0/slots/1/exercise",
                                   "/blocks/0/sections/1/groups/0/slots/0/exercise",
                                   "/results/0/member", "/results/0/exercise", "/results/1/member",
                                   "/results/1/exercise"});
}

TEST_CASE(
    "the pace of the gym beneath tells whether a dose can be timed, the bundle's own comes first") {
    Gym gym;
    layOver(gym, readGood(docExample()));
    Json bundle{{"format", "blockwright-bundle"}, {"version", 1}};
    bundle["blocks"] = example()["blocks"];
    auto& slot = bundle["blocks"][0]["sections"][0]["groups"][0]["slots"][1];
    slot = {{"exercise", "sled-push"}, {"reps", 8}};
    const std::string at = "/blocks/0/sections/0/groups/0/slots/1/reps";
    CHECK(pointersOf(readBundle(bundle.dump(), &gym).errors) == std::vector{at});

    slot["tempo"] = "2020"; // a tempo times repetitions by itself
    CHECK(readBundle(bundle.dump(), &gym).bundle);

    slot.erase("tempo");
    bundle["shelf"] = {{{"id", "sled-push"},
                        {"name", "Sled push"},
                        {"patterns", {{"lunge", 1}}},
                        {"seconds_per_rep", 2}}};
    bundle["blocks"][0]["sections"].erase(1);
    CHECK(readBundle(bundle.dump(), &gym).bundle);
}

TEST_CASE("results and needs are not followed when nothing is there to find them in") {
    CHECK(readBundle(R"({"format": "blockwright-bundle", "version": 1, "results":
        [{"member": "m-001", "date": "2026-09-03", "exercise": "row", "reps": 5}]})")
              .bundle);
    CHECK(readBundle(R"({"format": "blockwright-bundle", "version": 1, "shelf":
        [{"id": "row", "name": "Row", "patterns": {"horizontal-pull": 1}, "seconds_per_rep": 2,
          "needs": [[{"kit": "rings"}]]}]})")
              .bundle);
}
