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
// What is as it was made was read back then.
bool readsWell(const Backup& backup) {
    try {
        const auto name = BackupName::parse(backup.file.filename().string());
        if (name && name->checksum && *name->checksum == checksumOf(backup.file)) return true;
    } catch (const std::system_error&) {
        return false;
    }
    return lookIntoBackup(backup.file).ok();
}

// What can't be removed is left.
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

// Bringing up to date and restoring don't go on without one; all else does.
Message noBackup(const fs::path& gymFile, BackupReason reason, const std::string& detail) {
    const std::vector<std::string> args{gymFile.string(), detail, backupFolder(gymFile).string()};
    if (reason == BackupReason::Update)
        return {"“%1” was written by an older Blockwright, and was not brought up to date because "
                "no backup of it could be made first (%2). It was left exactly as it is. Free some "
                "space on that disk, or allow writing to “%3”; then open it again.",
                args};
    if (reason == BackupReason::Restore)
        return {"Nothing was restored, because no backup of “%1” as it is now could be made first "
                "(%2). It was left as it is. Free some space on that disk, or allow writing to "
                "“%3”; then restore again.",
                args};
    return {"No backup of “%1” was made (%2). The gym file holds all that was stored, as before, "
            "and you can go on. Free some space on that disk, or allow writing to “%3”; then it is "
            "made the next time.",
            args};
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
    return orNoBackup(gymFile, reason, [&]() -> BackupMade {
        Backup made = make(db, gymFile, reason, now);
        return {std::move(made), dropOld(gymFile)};
    });
}

} // namespace bw::store
