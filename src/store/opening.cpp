// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/opening.hpp"

#include "store/backing_up.hpp"
#include "store/files.hpp"
#include "store/judging.hpp"
#include "store/making.hpp"
#include "store/sqlite_gym_file.hpp"
#include "store/trouble.hpp"

namespace bw::store {

namespace fs = std::filesystem;
using sqlite::Database;

namespace {
WriterLock::Attempt claim(const fs::path& path, GymFile::Access access) {
    if (access == GymFile::Access::Read || !mayChange(path)) return WriterLock::look(path);
    try {
        return WriterLock::take(path);
    } catch (const std::system_error&) { // no room for a lock file: then we read
        return {};
    }
}

// In the journal mode of a file that we may read while it is written to.
bool logged(Database& db) { return db.query("PRAGMA journal_mode")->text(0) == "wal"; }

void prepare(Database& db, const fs::path& path, bool ours, const Migrations& steps) {
    const int version = soundVersion(db, path, steps);
    if (version < static_cast<int>(steps.size())) {
        if (!ours)
            throw Refusal{
                {"“%1” was written by an older Blockwright and can't be brought up to date "
                 "where it is. It was left exactly as it is. Close it elsewhere, or copy it "
                 "to a folder of your own; then open it again.",
                 {path.string()}}};
        backUpInto(db, path, BackupReason::Update, wallTime());
        migrate(db, version, steps);
    }
    if (ours) db.script("PRAGMA journal_mode = WAL");
    db.foldOnClose(true);
}

// Null when it was looked through already.
std::unique_ptr<const LateCheck> prepareLarge(Database& db, const fs::path& path, bool ours,
                                              const Migrations& steps) {
    if (!ours || versionOf(db, path, steps) < static_cast<int>(steps.size()) || !logged(db)) {
        prepare(db, path, ours, steps);
        return nullptr;
    }
    requireSoundGym(db, path);
    return std::make_unique<const LateCheck>(path);
}

std::unique_ptr<GymFile> opened(const fs::path& given, GymFile::Access access,
                                const Migrations& steps, std::uintmax_t first) {
    const fs::path path = fs::canonical(given); // one file has one lock, whatever it is called
    refuseForeign(path, steps);
    WriterLock::Attempt attempt = claim(path, access);
    const bool ours = attempt.lock != nullptr;
    // A reader that may write to the folder lets SQLite make its side files, and take them away
    // again.
    const auto mode = ours || mayChange(path) ? Database::Mode::Write : lookingMode(path);
    // Looking into a damaged file must not fold a log into it; a log of our own may go as it comes.
    Database db(path, mode, !leftOver(path, "-wal"));
    std::unique_ptr<const LateCheck> check;
    if (fs::file_size(path) > first)
        check = prepareLarge(db, path, ours, steps);
    else
        prepare(db, path, ours, steps);
    return std::make_unique<SqliteGymFile>(given, path, std::move(attempt), std::move(db),
                                           std::move(check));
}
} // namespace

Result<std::unique_ptr<GymFile>> createGymFile(const fs::path& path, const Migrations& steps) {
    return answered<Result<std::unique_ptr<GymFile>>>(path, [&] {
        makeGymFile(path, steps);
        return opened(path, GymFile::Access::Write, steps, kLookedThroughFirst);
    });
}

Result<std::unique_ptr<GymFile>> openGymFile(const fs::path& path, GymFile::Access access,
                                             const Migrations& steps, std::uintmax_t first) {
    return answered<Result<std::unique_ptr<GymFile>>>(
        path, [&] { return opened(path, access, steps, first); });
}

} // namespace bw::store
