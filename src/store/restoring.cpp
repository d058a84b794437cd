// SPDX-License-Identifier: GPL-3.0-or-later
// A backup takes the place of the gym file. In this order, so that at no moment both the gym and
// its way back are lost: the backup is read through; nobody else may write; what is in place is
// backed up or set aside; a copy of the backup is made beside it, synced, and renamed over it.
#include "store/backing_up.hpp"
#include "store/backup_names.hpp"
#include "store/backups.hpp"
#include "store/judging.hpp"
#include "store/making.hpp"
#include "store/trouble.hpp"
#include "store/writer_lock.hpp"

#include <cerrno>
#include <sqlite3.h>

namespace bw {

namespace fs = std::filesystem;
using namespace store;
using sqlite::Database;

namespace {
std::unique_ptr<WriterLock> requireLock(const fs::path& path) {
    auto attempt = WriterLock::take(path);
    if (attempt.lock) return std::move(attempt.lock);
    const char* source =
        attempt.elsewhere
            ? "“%1” is open: %2 writes to it, says “%1.lock”. Nothing was changed. Close it there; "
              "if it is not open there any more, delete that file. Then restore again."
            : "“%1” is open: %2 writes to it. Nothing was changed. Close it there, then restore "
              "again.";
    throw Refusal{{source, {path.string(), attempt.holder}}};
}

// Sound enough to be backed up? Another who holds it comes up as Failure.
std::optional<Database> openIfSound(const fs::path& path) {
    try {
        refuseForeign(path, migrations());
        Database db(path, Database::Mode::Write, !leftOver(path, "-wal"));
        (void)soundVersion(db, path, migrations());
        db.foldOnClose(true);
        return db;
    } catch (const Refusal&) {
        return std::nullopt;
    } catch (const sqlite::Failure& failure) {
        if (failure.code() == SQLITE_BUSY || failure.code() == SQLITE_LOCKED) throw;
        return std::nullopt;
    } catch (const std::system_error&) { // it can't be read
        return std::nullopt;
    }
}

// Readers, too, must be gone: their log and its index lie under the name that the new file gets.
void keepOthersOut(Database& db) {
    db.script("PRAGMA journal_mode = DELETE; PRAGMA locking_mode = EXCLUSIVE;"
              "BEGIN EXCLUSIVE; COMMIT");
}

// The file and its log, as they are.
fs::path setDamagedAside(const fs::path& path, WallTime now) {
    const fs::path folder = backupFolder(path);
    makeFolders(folder);
    const BackupName name{nextBackupNumber(backupsOf(path)), now, BackupReason::Damaged, {}};
    const fs::path place = folder / name.text();
    for (const char* ending : {"", "-wal", "-journal"})
        if (fs::exists(beside(path, ending))) setAside(beside(path, ending), beside(place, ending));
    return place;
}

// The log of what is in place would be taken for a part of the new file.
void removeLogs(const fs::path& path) {
    for (const char* ending : {"-wal", "-journal", "-shm"}) fs::remove(beside(path, ending));
}

bool anythingIn(const fs::path& path) {
    return fs::exists(path) || leftOver(path, "-wal") || leftOver(path, "-journal");
}

Database openBackup(const fs::path& backup, const fs::path& path) {
    std::error_code missing;
    if (fs::equivalent(backup, path, missing))
        throw Refusal{{"“%1” is the gym file itself. Nothing was changed. Choose one of its "
                       "backups.",
                       {path.string()}}};
    const fs::path file = fs::canonical(backup);
    refuseForeign(file, migrations());
    Database db(file, lookingMode(file), false);
    (void)soundVersion(db, file, migrations());
    return db;
}

Restored restore(const fs::path& path, const fs::path& backup, WallTime now) {
    auto from = answered<Result<Database>>(backup, [&] { return openBackup(backup, path); });
    if (!from) throw Refusal{from.why()};
    if (fs::exists(path) && !mayChange(path))
        throw std::system_error(EROFS, std::generic_category(), path.string());
    const auto lock = requireLock(path);
    clearLeftovers(path);
    FileInTheMaking file(path);
    Database source = std::move(from).value();
    fill(file, source);
    Restored done;
    auto present = fs::exists(path) ? openIfSound(path) : std::nullopt;
    if (present) {
        keepOthersOut(*present);
        done.before = backUpInto(*present, path, BackupReason::Restore, now).backup.file;
    } else if (anythingIn(path)) {
        done.before = setDamagedAside(path, now);
        removeLogs(path);
    }
    file.takePlace();
    return done;
}
} // namespace

Result<Restored> restoreBackup(const fs::path& gymFile, const fs::path& backup, WallTime now) {
    return answered<Result<Restored>>(
        gymFile, [&] { return restore(fs::weakly_canonical(fs::absolute(gymFile)), backup, now); });
}

} // namespace bw
