// SPDX-License-Identifier: GPL-3.0-or-later
// What a coach would lose, see changed and get back by a restore, before it is done.
#include "keeping.hpp"
#include "store/backup_difference.hpp"

using namespace bw;
using namespace bw::test;
namespace fs = std::filesystem;

namespace {
// A drawn gym, whole in the file and in its backup.
struct Kept {
    TempFolder folder;
    fs::path path = folder / "a.bwgym";
    Draw draw{11};
    Gym gym = drawGym(draw);
    LiftResult result = drawResult(draw, gym.members[0].id);
    std::unique_ptr<GymFile> file = made(path);
    Backup backup;
    Kept() {
        put(*file, changesFor(gym));
        put(*file, {PutResult{result}});
        backup = kept(path, BackupReason::Asked, wall("2026-11-25"));
    }
    [[nodiscard]] BackupDifference would() const {
        const auto answer = compareWithBackup(path, backup.file);
        if (!answer) FAIL(answer.why().english());
        REQUIRE(answer->has_value());
        return **answer;
    }
};
} // namespace

TEST_CASE("a gym file and the backup just made of it differ in nothing") {
    const Kept k;
    CHECK_FALSE(k.would().any());
}

TEST_CASE("results that a backup lacks, has otherwise or has alone are counted") {
    const Kept k;
    LiftResult other = k.result;
    SECTION("lacks") {
        other.date = other.date.plusDays(1);
        put(*k.file, {PutResult{other}});
        CHECK(k.would().results == Differing{1, 0, 0});
    }
    SECTION("has with other figures") {
        other.reps += 1;
        put(*k.file, {PutResult{other}});
        CHECK(k.would().results == Differing{0, 1, 0});
    }
    SECTION("has with a load where none is now") {
        other.load = k.result.load ? std::nullopt : std::optional(Mass::fromMicrograms(0).value());
        put(*k.file, {PutResult{other}});
        CHECK(k.would().results == Differing{0, 1, 0});
    }
    SECTION("has alone") {
        put(*k.file, {RemoveResult{other.member, other.date, other.exercise, other.set}});
        CHECK(k.would().results == Differing{0, 0, 1});
    }
    SECTION("goes with its member") {
        put(*k.file, {RemoveMember{other.member}});
        const auto would = k.would();
        CHECK(would.results.back == 1);
        CHECK(would.members == Differing{0, 0, 1});
    }
    CHECK(k.would().any());
}

TEST_CASE("months are named that would go, change or come back") {
    const Kept k;
    const Month first = k.gym.blocks.begin()->first, last = k.gym.blocks.rbegin()->first;
    Block changed = *k.gym.blocks.at(first);
    changed.title += "!";
    Block fresh = changed;
    fresh.month = Month::parse("2031-01").value();
    put(*k.file, {PutBlock{std::make_shared<const Block>(changed)},
                  PutBlock{std::make_shared<const Block>(fresh)}, RemoveBlock{last}});
    const auto would = k.would();
    CHECK(would.monthsChanged == std::vector{first});
    CHECK(would.monthsGone == std::vector{fresh.month});
    CHECK(would.monthsBack == std::vector{last});
}

TEST_CASE("settings, kit, exercises and members are compared, whatever their order") {
    const Kept k;
    GymSettings settings = k.gym.settings;
    settings.places += settings.places == 400 ? -1 : 1;
    Exercise lift = *k.gym.shelf.entries()[0];
    lift.name += "!";
    KitItem kit = k.gym.kit[0];
    kit.units += 1;
    put(*k.file, {PutSettings{settings}, PutExercise{std::make_shared<const Exercise>(lift)},
                  PutKit{kit}, RemoveMember{k.gym.members[1].id},
                  PutMember{k.gym.members[1]}}); // back at the end of the list
    const auto would = k.would();
    CHECK(would.settings);
    CHECK(would.exercises == Differing{0, 1, 0});
    CHECK(would.kit == Differing{0, 1, 0});
    CHECK(would.members == Differing{});
    CHECK(would.monthsChanged.empty());
}

TEST_CASE("what can't be compared says why, and an earlier format is not taken for a loss") {
    const Kept k;
    SECTION("a damaged backup") {
        writeText(k.backup.file, "my notes");
        const auto answer = compareWithBackup(k.path, k.backup.file);
        REQUIRE_FALSE(answer.ok());
        CHECK(answer.why().english().find("is not a gym file") != std::string::npos);
    }
    SECTION("a gym file that is gone") {
        const auto answer = compareWithBackup(k.folder / "none.bwgym", k.backup.file);
        REQUIRE_FALSE(answer.ok());
        CHECK(answer.why().english().find("none.bwgym” is not there") != std::string::npos);
    }
    SECTION("an earlier format") {
        const fs::path old = k.folder / "old.bwgym";
        fs::copy_file(fs::path(BW_SOURCE_DIR) / "tests/store/files/v1.bwgym.bin", old);
        const auto answer = compareWithBackup(k.path, old);
        REQUIRE(answer.ok());
        CHECK_FALSE(answer->has_value());
    }
}
