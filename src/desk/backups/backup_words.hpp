// SPDX-License-Identifier: GPL-3.0-or-later
// A backup in the coach's words.
#pragma once
#include "store/backup_difference.hpp"

#include <QString>
#include <QStringList>

namespace bw {

[[nodiscard]] QString backupTime(WallTime at);           // "Wed 25 Nov 2026, 18:30"
[[nodiscard]] QString backupReason(BackupReason reason); // "before a restore"
[[nodiscard]] QString backupSize(std::uintmax_t bytes);  // "1.2 MB"

// What a restore would do, a line a kind of thing: "November 2026", "Results: 12".
struct DifferenceWords {
    QStringList gone, changed, back;
};
[[nodiscard]] DifferenceWords differenceWords(const BackupDifference& would);
// "Would go – Results: 12; Members: 1. Would change – …"; empty when nothing would.
[[nodiscard]] QString differenceSentence(const BackupDifference& would);

} // namespace bw
