// SPDX-License-Identifier: GPL-3.0-or-later
// One bit of a gym file, its log or its backup has changed without anybody's doing.
#include "keeping.hpp"

using namespace bw;
using namespace bw::test;
namespace fs = std::filesystem;

namespace {
const WallTime kNow = wall("2026-11-25");
constexpr std::size_t kPage = 4096, kOfSchema = 1;

struct Filled {
    TempFolder folder;
    fs::path path = folder / "a.bwgym";
    Gym gym;
    Filled() {
        Draw draw(17);
        gym = drawGym(draw, {2, 3, 2, 2});
        put(*made(path), changesFor(gym));
    }
};
} // namespace

TEST_CASE(
    "a flipped bit in what holds a gym file together is found, told, and mended by a backup") {
    const Filled f;
    const Backup backup = kept(f.path, BackupReason::Daily, kNow);
    const std::string good = readText(f.path);
    // Places: https://www.sqlite.org/fileformat2.html
    const auto [region, at] = GENERATE(table<std::string, std::size_t>({
        {"the first word of the file", 3},
        {"the size of a page", 16},
        {"the format of the schema", 47},
        {"the mark of a gym file", 69},
        {"the kind of the first page", 100},
        {"the kind of a table's page", 2 * kPage},
        {"the number of rows on a page", 3 * kPage + 4},
        {"where the rows of a page begin", 3 * kPage + 5},
        {"the words of the schema", kOfSchema},
    }));
    CAPTURE(region);
    flipBit(f.path, at == kOfSchema ? good.find("CREATE TABLE setting") + 2 : at);
    const std::string flipped = readText(f.path);
    const auto file = GymFile::open(f.path);
    REQUIRE(!file.ok());
    CAPTURE(file.why().english());
    CHECK(readText(f.path) == flipped);
    const auto done = restored(f.path, backup.file, kNow);
    CHECK(difference(loaded(f.path), f.gym).empty());
    CHECK(readText(*done.before) == flipped);
}

TEST_CASE("a flipped bit anywhere in a gym file never makes the program fall over") {
    const Filled f;
    const std::string good = readText(f.path);
    const auto path = f.folder / "b.bwgym";
    Draw draw(5);
    int refused = 0;
    for (int i = 0; i < 150; ++i) {
        const auto at =
            static_cast<std::size_t>(draw.number(0, static_cast<std::int64_t>(good.size()) - 1));
        CAPTURE(at);
        writeText(path, good);
        flipBit(path, at, static_cast<int>(draw.number(0, 7)));
        const auto file = GymFile::open(path, GymFile::Access::Read);
        const auto gym = file ? (*file)->load() : Result<Gym>(file.why());
        refused += !gym;
        if (!gym) CHECK(gym.why().english().find(path.string()) != std::string::npos);
    }
    CHECK(refused > 5);
}

TEST_CASE("a flipped bit anywhere in a backup is told") {
    const Filled f;
    const Backup backup = kept(f.path, BackupReason::Daily, kNow);
    const std::string good = readText(backup.file);
    Draw draw(6);
    for (int i = 0; i < 150; ++i) {
        const auto at =
            static_cast<std::size_t>(draw.number(0, static_cast<std::int64_t>(good.size()) - 1));
        CAPTURE(at);
        flipBit(backup.file, at, static_cast<int>(draw.number(0, 7)));
        const auto in = lookIntoBackup(backup.file);
        CHECK((!in.ok() || !in->asMade));
        writeText(backup.file, good);
    }
    CHECK(lookIntoBackup(backup.file)->asMade);
}

TEST_CASE("a flipped bit in the log costs the edits from there on, each of them whole") {
    const Filled f;
    const auto file = opened(f.path);
    for (int n = 0; n < 5; ++n) put(*file, named("Edit " + std::to_string(n)));
    const std::string base = readText(f.path), log = readText(f.folder / "a.bwgym-wal");
    const auto path = f.folder / "left.bwgym", left = f.folder / "left.bwgym-wal";
    Draw draw(7);
    int lost = 0;
    for (int i = 0; i < 60; ++i) {
        const auto at =
            static_cast<std::size_t>(draw.number(0, static_cast<std::int64_t>(log.size()) - 1));
        CAPTURE(at);
        writeText(path, base);
        writeText(left, log);
        flipBit(left, at);
        const std::string name = nameIn(path);
        CHECK((name == f.gym.settings.name || name.find("Edit ") == 0));
        lost += name != "Edit 4";
    }
    CHECK(lost > 20);
    fs::remove(left);
}
