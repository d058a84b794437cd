// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sqlite_gym_file.hpp"

#include "store/making.hpp"
#include "store/rows/block_rows.hpp"
#include "store/rows/exercise_rows.hpp"
#include "store/rows/kit_rows.hpp"
#include "store/rows/member_rows.hpp"
#include "store/rows/result_query.hpp"
#include "store/rows/result_rows.hpp"
#include "store/rows/settings_rows.hpp"
#include "store/sqlite/transaction.hpp"
#include "store/trouble.hpp"
#include "store/writing.hpp"

#include <algorithm>
#include <sys/stat.h>

namespace bw::store {

using sqlite::Transaction;

namespace {
bool erases(const std::vector<Change>& changes) {
    return std::any_of(changes.begin(), changes.end(),
                       [](const Change& c) { return std::holds_alternative<RemoveMember>(c); });
}

// The log may still hold the pages as they were; those of the file are overwritten, as
// secure_delete says. The change is stored whether this works or not: else closing does it.
void emptyLog(sqlite::Database& db) {
    try {
        db.script("PRAGMA wal_checkpoint(TRUNCATE)");
    } catch (const sqlite::Failure&) {
        return;
    }
}
} // namespace

SqliteGymFile::SqliteGymFile(std::filesystem::path path, const std::filesystem::path& real,
                             WriterLock::Attempt attempt, sqlite::Database db,
                             std::unique_ptr<const LateCheck> check)
    : path_(std::move(path)), attempt_(std::move(attempt)), db_(std::move(db)),
      check_(std::move(check)) {
    struct stat now {};
    if (::stat(real.c_str(), &now) != 0) return; // then requireWritable() refuses
    device_ = now.st_dev;
    inode_ = now.st_ino;
}

Result<Gym> SqliteGymFile::load() {
    return answered<Result<Gym>>(path_, [&] {
        const Transaction snapshot(db_, Transaction::Kind::Read);
        Gym gym;
        gym.settings = readSettings(db_);
        gym.kit = readKit(db_);
        gym.shelf = readShelf(db_);
        gym.blocks = readBlocks(db_);
        gym.members = readMembers(db_);
        return gym;
    });
}

Result<bool> SqliteGymFile::apply(const std::vector<Change>& changes) {
    return answered<Result<bool>>(path_, [&] {
        requireWritable();
        requireLookedThrough();
        Transaction all(db_, Transaction::Kind::Write);
        write(db_, changes);
        all.commit();
        if (erases(changes)) emptyLog(db_);
        return true;
    });
}

Result<bool> SqliteGymFile::eachResult(const std::function<bool(const LiftResult&)>& visit) {
    return answered<Result<bool>>(path_, [&] {
        visitResults(db_, visit);
        return true;
    });
}

Result<std::vector<LiftResult>> SqliteGymFile::resultsOf(const MemberId& member) {
    return answered<Result<std::vector<LiftResult>>>(path_,
                                                     [&] { return readResults(db_, member); });
}

Result<bool> SqliteGymFile::eachResultOf(const ResultQuery& query,
                                         const std::function<bool(const LiftResult&)>& visit) {
    return answered<Result<bool>>(path_, [&] {
        visitResultsOf(db_, query, visit);
        return true;
    });
}

Result<std::optional<Date>> SqliteGymFile::newestResult() {
    return answered<Result<std::optional<Date>>>(path_, [&] { return newestDay(db_); });
}

Result<bool> SqliteGymFile::copyTo(const std::filesystem::path& path) {
    return answered<Result<bool>>(path, [&] {
        copyInto(db_, path);
        return true;
    });
}

std::optional<Result<bool>> SqliteGymFile::lookedThrough() const {
    if (!check_) return Result<bool>(true);
    return check_->ended() ? std::optional(check_->wait()) : std::nullopt;
}

void SqliteGymFile::requireLookedThrough() {
    if (!check_) return;
    if (const auto& sound = check_->wait(); !sound) throw Refusal{sound.why()};
    check_.reset();
    db_.foldOnClose(true);
}

Message SqliteGymFile::othersTurn() const {
    if (attempt_.elsewhere)
        return {
            "“%1” is open for reading only, so nothing was stored: %2 writes to it, says "
            "“%1.lock”. "
            "Close it there; if it is not open there any more, delete that file. Then open it here "
            "again.",
            {path_.string(), attempt_.holder}};
    return {
        "“%1” is open for reading only, so nothing was stored: %2 writes to it. Close it there, "
        "then open it here again.",
        {path_.string(), attempt_.holder}};
}

void SqliteGymFile::requireWritable() const {
    if (!attempt_.holder.empty()) throw Refusal{othersTurn()};
    if (!writable())
        throw Refusal{
            {"“%1” is open for reading only, so nothing was stored. To change it, allow "
             "writing to the file and its folder, or save a copy in a folder of your own; "
             "then open that.",
             {path_.string()}}};
    struct stat now {};
    if (::stat(path_.c_str(), &now) != 0 || now.st_dev != device_ || now.st_ino != inode_)
        throw Refusal{
            {"“%1” was moved, deleted or replaced while it was open, so nothing was stored. "
             "Save a copy under a new name and go on with that; it will hold all that was "
             "stored before.",
             {path_.string()}}};
}

} // namespace bw::store
