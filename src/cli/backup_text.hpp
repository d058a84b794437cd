// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/json_text.hpp"
#include "store/backups.hpp"

namespace bw::cli {

// A backup with what was found in it; `in` says why when it can't be restored.
struct SeenBackup {
    Backup backup;
    Result<BackupContents> in;
};

[[nodiscard]] std::string timeText(WallTime at); // 2026-11-25 18:30
[[nodiscard]] Json backupJson(const SeenBackup& seen);
// A row a backup, with what it holds.
[[nodiscard]] std::string backupTable(const std::vector<SeenBackup>& list);

// Before much is brought in at once. What can't be backed up is told, and stops nothing.
void backUpFirst(const std::string& gym);

} // namespace bw::cli
