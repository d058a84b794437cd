// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever fails, and wherever it fails: the file holds all of a list of changes or none of it.
#include "failing_disk.hpp"
#include "gyms.hpp"
#include "people.hpp"
#include "store/sqlite/failure.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <csignal>
#include <sqlite3.h>
#include <sys/resource.h>

using namespace bw;
using namespace bw::test;
namespace fs = std::filesystem;

namespace {
// Lets statements succeed again when it goes.
struct FailingStatements {
    FailingStatements(int count, int code) { sqlite::failAfter(count, code); }
    ~FailingStatements() { sqlite::failAfter(std::nullopt); }
};

// All that a file holds.
struct Content {
    Gym gym;
    std::vector<LiftResult> results;
    explicit Content(GymFile& file) : gym(file.load().value()), results(allResults(file)) {}
    [[nodiscard]] bool same(const Content& other) const {
        return difference(gym, other.gym).empty() && results == other.results;
    }
};
Content contentOf(const fs::path& path) { return Content(*opened(path)); }

Size small() { return {2, 2, 2, 2}; }

// A file with a bit of everything, and changes of every kind to it.
struct Scenario {
    explicit Scenario(const fs::path& path) {
        Draw draw(31);
        const Gym gym = drawGym(draw, small());
        auto first = changesFor(gym);
        const auto& member = gym.members[1].id;
        const auto result = drawResult(draw, member);
        first.emplace_back(PutResult{result});
        first.emplace_back(PutResult{drawResult(draw, gym.members[0].id)});
        put(*made(path), first);
        changes = {PutSettings{drawSettings(draw)},
                   PutKit{drawKit(draw, gym.kit[0].id.text())},
                   RemoveKit{gym.kit[1].id},
                   PutExercise{std::make_shared<Exercise>(drawExercise(draw, "new-one"))},
                   RemoveExercise{gym.shelf.entries()[0]->id},
                   PutBlock{std::make_shared<Block>(drawBlock(draw, month("2021-01")))},
                   RemoveBlock{month("2021-02")},
                   PutMember{drawMember(draw, "m-9")},
                   PutResult{drawResult(draw, memberId("m-9"))},
                   RemoveResult{member, result.date, result.exercise, result.set},
                   RemoveMember{gym.members[0].id}};
    }
    std::vector<Change> changes;
};
} // namespace

TEST_CASE("an apply that fails at any of its statements has changed nothing") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    const Scenario scenario(path);
    const Content before = contentOf(path);
    const auto [code, words] = GENERATE(table<int, std::string>({
        {SQLITE_FULL, "The disk is full, so nothing was stored"},
        {SQLITE_IOERR_WRITE, "The disk could not read or write"},
        {SQLITE_READONLY, "may not be changed where it is, so nothing was stored"},
        {SQLITE_BUSY, "Another program is busy with"},
        {SQLITE_CORRUPT, "is damaged ("},
    }));
    int n = 0;
    for (bool stored = false; !stored; ++n) {
        CAPTURE(n, code);
        const auto file = opened(path);
        {
            const FailingStatements failing(n, code);
            const auto answer = file->apply(scenario.changes);
            stored = answer.ok();
            CHECK((stored || answer.why().english().find(words) != std::string::npos));
        }
        CHECK(Content(*file).same(before) != stored); // the open one
        REQUIRE(n < 500);
        if (!stored && n % 7 == 0) CHECK(contentOf(path).same(before)); // and one opened beside it
    }
    CHECK(n > 40); // so many statements were made to fail
    CHECK(!contentOf(path).same(before));
}

TEST_CASE("a load that fails at any of its statements says so, and the next one succeeds") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    const Scenario scenario(path);
    const auto file = opened(path);
    const Content before(*file);
    int n = 0;
    for (bool read = false; !read; ++n) {
        const FailingStatements failing(n, SQLITE_IOERR_READ);
        read = file->load().ok();
        REQUIRE(n < 100);
    }
    CHECK(n > 15);
    sqlite::failAfter(std::nullopt);
    CHECK(Content(*file).same(before));
}

