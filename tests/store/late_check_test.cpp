// SPDX-License-Identifier: GPL-3.0-or-later
// A large file opens before its results were looked through; here every file counts as large.
#include "keeping.hpp"
#include "store/late_check.hpp"
#include "store/opening.hpp"
#include "store/sqlite/database.hpp"

using namespace bw;
using namespace bw::test;
namespace fs = std::filesystem;

namespace {
constexpr std::size_t kPage = 4096;

struct Large {
    TempFolder folder;
    fs::path path = folder / "a.bwgym";
    Gym gym;
    Large() {
        Draw draw(23);
        gym = drawGym(draw, {2, 3, 2, 2});
        auto changes = changesFor(gym);
        changes.emplace_back(PutResult{drawResult(draw, gym.members.front().id)});
        put(*made(path), changes);
    }
    // A bit in the count of rows of the table's first page.
    void damage(const char* table) const {
        std::int64_t page = 0;
        {
            sqlite::Database db(path, sqlite::Database::Mode::Read);
            page = db.number("SELECT rootpage FROM sqlite_schema WHERE name = ?", table).value();
        }
        flipBit(path, static_cast<std::size_t>(page - 1) * kPage + 4);
    }
    Result<std::unique_ptr<GymFile>> open() const {
        return store::openGymFile(path, GymFile::Access::Write, store::migrations(), 0);
    }
};

bool soundAtTheEnd(const GymFile& file) {
    for (;;)
        if (const auto sound = store::lookedThrough(file)) return sound->ok();
}
} // namespace

TEST_CASE("a large file with damaged results opens, says so, and stores nothing") {
    const Large f;
    f.damage("result");
    const std::string flipped = readText(f.path);
    {
        const auto file = f.open();
        REQUIRE(file.ok());
        CHECK(difference((*file)->load().value(), f.gym).empty());
        for (int i = 0; i < 2; ++i) {
            const auto stored = (*file)->apply(named("Edit"));
            REQUIRE(!stored.ok());
            CHECK(stored.why().english().find("is damaged") != std::string::npos);
        }
        CHECK_FALSE(soundAtTheEnd(**file));
    }
    CHECK(readText(f.path) == flipped);
}

TEST_CASE("a large file with any other damage is refused at once") {
    const Large f;
    const auto* table = GENERATE("member", "slot", "lifted");
    f.damage(table);
    const std::string flipped = readText(f.path);
    const auto file = f.open();
    REQUIRE(!file.ok());
    CHECK(file.why().english().find("is damaged") != std::string::npos);
    CHECK(readText(f.path) == flipped);
}

TEST_CASE("a large sound file stores as any other, and leaves no log behind") {
    const Large f;
    {
        const auto file = f.open();
        REQUIRE(file.ok());
        put(**file, named("Edit"));
        CHECK(soundAtTheEnd(**file));
    }
    CHECK_FALSE(fs::exists(f.folder / "a.bwgym-wal"));
    CHECK(nameIn(f.path) == "Edit");
}

TEST_CASE("a large file that is closed at once is as it was") {
    const Large f;
    const std::string before = readText(f.path);
    REQUIRE(f.open().ok());
    CHECK(readText(f.path) == before);
}
