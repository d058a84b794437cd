// SPDX-License-Identifier: GPL-3.0-or-later
#include "keeping.hpp"
#include "people.hpp"
#include "store/backup_names.hpp"
#include "store/checksum.hpp"
#include "store/sqlite/failure.hpp"
#include "synced.hpp"

#include <sys/stat.h>

using namespace bw;
using namespace bw::test;
namespace fs = std::filesystem;

namespace {
unsigned modeOf(const fs::path& file) {
    struct stat s {};
    REQUIRE(::stat(file.c_str(), &s) == 0);
    return s.st_mode & 0777U;
}
std::size_t filesIn(const fs::path& folder) {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder), {}));
}
// Was one made? Daily, at that moment.
bool daily(const fs::path& path, WallTime now) {
    const auto made = backUpDaily(path, now);
    if (!made) FAIL(made.why().english());
    return made->has_value();
}
Member person(const std::string& id, const std::string& name) {
    return {
        memberId(id), name, {{Demand::Knee, FlagLevel::Avoid, "note on " + name, {}}}, true, {}};
}
} // namespace

TEST_CASE("a checksum is that of ISO 3309") {
    // The check value of CRC-32/ISO-HDLC in the catalogue of parametrised CRC algorithms,
    // https://reveng.sourceforge.io/crc-catalogue/17plus.htm
    CHECK(store::checksum("123456789") == 0xCBF43926U);
    CHECK(store::checksum("456789", store::checksum("123")) == 0xCBF43926U);
}

TEST_CASE("the name of a backup says number, time, reason and checksum, and is read back") {
    using store::BackupName;
    const BackupName name{42, wall("2026-11-25", 8, 5), BackupReason::Import, 0x0f3a1c2bU};
    CHECK(name.text() == "0042-2026-11-25-0805-import-0f3a1c2b.bwgym");
    const auto read = BackupName::parse(name.text());
    REQUIRE(read.has_value());
    CHECK(read->text() == name.text());
    CHECK(BackupName{10'000, wall("2026-01-01"), BackupReason::Damaged, {}}.text() ==
          "10000-2026-01-01-1830-damaged.bwgym");
    for (const char* other :
         {"gym.bwgym", "0042-2026-11-25-0805-import-0f3a1c2b.bwgym-wal", "0042-2026-11-25.bwgym",
          "0042-2026-13-25-0805-import.bwgym", "0042-2026-11-25-2405-import.bwgym",
          "0042-2026-11-25-0805-lunch.bwgym", "0000-2026-11-25-0805-daily.bwgym",
          "0042-2026-11-25-0805-daily-xyz.bwgym", ".bwgym", ""})
        CHECK_FALSE(BackupName::parse(other).has_value());
}

TEST_CASE(
    "a backup holds all that the gym file holds while that is open, and its owner alone reads it") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    const auto file = made(path);
    Draw draw(3);
    const Gym gym = drawGym(draw);
    put(*file, changesFor(gym));
    const auto result = drawResult(draw, gym.members[0].id);
    put(*file, {PutResult{result}});

    const auto old = ::umask(0);
    const Backup backup = kept(path, BackupReason::Import, wall("2026-11-25"));
    ::umask(old);
    CHECK(backup.file.parent_path() == folder / "a.bwgym.backups");
    CHECK(backup.number == 1);
    CHECK(backup.bytes == fs::file_size(backup.file));
    CHECK(modeOf(backup.file) == 0600U);
    CHECK(modeOf(backup.file.parent_path()) == 0700U);
    CHECK(filesIn(backup.file.parent_path()) == 1);
    CHECK(difference(loaded(backup.file), gym).empty());
    CHECK(allResults(*opened(backup.file, GymFile::Access::Read)) == std::vector{result});

    const auto in = lookIntoBackup(backup.file);
    REQUIRE(in.ok());
    CHECK(in->gym == gym.settings.name);
    CHECK(in->months == gym.blocks.size());
    CHECK(in->exercises == gym.shelf.size());
    CHECK(in->members == gym.members.size());
    CHECK(in->results == 1);
    CHECK(in->firstMonth == month("2021-01"));
    CHECK(in->lastMonth == month("2021-03"));
    CHECK(in->newestResult == result.date);
    CHECK(in->asMade);
    put(*file, named("The gym file takes edits as before"));
}

TEST_CASE("a backup is on the disk before it has its name, and then its name is") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    (void)made(path);
    Synced synced;
    const Backup backup = kept(path, BackupReason::Import, wall("2026-11-25"));
    const auto& paths = synced.paths();
    REQUIRE(paths.size() >= 2);
    CHECK(paths[paths.size() - 2].filename().string().starts_with(".a.bwgym.new-"));
    CHECK(paths.back() == backup.file.parent_path());
}

