// SPDX-License-Identifier: GPL-3.0-or-later
// A backup takes the place of the gym file whole or not at all, and what was there is kept.
#include "failing_disk.hpp"
#include "keeping.hpp"
#include "people.hpp"
#include "store/sqlite/database.hpp"
#include "version1_gym.hpp"

#include <sqlite3.h>
#include <unistd.h>

using namespace bw;
using namespace bw::test;
namespace fs = std::filesystem;

namespace {
const WallTime kNow = wall("2026-11-25");

// Low tide is backed up; high tide is in the file.
struct Tides {
    TempFolder folder;
    fs::path path = folder / "a.bwgym";
    Backup low;
    Tides() {
        put(*made(path), named("Low tide"));
        low = kept(path, BackupReason::Daily, wall("2026-11-24"));
        put(*opened(path), named("High tide"));
    }
    [[nodiscard]] std::string whyNot(const fs::path& backup) const {
        const auto answer = restoreBackup(path, backup, kNow);
        return answer ? "restored" : answer.why().english();
    }
    [[nodiscard]] std::size_t files() const { // beside the gym file
        return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder.path()), {}));
    }
};
} // namespace

TEST_CASE("a restored gym file holds what the backup holds; what was there is a backup now") {
    const Tides t;
    const auto done = restored(t.path, t.low.file, kNow);
    CHECK(nameIn(t.path) == "Low tide");
    REQUIRE(done.before.has_value());
    CHECK(nameIn(*done.before) == "High tide");
    CHECK(backupsBeside(t.path)[0].reason == BackupReason::Restore);
    CHECK(lookIntoBackup(t.low.file)->asMade);
    CHECK(t.files() == 2); // the file and its backups: no log, no lock, nothing half made
    const auto file = opened(t.path);
    CHECK(file->writable());
    put(*file, named("Neap"));
}

TEST_CASE("restoring goes back and forth") {
    const Tides t;
    const auto high = *restored(t.path, t.low.file, kNow).before;
    (void)restored(t.path, high, kNow);
    CHECK(nameIn(t.path) == "High tide");
}

TEST_CASE("a gym file that is gone comes back from its backup") {
    const Tides t;
    fs::remove(t.path);
    SECTION("alone") { CHECK(!restored(t.path, t.low.file, kNow).before.has_value()); }
    SECTION("with its log left lying there") {
        writeText(t.folder / "a.bwgym-wal", "of the lost file");
        const auto done = restored(t.path, t.low.file, kNow);
        REQUIRE(done.before.has_value());
        CHECK(readText(done.before->string() + "-wal") == "of the lost file");
    }
    CHECK(nameIn(t.path) == "Low tide");
    CHECK(t.files() == 2);
}

TEST_CASE("a damaged gym file is set aside byte for byte when a backup takes its place") {
    const Tides t;
    std::string bytes = readText(t.path);
    SECTION("noise") { bytes.replace(4096, 64, std::string(64, '\xa5')); }
    SECTION("cut") { bytes.resize(bytes.size() / 2); }
    SECTION("something else altogether") { bytes = "my notes"; }
    SECTION("empty") { bytes.clear(); }
    writeText(t.path, bytes);
    writeText(t.folder / "a.bwgym-wal", "its log");
    const auto done = restored(t.path, t.low.file, kNow);
    CHECK(nameIn(t.path) == "Low tide");
    REQUIRE(done.before.has_value());
    CHECK(readText(*done.before) == bytes);
    CHECK(readText(done.before->string() + "-wal") == "its log");
    CHECK(backupsBeside(t.path)[0].reason == BackupReason::Damaged);
    CHECK(t.files() == 2);
}

