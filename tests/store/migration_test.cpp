// SPDX-License-Identifier: GPL-3.0-or-later
// From version to version, with steps that only these tests know.
#include "keeping.hpp"
#include "people.hpp"
#include "store/making.hpp"
#include "store/opening.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;
namespace fs = std::filesystem;

namespace {
const auto kNow = static_cast<std::int64_t>(store::migrations().size());

// One step gives a column more, the next makes a table anew that others refer to.
store::Migrations longer() {
    auto steps = store::migrations();
    steps.push_back(
        {"Give each month a colour.", "8.1",
         "ALTER TABLE block ADD COLUMN colour TEXT; UPDATE block SET colour = 'grey';"});
    steps.push_back({"Let a member have no name.", "8.2",
                     "CREATE TABLE new_member (key INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE, "
                     "name TEXT, active INTEGER NOT NULL, extras TEXT NOT NULL) STRICT;"
                     "INSERT INTO new_member SELECT * FROM member; DROP TABLE member;"
                     "ALTER TABLE new_member RENAME TO member;"});
    return steps;
}
store::Migrations withLast(std::string_view sql) {
    auto steps = store::migrations();
    steps.push_back({"A step that fails.", "8.1", sql});
    return steps;
}

struct Filled {
    explicit Filled(const fs::path& path) {
        Draw draw(41);
        gym = drawGym(draw);
        auto changes = changesFor(gym);
        result = {drawResult(draw, gym.members[0].id)};
        changes.emplace_back(PutResult{result[0]});
        put(*made(path), changes);
    }
    Gym gym;
    std::vector<LiftResult> result;
};

std::int64_t versionOf(const fs::path& path) {
    sqlite::Database db(path, sqlite::Database::Mode::Read);
    return db.number("PRAGMA user_version").value();
}
// The backup that was made before the last steps.
fs::path copyOf(const fs::path& path) {
    const auto list = backupsBeside(path);
    REQUIRE(!list.empty());
    CHECK(list[0].reason == BackupReason::Update);
    return list[0].file;
}
std::unique_ptr<GymFile> openedWith(const fs::path& path, const store::Migrations& steps) {
    auto file = store::openGymFile(path, GymFile::Access::Write, steps);
    if (!file) FAIL(file.why().english());
    return std::move(file).value();
}
} // namespace

TEST_CASE("every step of the gym file has a sentence, a first program and statements") {
    for (const auto& step : store::migrations()) {
        CHECK(step.sentence.ends_with('.'));
        CHECK(!step.since.empty());
        CHECK(!step.sql.empty());
    }
    const TempFolder folder;
    (void)made(folder / "a.bwgym");
    CHECK(versionOf(folder / "a.bwgym") == kNow);
}

TEST_CASE("an older gym file is backed up, then brought up to date with all it holds") {
    const TempFolder folder;
    const auto path = folder / "my gym.bwgym";
    const Filled filled(path);
    {
        const auto file = openedWith(path, longer());
        CHECK(file->writable());
        CHECK(difference(file->load().value(), filled.gym).empty());
        CHECK(allResults(*file) == filled.result);
    }
    CHECK(versionOf(path) == kNow + 2);
    const auto copy = copyOf(path);
    CHECK(versionOf(copy) == kNow);
    CHECK(difference(loaded(copy), filled.gym).empty());
    CHECK(allResults(*opened(copy, GymFile::Access::Read)) == filled.result);

    SECTION("after which this program refuses it, and says what reads it") {
        const auto refused = GymFile::open(path);
        REQUIRE(!refused.ok());
        CHECK(refused.why().english().find("it needs version 8.2 or later") != std::string::npos);
    }
    SECTION("and only once") {
        (void)openedWith(path, longer());
        CHECK(backupsBeside(path).size() == 1);
    }
    SECTION("and the backup, restored, is brought up to date again") {
        fs::remove(path);
        (void)restored(path, copy, wall("2026-11-25"));
        (void)openedWith(path, longer());
        CHECK(versionOf(path) == kNow + 2);
        CHECK(backupsBeside(path).size() == 2);
    }
}

TEST_CASE("a step that fails leaves the older file as it was, byte for byte, and the copy") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    const Filled filled(path);
    const std::string before = readText(path);
    const auto sql = GENERATE("ALTER TABLE block ADD COLUMN colour TEXT; SELECT * FROM nowhere;",
                              "UPDATE kit_item SET claim = NULL;",
                              "DELETE FROM member;"); // leaves a result that belongs to nobody
    const auto refused = store::openGymFile(path, GymFile::Access::Write, withLast(sql));
    REQUIRE(!refused.ok());
    CHECK(readText(path) == before);
    CHECK(difference(loaded(path), filled.gym).empty());
    CHECK(difference(loaded(copyOf(path)), filled.gym).empty());
}

TEST_CASE("bringing up to date that fails at any statement leaves the older file") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    const Filled filled(path);
    const std::string before = readText(path);
    int n = 0;
    for (bool done = false; !done; ++n) {
        CAPTURE(n);
        sqlite::failAfter(n);
        done = store::openGymFile(path, GymFile::Access::Write, longer()).ok();
        sqlite::failAfter(std::nullopt);
        REQUIRE(n < 100);
        if (!done && versionOf(path) == kNow) CHECK(readText(path) == before);
    }
    CHECK(n > 20);
    CHECK(versionOf(path) == kNow + 2);
    CHECK(difference(openedWith(path, longer())->load().value(), filled.gym).empty());
}

TEST_CASE("an older gym file that can't be brought up to date where it is stays as it is") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    const Filled filled(path);
    const std::string before = readText(path);
    const auto check = [&] {
        const auto refused = store::openGymFile(path, GymFile::Access::Write, longer());
        return !refused &&
               refused.why().english().find("written by an older Blockwright") != std::string::npos;
    };
    SECTION("when it may not be written") {
        fs::permissions(path, static_cast<fs::perms>(0444));
        CHECK(asNobody(check));
    }
    SECTION("when another writes to it") {
        const auto writer = opened(path);
        CHECK(check());
    }
    CHECK(readText(path) == before);
    CHECK(backupsBeside(path).empty());
}
