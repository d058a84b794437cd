// SPDX-License-Identifier: GPL-3.0-or-later
#include "gyms.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <algorithm>

using namespace bw;
using namespace bw::test;

TEST_CASE("a new gym file holds a gym with the default settings and nothing else") {
    const TempFolder folder;
    const auto file = made(folder / "new.bwgym");
    CHECK(file->writable());
    CHECK(file->writer().empty());
    CHECK(file->path() == folder / "new.bwgym");
    CHECK(difference(file->load().value(), Gym{}).empty());
    CHECK(allResults(*file).empty());
}

TEST_CASE("what is put into a gym file comes out equal, whatever the gym") {
    const auto seed = GENERATE(range(1, 21));
    Draw draw(static_cast<std::uint64_t>(seed));
    const TempFolder folder;
    const Gym gym = drawGym(draw);
    put(*made(folder / "a.bwgym"), changesFor(gym));
    CAPTURE(seed);
    CHECK(difference(loaded(folder / "a.bwgym"), gym).empty());
}

TEST_CASE("a change takes the place of what was there, and everything keeps its order") {
    const auto seed = GENERATE(range(1, 21));
    Draw draw(static_cast<std::uint64_t>(seed));
    const TempFolder folder;
    Gym gym = drawGym(draw);
    const auto file = made(folder / "a.bwgym");
    put(*file, changesFor(gym));

    const auto kitId = gym.kit[2].id;
    const auto exerciseId = gym.shelf.entries()[3]->id;
    const auto memberId = gym.members[1].id;
    gym.settings = drawSettings(draw);
    gym.put(drawKit(draw, kitId.text()));
    gym.shelf.put(drawExercise(draw, exerciseId.text()));
    gym.put(drawBlock(draw, month("2021-02")));
    gym.put(drawMember(draw, memberId.text()));
    put(*file,
        {PutSettings{gym.settings}, PutKit{gym.kit[2]}, PutExercise{gym.shelf.entry(exerciseId)},
         PutBlock{gym.block(month("2021-02"))}, PutMember{gym.members[1]}});
    CAPTURE(seed);
    CHECK(difference(file->load().value(), gym).empty());
}

TEST_CASE("what is taken out is gone, with all that belonged to it, and leaves the rest in order") {
    Draw draw(7);
    const TempFolder folder;
    Gym gym = drawGym(draw);
    const auto file = made(folder / "a.bwgym");
    put(*file, changesFor(gym));
    put(*file, {RemoveKit{gym.kit[1].id}, RemoveExercise{gym.shelf.entries()[4]->id},
                RemoveBlock{month("2021-02")}, RemoveMember{gym.members[0].id}});
    gym.kit.erase(gym.kit.begin() + 1);
    gym.shelf.remove(gym.shelf.entries()[4]->id);
    gym.blocks.erase(month("2021-02"));
    gym.members.erase(gym.members.begin());
    CHECK(difference(file->load().value(), gym).empty());

    SECTION("and taking out what is not there changes nothing") {
        put(*file, {RemoveKit{kit("none")}, RemoveExercise{ex("none")},
                    RemoveBlock{month("2999-12")}, RemoveMember{memberId("none")},
                    RemoveResult{memberId("none"), date("2026-01-01"), ex("none"), 1}});
        CHECK(difference(file->load().value(), gym).empty());
    }
}

TEST_CASE("the changes of one list are made in their order") {
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    Draw draw(3);
    const Member before = drawMember(draw, "m-1"), after = drawMember(draw, "m-1");
    const LiftResult result = drawResult(draw, memberId("m-1"));
    put(*file, {PutMember{before}, PutResult{result}, RemoveMember{before.id}, PutMember{after},
                PutResult{result}});
    CHECK(file->load()->members == std::vector{after});
    CHECK(allResults(*file) == std::vector{result});
}

TEST_CASE("an empty list of changes is stored, and changes nothing") {
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    CHECK(file->apply({}).ok());
    CHECK(difference(file->load().value(), Gym{}).empty());
}