TEST_CASE("backups are listed with the last made first; other files are left out and alone") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    (void)made(path);
    CHECK(backupsBeside(path).empty());
    const auto first = kept(path, BackupReason::Daily, wall("2026-11-25", 9, 15));
    const auto second = kept(path, BackupReason::Import, wall("2026-11-24", 20, 0));
    writeText(backupFolder(path) / "notes.txt", "mine");
    const auto list = backupsBeside(path);
    REQUIRE(list.size() == 2);
    CHECK(list[0].file == second.file);
    CHECK(list[0].number == 2);
    CHECK(list[0].reason == BackupReason::Import);
    CHECK(list[1].at == wall("2026-11-25", 9, 15));
    CHECK(list[1].file == first.file);
    fs::create_symlink(path, folder / "link.bwgym");
    CHECK(backupsBeside(folder / "link.bwgym").size() == 2);
    fs::remove(path);
    CHECK(backupsBeside(path).size() == 2);
    CHECK(readText(backupFolder(path) / "notes.txt") == "mine");
}

TEST_CASE("one daily backup is made a day, also when the clock is set back") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    (void)made(path);
    CHECK(daily(path, wall("2026-11-24")));
    CHECK_FALSE(daily(path, wall("2026-11-24", 23, 59)));
    (void)kept(path, BackupReason::Import, wall("2026-11-25", 0, 0));
    CHECK(daily(path, wall("2026-11-25", 0, 1)));
    // Back to a day that has one of the first time round.
    CHECK(daily(path, wall("2026-11-24", 7, 0)));
    CHECK_FALSE(daily(path, wall("2026-11-24", 6, 0)));
    CHECK(daily(path, wall("1999-12-31")));
    CHECK(daily(path, wall("2026-11-26")));
    const auto list = backupsBeside(path);
    REQUIRE(list.size() == 6);
    CHECK(list.front().number == 6);
    CHECK(list.front().at == wall("2026-11-26"));
}

TEST_CASE(
    "a backup that is due to go goes when the next is made, for one of its week that reads well") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    (void)made(path);
    std::vector<fs::path> dropped;
    const auto days = [&](std::string_view from, int count) {
        for (int i = 0; i < count; ++i) {
            const auto one = backUpDaily(path, wall(date(from).plusDays(i).text()));
            REQUIRE((one.ok() && one->has_value()));
            dropped = (**one).dropped;
        }
    };
    days("2026-11-09", 7); // Monday to Sunday
    const auto week = backupsBeside(path);
    fs::resize_file(week[0].file, 5000); // Sunday's is lost
    days("2026-11-16", 1);
    CHECK(dropped == std::vector{week[6].file});
    days("2026-11-17", 7);
    CHECK(fs::exists(week[1].file)); // Saturday's stands for the week
    for (const std::size_t gone : {0, 2, 3, 4, 5, 6}) CHECK(!fs::exists(week[gone].file));
    CHECK(filesIn(backupFolder(path)) == 7 + 1);
}

TEST_CASE(
    "what was opened and changed, and what the disk changed, is told apart from what was made") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    put(*made(path), named("Low tide"));
    const auto backup = kept(path, BackupReason::Daily, wall("2026-11-25"));
    REQUIRE(lookIntoBackup(backup.file)->asMade);
    SECTION("looking changes nothing") {
        CHECK(nameIn(backup.file) == "Low tide");
        CHECK(lookIntoBackup(backup.file)->asMade);
    }
    SECTION("an edit") {
        put(*opened(backup.file), named("High tide"));
        CHECK_FALSE(lookIntoBackup(backup.file)->asMade);
    }
    SECTION("a letter of a name, which SQLite can't tell") {
        flipBit(backup.file, readText(backup.file).find("Low tide"));
        CHECK_FALSE(lookIntoBackup(backup.file)->asMade);
    }
    SECTION("a page, which it can") {
        std::string bytes = readText(backup.file);
        bytes.replace(4096, 64, std::string(64, '\xa5'));
        writeText(backup.file, bytes);
        const auto in = lookIntoBackup(backup.file);
        REQUIRE(!in.ok());
        CHECK(in.why().english().find("is damaged (") != std::string::npos);
    }
}