TEST_CASE("a gym file whose making fails at any statement leaves nothing behind") {
    const TempFolder folder;
    int n = 0;
    for (bool done = false; !done; ++n) {
        CAPTURE(n);
        const FailingStatements failing(n, SQLITE_FULL);
        const auto file = GymFile::create(folder / "a.bwgym");
        done = file.ok();
        REQUIRE(n < 200);
        // Once the file has its name it is whole; opening it is a matter of its own.
        if (!done && fs::exists(folder / "a.bwgym")) {
            sqlite::failAfter(std::nullopt);
            CHECK(difference(loaded(folder / "a.bwgym"), Gym{}).empty());
            fs::remove(folder / "a.bwgym");
        }
        CHECK((done || fs::is_empty(folder.path())));
    }
    CHECK(n > 40);
}

TEST_CASE("a disk that fails at any write or sync leaves all or nothing, now and after a crash") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    const Scenario scenario(path);
    const Content before = contentOf(path);
    const int code = GENERATE(SQLITE_FULL, SQLITE_IOERR_WRITE);
    FailingDisk disk;
    int n = 0, failures = 0;
    for (bool stored = false; !stored; ++n, failures += !stored) {
        CAPTURE(n, code);
        const auto file = opened(path);
        disk.failAfter(n, code);
        stored = file->apply(scenario.changes).ok();
        // What a crash at this moment would leave.
        const auto left = folder / ("left-" + std::to_string(n) + ".bwgym");
        fs::copy_file(path, left);
        fs::copy_file(folder / "a.bwgym-wal", folder / (left.filename().string() + "-wal"));
        disk.mend();
        const Content now(*file), crashed = contentOf(left);
        CHECK(now.same(before) != stored);
        // A log written whole whose sync then failed may still be found after a crash.
        CHECK((crashed.same(before) || crashed.gym.findMember(memberId("m-9"))));
        if (stored) CHECK(crashed.same(now));
        REQUIRE(n < 300);
    }
    CHECK(failures > 5);
}

TEST_CASE("what apply has stored is on the disk when it returns") {
    const TempFolder folder;
    const FailingDisk disk;
    const auto file = made(folder / "a.bwgym");
    for (int i = 0; i < 5; ++i) {
        Draw draw(static_cast<std::uint64_t>(i));
        put(*file, changesFor(drawGym(draw, small())));
        CHECK(disk.unsynced() == 0);
    }
}

TEST_CASE("a file that may not grow takes no change, and takes it when there is room again") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    const Scenario scenario(path);
    const Content before = contentOf(path);
    Other other([&](Other& us) {
        std::signal(SIGXFSZ, SIG_IGN);
        const auto file = opened(path);
        rlimit limit{};
        ::getrlimit(RLIMIT_FSIZE, &limit);
        const rlimit tight{16'384, limit.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &tight);
        const auto answer = file->apply(scenario.changes);
        us.say(answer ? "stored" : answer.why().english());
        const bool kept = Content(*file).same(before);
        ::setrlimit(RLIMIT_FSIZE, &limit);
        return kept && file->apply(scenario.changes).ok();
    });
    CHECK(other.hear().find("The disk could not read or write") == 0);
    CHECK(other.endsWell());
    CHECK(contentOf(path).gym.findMember(memberId("m-9")) != nullptr);
}

TEST_CASE("a copy that does not fit on the disk leaves nothing behind") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    const Scenario scenario(path);
    Other other([&](Other& us) {
        std::signal(SIGXFSZ, SIG_IGN);
        const auto file = opened(path);
        const rlimit tight{16'384, 16'384};
        ::setrlimit(RLIMIT_FSIZE, &tight);
        const auto answer = file->copyTo(folder / "copy.bwgym");
        us.say(answer ? "copied" : answer.why().english());
        return true;
    });
    const auto why = other.hear();
    CAPTURE(why);
    CHECK(why.find("copy.bwgym” was not made (") != std::string::npos);
    CHECK(other.endsWell());
    CHECK(std::distance(fs::directory_iterator(folder.path()), {}) == 1);
}
