// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/backing_up.hpp"
#include "edit/gym_verbs.hpp"
#include "edit/memory_file.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QTest>

namespace bw::test {

namespace {
std::vector<Backup> backupsOf(const std::filesystem::path& gym) {
    const auto all = listBackups(gym);
    REQUIRE(all);
    return *all;
}
} // namespace

TEST_CASE("Soon after a gym is opened it has the backup of the day, and not another one") {
    const TempFolder folder;
    const auto path = folder / "gym.bwgym";
    const auto gym = createGym(path);
    REQUIRE(gym);
    for (const bool made : {true, false}) {
        DailyBackup daily((*gym)->file(), nullptr, std::chrono::milliseconds(0));
        std::optional<bool> said;
        QObject::connect(&daily, &DailyBackup::done, [&](bool now) { said = now; });
        REQUIRE(QTest::qWaitFor([&] { return said.has_value(); }, 30'000));
        CHECK(said == made);
        const auto all = backupsOf(path);
        REQUIRE(all.size() == 1);
        CHECK(all.front().reason == BackupReason::Daily);
    }
}

TEST_CASE("A backup that can't be made is told, and the gym goes on") {
    const TempFolder folder;
    const auto path = folder / "gym.bwgym";
    const auto gym = createGym(path);
    REQUIRE(gym);
    writeText((folder / "gym.bwgym.backups").string(), "in the way");
    DailyBackup daily((*gym)->file(), nullptr, std::chrono::milliseconds(0));
    std::string why;
    QObject::connect(&daily, &DailyBackup::failed,
                     [&](const Message& message) { why = message.english(); });
    REQUIRE(QTest::qWaitFor([&] { return !why.empty(); }, 30'000));
    CHECK(why.find("backup") != std::string::npos);
    CHECK_FALSE(backUpBefore((*gym)->file(), BackupReason::Import).ok());
}

TEST_CASE("Before much is changed there is a backup; a gym that is not on disk needs none") {
    const TempFolder folder;
    const auto path = folder / "gym.bwgym";
    const auto gym = createGym(path);
    REQUIRE(gym);
    REQUIRE(backUpBefore((*gym)->file(), BackupReason::Import).ok());
    CHECK(backupsOf(path).front().reason == BackupReason::Import);
    const MemoryFile memory{threeMonths()};
    CHECK(backUpBefore(memory, BackupReason::Import).ok());
}

} // namespace bw::test
