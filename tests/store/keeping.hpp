// SPDX-License-Identifier: GPL-3.0-or-later
// Gym files and their backups at times that the test says.
#pragma once
#include "gyms.hpp"
#include "store/backups.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

namespace bw::test {

[[nodiscard]] inline WallTime wall(std::string_view day, int hour = 18, int minute = 30) {
    return std::chrono::local_days(date(day).days().time_since_epoch()) + std::chrono::hours(hour) +
           std::chrono::minutes(minute);
}
[[nodiscard]] inline std::vector<Change> named(const std::string& name) {
    GymSettings settings;
    settings.name = name;
    return {PutSettings{settings}};
}
[[nodiscard]] inline std::string nameIn(const std::filesystem::path& path) {
    return loaded(path).settings.name;
}
[[nodiscard]] inline std::vector<Backup> backupsBeside(const std::filesystem::path& path) {
    auto list = listBackups(path);
    if (!list) FAIL(list.why().english());
    return std::move(list).value();
}
// A backup that must come about.
inline Backup kept(const std::filesystem::path& path, BackupReason reason, WallTime now) {
    const auto made = backUp(path, reason, now);
    if (!made) FAIL(made.why().english());
    return made->backup;
}
inline Restored restored(const std::filesystem::path& path, const std::filesystem::path& backup,
                         WallTime now) {
    const auto done = restoreBackup(path, backup, now);
    if (!done) FAIL(done.why().english());
    return *done;
}
inline void flipBit(const std::filesystem::path& file, std::size_t at, int bit = 0) {
    std::string bytes = readText(file);
    bytes.at(at) = static_cast<char>(static_cast<unsigned char>(bytes[at]) ^ (1U << bit));
    writeText(file, bytes);
}

} // namespace bw::test
