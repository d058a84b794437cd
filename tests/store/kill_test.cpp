// SPDX-License-Identifier: GPL-3.0-or-later
// A writer killed at any moment leaves exactly the edits it had made, from the first to the last.
#include "gyms.hpp"
#include "people.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <cstdlib>
#include <unistd.h>

using namespace bw;
using namespace bw::test;
namespace fs = std::filesystem;

namespace {
// The n-th edit of this tale touches settings, a month, a member and a result at once.
struct Edit {
    explicit Edit(int n)
        : draw(static_cast<std::uint64_t>(n)), settings(drawSettings(draw)),
          block(drawBlock(draw, month("2024-01").plus(n % 5))),
          member(drawMember(draw, "m-" + std::to_string(n % 7))),
          result(drawResult(draw, member.id)) {
        result.set = 1 + n % 100;
        result.date = date("2024-01-01").plusDays(n / 100);
    }
    [[nodiscard]] std::vector<Change> changes() const {
        return {PutSettings{settings}, PutBlock{std::make_shared<Block>(block)}, PutMember{member},
                PutResult{result}};
    }
    void doTo(Gym& gym) const {
        gym.settings = settings;
        gym.put(block);
        gym.put(member);
    }
    Draw draw;
    GymSettings settings;
    Block block;
    Member member;
    LiftResult result;
};

// Edits on from `first`, saying the number of each edit that is stored; closes and opens the file
// after every few, so that those moments are hit too.
bool keepEditing(Other& us, const fs::path& path, int first) {
    for (int n = first;; n += 4) {
        const auto file = GymFile::open(path);
        if (!file || !(*file)->writable()) return false;
        for (int k = n; k < n + 4; ++k) {
            if (!(*file)->apply(Edit(k).changes()).ok()) return false;
            us.say(std::to_string(k));
        }
    }
}
} // namespace

namespace {
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
constexpr int kKills = 60; // each costs ten times as much
#else
constexpr int kKills = 500;
#endif
// What a killed program has written is there even if no disk has it, so memory does, and is fast.
const char* inMemory() {
    return ::access("/dev/shm", W_OK | X_OK) == 0 ? "/dev/shm" : std::getenv("TMPDIR");
}
} // namespace

TEST_CASE("a writer killed at any moment leaves exactly its first edits, as many as it was told") {
    const Variable place("TMPDIR", inMemory());
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    (void)made(path);
    Draw draw(2026);
    Gym expected;
    int done = 0;
    for (int kill = 0; kill < kKills; ++kill) {
        CAPTURE(kill, done);
        int told = done;
        {
            Other writer([&](Other& us) { return keepEditing(us, path, done + 1); });
            for (auto wait = draw.number(0, 2); wait > 0; --wait) told = std::stoi(writer.hear());
            ::usleep(static_cast<useconds_t>(draw.number(0, 8'000)));
            writer.kill();
            for (auto line = writer.hear(); !line.empty(); line = writer.hear())
                told = std::stoi(line);
        }
        const auto file = opened(path);
        const auto stored = static_cast<int>(allResults(*file).size());
        CHECK(stored >= told);
        CHECK(stored <= told + 1); // stored, and killed before it could say so
        while (done < stored) Edit(++done).doTo(expected);
        CHECK(difference(file->load().value(), expected).empty());
    }
    CHECK(done > kKills / 2);
}

TEST_CASE("a gym file whose making is killed is there whole, or not at all") {
    Draw draw(7);
    for (int kill = 0; kill < 10; ++kill) {
        const TempFolder folder;
        const auto path = folder / "a.bwgym";
        Other maker([&](Other& us) {
            us.say("now");
            const auto file = GymFile::create(path);
            (void)us.hear();
            return true;
        });
        REQUIRE(maker.hear() == "now");
        ::usleep(static_cast<useconds_t>(draw.number(0, 20'000)));
        maker.kill();
        if (fs::exists(path))
            CHECK(difference(opened(path)->load().value(), Gym{}).empty());
        else
            CHECK(difference(made(path)->load().value(), Gym{}).empty());
    }
}

TEST_CASE("a killed writer's last edits are read where nothing may be written") {
    const TempFolder folder;
    const auto path = folder / "a.bwgym";
    (void)made(path);
    Other writer([&](Other& us) { return keepEditing(us, path, 1); });
    REQUIRE(writer.hear() == "1");
    writer.kill();
    for (const auto& entry : fs::directory_iterator(folder.path()))
        fs::permissions(entry.path(), static_cast<fs::perms>(0444));
    fs::permissions(folder.path(), static_cast<fs::perms>(0555));
    CHECK(asNobody([&] {
        const auto file = GymFile::open(path);
        return file && !(*file)->writable() && !allResults(**file).empty();
    }));
    fs::permissions(folder.path(), static_cast<fs::perms>(0777));
}
