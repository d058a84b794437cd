// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/floor/study.hpp"
#include "blockwright/propose/propose.hpp"
#include "core/propose/propose_gym.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

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
