// SPDX-License-Identifier: GPL-3.0-or-later
// What would go, change and come back if a backup took the place of the gym file.
//   const auto would = compareWithBackup(gym, backup);
//   if (would && *would && !(*would)->any()) say("It holds the same.");
#pragma once
#include "store/backups.hpp"

namespace bw {

// Things told apart by their id; results by member, day, exercise and set.
struct Differing {
    std::size_t gone = 0; // in the gym file, not in the backup
    std::size_t changed = 0;
    std::size_t back = 0; // in the backup alone
    bool operator==(const Differing&) const = default;
};

struct BackupDifference {
    std::vector<Month> monthsGone, monthsChanged, monthsBack; // ascending
    Differing exercises, kit, members, results;
    bool settings = false; // changed

    [[nodiscard]] bool any() const;
};

// Reads all of both, while the gym file may be open; the order of lists counts for nothing. None:
// one of them is of an earlier format and has not been brought up to date.
[[nodiscard]] Result<std::optional<BackupDifference>>
compareWithBackup(const std::filesystem::path& gymFile, const std::filesystem::path& backup);

} // namespace bw