TEST_CASE("what can't be restored is refused before anything changes") {
    const Tides t;
    const std::string before = readText(t.path);
    SECTION("a damaged backup") {
        std::string bytes = readText(t.low.file);
        bytes.replace(4096, 64, std::string(64, '\xa5'));
        writeText(t.low.file, bytes);
        CHECK(t.whyNot(t.low.file).find("is damaged (") != std::string::npos);
    }
    SECTION("one of a newer version") {
        sqlite::Database(t.low.file, sqlite::Database::Mode::Write)
            .script("PRAGMA user_version = 99");
        CHECK(t.whyNot(t.low.file).find("written by a newer Blockwright") != std::string::npos);
    }
    SECTION("one that is not there") {
        const auto why = t.whyNot(backupFolder(t.path) / "none.bwgym");
        CHECK(why.find("none.bwgym” is not there") != std::string::npos);
    }
    SECTION("the gym file itself") {
        CHECK(t.whyNot(t.path).find("is the gym file itself") != std::string::npos);
    }
    SECTION("something else") {
        writeText(t.folder / "notes", std::string(500, 'x'));
        CHECK(t.whyNot(t.folder / "notes").find("is not a gym file") != std::string::npos);
        fs::remove(t.folder / "notes");
    }
    CHECK(readText(t.path) == before);
    CHECK(t.files() == 2);
    CHECK(backupsBeside(t.path).size() == 1);
}

TEST_CASE("nothing is restored while the gym file is open anywhere") {
    const Tides t;
    SECTION("for writing, by another process") {
        Other other([&](Other& us) {
            const auto file = GymFile::open(t.path);
            us.say(file && (*file)->writable() ? "open" : "not open");
            return us.hear() == "close" && (*file)->apply(named("Spring tide")).ok();
        });
        REQUIRE(other.hear() == "open");
        CHECK(t.whyNot(t.low.file).find("process " + std::to_string(other.pid())) !=
              std::string::npos);
        other.say("close");
        CHECK(other.endsWell());
        CHECK(nameIn(t.path) == "Spring tide");
    }
    SECTION("for reading, by another process") {
        Other other([&](Other& us) {
            const auto file = GymFile::open(t.path, GymFile::Access::Read);
            us.say(file && (*file)->load().ok() ? "open" : "not open");
            return us.hear() == "close" && (*file)->load()->settings.name == "High tide";
        });
        REQUIRE(other.hear() == "open");
        CHECK(t.whyNot(t.low.file).find("Another program is busy with") != std::string::npos);
        other.say("close");
        CHECK(other.endsWell());
        CHECK(nameIn(t.path) == "High tide");
    }
    SECTION("by this one") {
        const auto file = opened(t.path);
        CHECK(t.whyNot(t.low.file).find("process " + std::to_string(::getpid())) !=
              std::string::npos);
        CHECK(file->apply(named("Spring tide")).ok());
    }
    CHECK(backupsBeside(t.path).size() == 1);
    (void)restored(t.path, t.low.file, kNow); // once it is closed
    CHECK(nameIn(t.path) == "Low tide");
}

TEST_CASE("nothing is restored, nor brought up to date, when no backup can be made first") {
    const Tides t;
    const auto backup = t.folder / "elsewhere.bwgym";
    fs::rename(t.low.file, backup);
    fs::remove_all(backupFolder(t.path));
    writeText(backupFolder(t.path), "in the way");
    CHECK(t.whyNot(backup).find("Nothing was restored, because no backup of") == 0);
    CHECK(nameIn(t.path) == "High tide");

    const auto old = t.folder / "old.bwgym";
    fs::copy_file(fs::path(BW_SOURCE_DIR) / "tests/store/files/v1.bwgym.bin", old);
    writeText(backupFolder(old), "in the way");
    const std::string before = readText(old);
    const auto refused = GymFile::open(old);
    REQUIRE(!refused.ok());
    CHECK(refused.why().english().find("was not brought up to date because") != std::string::npos);
    CHECK(readText(old) == before);
}

