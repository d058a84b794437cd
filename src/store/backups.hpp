// SPDX-License-Identifier: GPL-3.0-or-later
// Copies of a gym file, kept in a folder beside it (gym.bwgym.backups): one a day, and one before
// each thing that changes much at once. Old ones go by themselves: of the daily ones the last 7
// stay, and one for each of the last 4 weeks and 12 months; of each other kind the last 5.
//   auto open = GymFile::open(path);
//   if (const auto made = backUpDaily(path, wallTime()); !made) tell(made.why()); // and go on
// All of it works on files alone, by connections of its own: from any thread, and while the gym
// file is open.
#pragma once
#include "blockwright/model/calendar.hpp"
#include "blockwright/model/id.hpp"
#include "blockwright/model/result.hpp"

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace bw {

// What the clock on the coach's wall says.
using WallTime = std::chrono::local_seconds;
[[nodiscard]] WallTime wallTime();

enum class BackupReason {
    Daily,   // the first of a day
    Update,  // before the file was brought up to a newer version
    Import,  // before a bundle or table was brought in
    Restore, // before a backup took the place of the file
    Asked,   // because the coach wanted one
    Damaged  // no copy: a file that could not be read, set aside when a backup took its place
};
[[nodiscard]] std::string_view wordOf(BackupReason reason); // "daily", "update", ...

struct Backup {
    std::filesystem::path file;
    int number = 0; // counts up: the order in which they were made, whatever the clock said
    BackupReason reason = BackupReason::Daily;
    WallTime at; // to the minute
    std::uintmax_t bytes = 0;
};

// Made or not, the gym file is as it was.
struct BackupMade {
    Backup backup;
    std::vector<std::filesystem::path> dropped; // that were due to go
};

// What a backup holds, for a look before it is restored.
struct BackupContents {
    int version = 0; // of the format
    std::string gym; // its name
    std::size_t months = 0, exercises = 0, members = 0, results = 0;
    std::optional<Month> firstMonth, lastMonth;
    std::optional<Date> newestResult;
    // False: it reads well, but is not byte for byte what was made. Somebody opened and changed it,
    // or the disk did.
    bool asMade = true;
};

struct Restored {
    // Where the file is that was in place before; none: there was none.
    std::optional<std::filesystem::path> before;
};

// A backup that holds a member, perhaps.
struct HoldsMember {
    Backup backup;
    std::optional<std::string> name; // as it stands there; none: can't be read, so nobody knows
};

[[nodiscard]] std::filesystem::path backupFolder(const std::filesystem::path& gymFile);
// The last made first. The gym file itself need not be there any more.
[[nodiscard]] Result<std::vector<Backup>> listBackups(const std::filesystem::path& gymFile);
// Reads all of it; why() when it is damaged, from a newer Blockwright, or no gym file.
[[nodiscard]] Result<BackupContents> lookIntoBackup(const std::filesystem::path& backup);

// By whoever has the gym file open for writing. What is made has been read back before it counts.
// Why() says what to do; the gym file, and the backups there were, are as before.
[[nodiscard]] Result<BackupMade> backUp(const std::filesystem::path& gymFile, BackupReason reason,
                                        WallTime now);
// None when the last daily one is of today. A clock that was set back starts a new day.
[[nodiscard]] Result<std::optional<BackupMade>> backUpDaily(const std::filesystem::path& gymFile,
                                                            WallTime now);

// Puts a copy of `backup`, which may be any gym file, in place of the gym file, whole or not at
// all. What was in place is backed up first, or set aside when it is damaged. Nobody may have the
// gym file open, this program included: why() says who has. Open it again afterwards.
[[nodiscard]] Result<Restored> restoreBackup(const std::filesystem::path& gymFile,
                                             const std::filesystem::path& backup, WallTime now);

// Erasing a member leaves the backups as they are; these hold the member still. To be rid of the
// member there, too, delete them.
[[nodiscard]] Result<std::vector<HoldsMember>> backupsHolding(const std::filesystem::path& gymFile,
                                                              const MemberId& member);

} // namespace bw
