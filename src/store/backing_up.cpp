// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/backing_up.hpp"

#include "store/backup_names.hpp"
#include "store/backup_rotation.hpp"
#include "store/checksum.hpp"
#include "store/making.hpp"

#include <algorithm>
#include <tuple>

namespace bw::store {

namespace fs = std::filesystem;
using sqlite::Database;

namespace {
bool readsWell(const Backup& backup) { return lookIntoBackup(backup.file).ok(); }

std::vector<fs::path> dropOld(const fs::path& gymFile) {
    std::vector<fs::path> dropped;
    std::error_code failed;
    for (const Backup& old : outOfRotation(backupsOf(gymFile), readsWell))
        if (fs::remove(old.file, failed)) dropped.push_back(old.file);
    return dropped;
}

Backup make(Database& db, const fs::path& gymFile, BackupReason reason, WallTime now) {
    const fs::path folder = backupFolder(gymFile);
    makeFolders(folder);
    clearLeftovers(folder / gymFile.filename());
    FileInTheMaking file(folder / gymFile.filename());
    fill(file, db);
    const int number = nextBackupNumber(backupsOf(gymFile));
    const BackupName name{number, now, reason, checksumOf(file.path())};
    const fs::path place = folder / name.text();
    file.putInPlace(place);
    return {place, number, reason, std::chrono::floor<std::chrono::minutes>(now),
            fs::file_size(place)};
}
} // namespace

Message noBackup(const fs::path& gymFile, const std::string& detail) {
    return {
        "No backup of “%1” was made (%2). The gym file holds all that was stored, as before, and "
        "you can go on. Free some space on that disk, or allow writing to “%3”; then it is "
        "made the next time.",
        {gymFile.string(), detail, backupFolder(gymFile).string()}};
}

std::vector<Backup> backupsOf(const fs::path& gymFile) {
    std::vector<Backup> backups;
    const fs::path folder = backupFolder(gymFile);
    if (!fs::exists(folder)) return backups;
    for (const auto& entry : fs::directory_iterator(folder)) {
        const auto name = BackupName::parse(entry.path().filename().string());
        std::error_code gone;
        const auto bytes = fs::file_size(entry.path(), gone);
        if (name && !gone)
            backups.push_back({entry.path(), name->number, name->reason, name->at, bytes});
    }
    std::sort(backups.begin(), backups.end(), [](const Backup& a, const Backup& b) {
        return std::tie(a.number, a.file) > std::tie(b.number, b.file);
    });
    return backups;
}

int nextBackupNumber(const std::vector<Backup>& backups) {
    return backups.empty() ? 1 : backups.front().number + 1;
}

BackupMade backUpInto(Database& db, const fs::path& gymFile, BackupReason reason, WallTime now) {
    return orNoBackup(gymFile, [&]() -> BackupMade {
        Backup made = make(db, gymFile, reason, now);
        return {std::move(made), dropOld(gymFile)};
    });
}

} // namespace bw::store
