// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "store/backups.hpp"
#include "store/sqlite/database.hpp"
#include "store/trouble.hpp"

namespace bw::store {

// A backup of what the open database holds; `gymFile` is its name without symbolic links. Throws
// Refusal when it could not be made.
BackupMade backUpInto(sqlite::Database& db, const std::filesystem::path& gymFile,
                      BackupReason reason, WallTime now);
// What was kept, and what to do.
[[nodiscard]] Message noBackup(const std::filesystem::path& gymFile, BackupReason reason,
                               const std::string& detail);
// Runs `work`; what it throws becomes the Refusal above.
template <class Work>
auto orNoBackup(const std::filesystem::path& gymFile, BackupReason reason, const Work& work) {
    try {
        return work();
    } catch (const sqlite::Failure& failure) {
        throw Refusal{noBackup(gymFile, reason, failure.what())};
    } catch (const std::system_error& error) {
        throw Refusal{noBackup(gymFile, reason, error.code().message())};
    }
}
// The name for the next one.
[[nodiscard]] int nextBackupNumber(const std::vector<Backup>& backups);
// As listBackups; throws std::system_error.
[[nodiscard]] std::vector<Backup> backupsOf(const std::filesystem::path& gymFile);

} // namespace bw::store
