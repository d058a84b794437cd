// SPDX-License-Identifier: GPL-3.0-or-later
// How long the store takes; run by name, in a release build: test_store "[.speed]".
#include "keeping.hpp"

#include <algorithm>
#include <chrono>
#include <ctime>
#include <fcntl.h>
#include <iostream>
#include <unistd.h>

using namespace bw;
using namespace bw::test;

namespace {
// By the clock on the wall, and of the processor alone: on a busy machine the two are far apart.
struct Took {
    double wall = 0, processor = 0; // ms
};
Took took(const std::function<void()>& work) {
    const auto start = std::chrono::steady_clock::now();
    const auto ticks = std::clock();
    work();
    const std::chrono::duration<double, std::milli> wall = std::chrono::steady_clock::now() - start;
    return {wall.count(), 1000.0 * static_cast<double>(std::clock() - ticks) / CLOCKS_PER_SEC};
}
Took median(int times, const std::function<void()>& work) {
    std::vector<double> wall, processor;
    for (int i = 0; i < times; ++i) {
        const Took t = took(work);
        wall.push_back(t.wall);
        processor.push_back(t.processor);
    }
    std::sort(wall.begin(), wall.end());
    std::sort(processor.begin(), processor.end());
    return {wall[wall.size() / 2], processor[processor.size() / 2]};
}
void tell(const std::string& what, Took t) {
    std::cout << what << ": " << t.wall << " ms, " << t.processor << " ms of the processor\n";
}

// Members who each did three sets of four exercises on every day.
std::vector<Change> results(int members, int days, int from) {
    std::vector<Change> changes;
    const auto rir = Rir::fromTenths(20).value();
    for (int m = 0; m < members; ++m)
        for (int d = from; d < from + days; ++d)
            for (int i = 0; i < 12; ++i)
                changes.emplace_back(
                    PutResult{{memberId("m-" + std::to_string(m)),
                               date("2016-01-01").plusDays(d),
                               ex("exercise-number-" + std::to_string((d + i / 3) % 90)),
                               1 + i % 3,
                               5 + i % 3,
                               rir,
                               Mass::fromKg(20 + i).value(),
                               {}}});
    return changes;
}
std::vector<Change> members(int count) {
    std::vector<Change> changes;
    for (int m = 0; m < count; ++m)
        changes.emplace_back(PutMember{{memberId("m-" + std::to_string(m)), "A", {}, true, {}}});
    return changes;
}
// A day's backup, with what is due to go, and a look into it.
void tellBackups(const std::filesystem::path& path) {
    int day = 0;
    Backup last;
    const auto next = [&] {
        last = kept(path, BackupReason::Daily, wall("2026-01-01") + std::chrono::days(day++));
    };
    for (int i = 0; i < 10; ++i) next();
    tell("backup", median(5, next));
    std::cout << last.bytes << " bytes\n";
    tell("look into a backup", median(5, [&] { (void)lookIntoBackup(last.file).ok(); }));
    tell("no backup due", median(5, [&] { (void)backUpDaily(path, last.at).ok(); }));
}
} // namespace

TEST_CASE("speed of loading", "[.speed]") {
    const TempFolder folder;
    for (const Size& size : {Size{30, 200, 15, 40}, Size{60, 1000, 120, 300}}) {
        const auto path = folder / (std::to_string(size.exercises) + ".bwgym");
        Draw draw(1);
        const auto file = made(path);
        put(*file, changesFor(drawGym(draw, size)));
        const std::string name = std::to_string(size.exercises) + " exercises, " +
                                 std::to_string(size.months) + " months";
        tell("load " + name, median(9, [&] { (void)file->load().value(); }));
        tell("open " + name, median(9, [&] { (void)opened(path, GymFile::Access::Read); }));
        tellBackups(path);
    }
}

TEST_CASE("speed of storing one month, beside the bare disk", "[.speed]") {
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    Draw draw(1);
    put(*file, changesFor(drawGym(draw, {30, 200, 15, 40})));
    const auto month = std::make_shared<Block>(drawBlock(draw, bw::test::month("2021-02")));
    tell("apply of one month", median(101, [&] { put(*file, {PutBlock{month}}); }));
    const int fd = ::open((folder / "bare").c_str(), O_CREAT | O_RDWR, 0600);
    const std::string page(64 * 1024, 'x');
    tell("write and sync of 64 KiB", median(101, [&] {
             (void)!::pwrite(fd, page.data(), page.size(), 0);
             ::fsync(fd);
         }));
    ::close(fd);
}

TEST_CASE("speed of storing and reading results", "[.speed]") {
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    put(*file, members(100));
    const auto first = results(100, 84, 0);
    tell("apply of " + std::to_string(first.size()) + " results", took([&] { put(*file, first); }));
    for (int part = 1; part < 30; ++part) put(*file, results(100, 84, part * 84));
    std::size_t count = 0;
    tell("visit of all results", took([&] {
             (void)file->eachResult([&](const LiftResult&) { return ++count > 0; }).value();
         }));
    std::cout << count << " results\n";
    tell("results of one member",
         median(5, [&] { (void)file->resultsOf(memberId("m-50")).value(); }));
    tell("load beside them", median(5, [&] { (void)file->load().value(); }));
    tell("open beside them",
         median(3, [&] { (void)opened(folder / "a.bwgym", GymFile::Access::Read); }));
    tellBackups(folder / "a.bwgym");
}