TEST_CASE("a gym file that another computer writes is not restored over, and the way out is told") {
    const Tides t;
    writeText(t.folder / "a.bwgym.lock", "boathouse\n123\nBlockwright\n");
    const auto why = t.whyNot(t.low.file);
    CHECK(why.find("Blockwright on boathouse, process 123") != std::string::npos);
    CHECK(why.find("delete that file") != std::string::npos);
    CHECK(nameIn(t.path) == "High tide");
}

TEST_CASE("a gym file that may not be written is not restored over") {
    const Tides t;
    fs::permissions(t.path, static_cast<fs::perms>(0444));
    for (const unsigned mode : {0555U, 0777U}) {
        fs::permissions(t.folder.path(), static_cast<fs::perms>(mode));
        fs::permissions(backupFolder(t.path), static_cast<fs::perms>(0777));
        fs::permissions(t.low.file, static_cast<fs::perms>(0444));
        CHECK(asNobody([&] {
            return t.whyNot(t.low.file).find("may not be changed where it is") !=
                       std::string::npos &&
                   nameIn(t.path) == "High tide";
        }));
    }
}

TEST_CASE("a backup of an older version is restored, and brought up to date when it is opened") {
    const Tides t;
    const auto old = t.folder / "old.bwgym";
    fs::copy_file(fs::path(BW_SOURCE_DIR) / "tests/store/files/v1.bwgym.bin", old);
    CHECK(lookIntoBackup(old)->version == 1);
    (void)restored(t.path, old, kNow);
    const auto file = opened(t.path);
    CHECK(file->writable());
    CHECK(difference(file->load().value(), version1Gym()).empty());
    CHECK(backupsBeside(t.path)[0].reason == BackupReason::Update);
    CHECK(lookIntoBackup(backupsBeside(t.path)[0].file)->version == 1);
}

TEST_CASE("a restore that fails at any statement leaves the file before or the one after") {
    const Tides t;
    int n = 0;
    for (bool done = false; !done; ++n) {
        CAPTURE(n);
        sqlite::failAfter(n);
        done = restoreBackup(t.path, t.low.file, kNow).ok();
        sqlite::failAfter(std::nullopt);
        CHECK(nameIn(t.path) == (done ? "Low tide" : "High tide"));
        CHECK(t.files() == 2);
        CHECK(lookIntoBackup(t.low.file)->asMade);
        REQUIRE(n < 150);
    }
    CHECK(n > 15);
}

TEST_CASE("a disk that fails at any write while a backup is restored leaves all of one file") {
    const Tides t;
    FailingDisk disk;
    int n = 0;
    for (bool done = false; !done; ++n) {
        CAPTURE(n);
        disk.failAfter(n, n % 2 == 0 ? SQLITE_FULL : SQLITE_IOERR_WRITE);
        done = restoreBackup(t.path, t.low.file, kNow).ok();
        disk.mend();
        CHECK(nameIn(t.path) == (done ? "Low tide" : "High tide"));
        CHECK(t.files() == 2);
        REQUIRE(n < 300);
    }
    CHECK(n > 10);
}

TEST_CASE("a restore killed at any moment leaves all of one file, and the backup") {
    const Tides t;
    Draw draw(99);
    for (int kill = 0; kill < 40; ++kill) {
        CAPTURE(kill);
        {
            Other other([&](Other& us) {
                us.say("now");
                (void)restoreBackup(t.path, t.low.file, kNow);
                return us.hear().empty();
            });
            REQUIRE(other.hear() == "now");
            ::usleep(static_cast<useconds_t>(draw.number(0, 30'000)));
            other.kill();
        }
        const auto file = opened(t.path);
        REQUIRE(file->writable());
        const auto name = file->load()->settings.name;
        CHECK((name == "High tide" || name == "Low tide"));
        CHECK(lookIntoBackup(t.low.file)->asMade);
        put(*file, named("High tide"));
    }
    (void)restored(t.path, t.low.file, kNow);
    CHECK(t.files() == 2);
}
