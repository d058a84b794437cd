// SPDX-License-Identifier: GPL-3.0-or-later
#include "bundle_support.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

TEST_CASE("a gym as a bundle, laid over nothing, is that gym again") {
    Gym gym;
    const auto b = readGood(docExample());
    layOver(gym, b);
    const auto out = bundleOf(gym, b.results);
    CHECK(same(out, b));
}

TEST_CASE("what a bundle has takes its place by id and month, all else stays") {
    Gym gym;
    layOver(gym, readGood(docExample()));
    const auto b = readGood(R"({"format": "blockwright-bundle", "version": 1,
        "gym": {"kit": [{"id": "sled-lane", "name": "Sled lane", "units": 3, "claim": "set"}]},
        "shelf": [{"id": "plank", "name": "Plank", "patterns": {"trunk-stability": 1}, "measure": "seconds"}],
        "blocks": [{"month": "2026-10", "title": "Spring tide"}],
        "members": [{"id": "m-002", "name": "Reed"}, {"id": "m-001", "name": "Wren", "active": false}]})",
                            &gym);
    layOver(gym, b);
    CHECK(gym.settings.name == "Saltmarsh Boathouse");
    CHECK(gym.kit.size() == 3);
    CHECK(gym.findKit(kit("sled-lane"))->units == 3);
    CHECK(gym.shelf.size() == 4);
    CHECK(gym.shelf.find(ex("goblet-squat")));
    CHECK(gym.blocks.size() == 2);
    CHECK(gym.latest()->title == "Spring tide");
    REQUIRE(gym.members.size() == 2);
    CHECK_FALSE(gym.members[0].active);
    CHECK(gym.members[1].name == "Reed");
}

TEST_CASE("unknown keys of two bundles are merged in the gym's settings") {
    Gym gym;
    layOver(gym, readGood(R"({"format": "blockwright-bundle", "version": 1,
        "gym": {"name": "A", "founded": 1987, "class": {"music": "loud", "a": 1}}})"));
    const auto settings = readGood(R"({"format": "blockwright-bundle", "version": 1,
        "gym": {"name": "B", "class": {"music": "low", "b": 2}}})",
                                   &gym);
    layOver(gym, settings);
    CHECK(gym.settings.extras.json == R"({"founded":1987,"class":{"music":"low","a":1,"b":2}})");
    layOver(
        gym,
        readGood(R"({"format": "blockwright-bundle", "version": 1, "gym": {"founded": 1988}})"));
    CHECK(gym.settings.extras.json == R"({"founded":1988,"class":{"music":"low","a":1,"b":2}})");
}