TEST_CASE("a backup that can't be made says so, and leaves the gym file and the other backups") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    const auto file = made(path);
    put(*file, named("Low tide"));
    const auto first = kept(path, BackupReason::Daily, wall("2026-11-24"));
    int n = 0;
    for (bool done = false; !done; ++n) {
        CAPTURE(n);
        sqlite::failAfter(n);
        const auto answer = backUpDaily(path, wall("2026-11-25"));
        sqlite::failAfter(std::nullopt);
        done = answer.ok();
        if (!done) {
            CHECK(answer.why().english().find("you can go on") != std::string::npos);
            CHECK(filesIn(backupFolder(path)) == 1);
        }
        CHECK(file->apply(named("Edit " + std::to_string(n))).ok());
        REQUIRE(n < 100);
    }
    CHECK(n > 3);
    CHECK(lookIntoBackup(first.file).ok());
    CHECK(filesIn(backupFolder(path)) == 2);
}

TEST_CASE("where no backup can be written the gym file opens and takes edits all the same") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    (void)made(path);
    writeText(backupFolder(path), "a file has the name of the folder");
    const auto file = opened(path);
    const auto answer = backUpDaily(path, wall("2026-11-25"));
    REQUIRE(!answer.ok());
    CHECK(file->apply(named("Low tide")).ok());
    CHECK(readText(backupFolder(path)) == "a file has the name of the folder");
}

TEST_CASE("in a folder that may not be written no backup is made, and that is told") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    put(*made(path), named("Low tide"));
    fs::permissions(path, static_cast<fs::perms>(0444));
    fs::permissions(folder.path(), static_cast<fs::perms>(0555));
    CHECK(asNobody([&] {
        const auto answer = backUp(path, BackupReason::Daily, wall("2026-11-25"));
        return !answer && answer.why().english().find("No backup of") == 0 &&
               nameIn(path) == "Low tide";
    }));
    fs::permissions(folder.path(), static_cast<fs::perms>(0777));
}

TEST_CASE("what a killed program left of a backup is cleared away by the next") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    (void)made(path);
    (void)kept(path, BackupReason::Daily, wall("2026-11-24"));
    Other gone([](Other&) { return true; });
    const auto dead = std::to_string(gone.pid());
    REQUIRE(gone.endsWell());
    Other alive([](Other& us) { return us.hear().empty(); });
    const auto left = backupFolder(path) / (".a.bwgym.new-" + dead + "-1");
    const auto working =
        backupFolder(path) / (".a.bwgym.new-" + std::to_string(alive.pid()) + "-1");
    writeText(left, "Quillon Featherstone");
    writeText(working, "half");
    (void)kept(path, BackupReason::Daily, wall("2026-11-25"));
    CHECK(!fs::exists(left));
    CHECK(fs::exists(working));
    CHECK(backupsBeside(path).size() == 2);
}

TEST_CASE("an erased member is in no byte of the file and its log, and the backups that hold them "
          "are named") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    const auto file = made(path);
    put(*file, named("Low tide"));
    (void)kept(path, BackupReason::Daily, wall("2026-11-23"));
    std::vector<Change> people;
    for (int i = 1; i <= 200; ++i)
        people.emplace_back(
            PutMember{person("m-" + std::to_string(i), "Quillfeather" + std::to_string(i) + "x")});
    put(*file, people);
    Draw draw(8);
    for (int i = 0; i < 200; ++i) // rows that move, pages that split
        put(*file, {PutMember{person("m-" + std::to_string(draw.number(1, 200)),
                                     "Quillfeather" + std::to_string(i) + "y" +
                                         std::string(std::size_t(draw.number(0, 150)), 'z'))}});
    const auto holder = kept(path, BackupReason::Daily, wall("2026-11-24"));
    const auto broken = kept(path, BackupReason::Import, wall("2026-11-24"));
    fs::resize_file(broken.file, 5000);
    for (int i = 1; i <= 200; ++i) put(*file, {RemoveMember{memberId("m-" + std::to_string(i))}});
    for (const auto& entry : fs::directory_iterator(folder.path()))
        if (entry.is_regular_file())
            CHECK(readText(entry.path()).find("Quillfeather") == std::string::npos);
    (void)kept(path, BackupReason::Daily, wall("2026-11-25"));

    const auto holding = backupsHolding(path, memberId("m-7"));
    REQUIRE(holding.ok());
    REQUIRE(holding->size() == 2);
    CHECK(holding->at(0).backup.file == broken.file);
    CHECK(!holding->at(0).name.has_value());
    CHECK(holding->at(1).backup.file == holder.file);
    CHECK(holding->at(1).name == loaded(holder.file).findMember(memberId("m-7"))->name);
    CHECK(backupsHolding(path, memberId("m-999"))->size() == 1); // the one that can't be read
}
