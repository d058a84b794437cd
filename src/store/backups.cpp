// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/backups.hpp"

#include "store/backing_up.hpp"
#include "store/backup_names.hpp"
#include "store/checksum.hpp"
#include "store/files.hpp"
#include "store/judging.hpp"
#include "store/rows/reading.hpp"
#include "store/rows/result_query.hpp"

#include <algorithm>

namespace bw {

namespace fs = std::filesystem;
using namespace store;
using sqlite::Database;

namespace {
// One file has one folder, whatever it is called.
fs::path real(const fs::path& gymFile) { return fs::weakly_canonical(fs::absolute(gymFile)); }

std::size_t countOf(Database& db, const char* table) {
    return static_cast<std::size_t>(
        db.number("SELECT count(*) FROM " + std::string(table)).value_or(0));
}
std::optional<Month> monthOf(std::optional<std::int64_t> stored) {
    if (!stored) return std::nullopt;
    return need(Month::of(narrow(*stored / 100), narrow(*stored % 100)));
}

BackupContents contentsOf(Database& db) {
    BackupContents c;
    if (const auto r = db.query("SELECT name FROM setting"); r.any()) c.gym = r->string(0);
    c.months = countOf(db, "block");
    c.exercises = countOf(db, "exercise");
    c.members = countOf(db, "member");
    c.results = countOf(db, "result");
    if (c.months > 0) {
        c.firstMonth = monthOf(db.number("SELECT min(month) FROM block"));
        c.lastMonth = monthOf(db.number("SELECT max(month) FROM block"));
    }
    if (c.results > 0) c.newestResult = newestDay(db);
    return c;
}

bool isAsMade(const fs::path& file) {
    const auto name = BackupName::parse(file.filename().string());
    return !name || !name->checksum || *name->checksum == checksumOf(file);
}

std::optional<std::string> nameIn(const fs::path& file, const MemberId& member, bool& held) {
    Database db(file, lookingMode(file), false);
    requireSound(db, file);
    const auto r = db.query("SELECT name FROM member WHERE id = ?", member.text());
    held = r.any();
    return held ? std::optional(r->string(0)) : std::nullopt;
}

// Whether it holds the member; one that can't be read may.
bool mayHold(HoldsMember& one, const MemberId& member) {
    bool held = true;
    try {
        one.name = nameIn(one.backup.file, member, held);
    } catch (const std::exception&) {
        return true;
    } catch (const Refusal&) {
        return true;
    }
    return held;
}
} // namespace

fs::path backupFolder(const fs::path& gymFile) { return beside(real(gymFile), ".backups"); }

Result<std::vector<Backup>> listBackups(const fs::path& gymFile) {
    return answered<Result<std::vector<Backup>>>(backupFolder(gymFile),
                                                 [&] { return backupsOf(real(gymFile)); });
}

Result<BackupContents> lookIntoBackup(const fs::path& backup) {
    return answered<Result<BackupContents>>(backup, [&] {
        const fs::path path = fs::canonical(backup);
        refuseForeign(path, migrations());
        Database db(path, lookingMode(path), false);
        const int version = soundVersion(db, path, migrations());
        BackupContents c = contentsOf(db);
        c.version = version;
        c.asMade = isAsMade(path);
        return c;
    });
}

Result<BackupMade> backUp(const fs::path& gymFile, BackupReason reason, WallTime now) {
    return answered<Result<BackupMade>>(gymFile, [&] {
        return orNoBackup(gymFile, reason, [&] {
            const fs::path path = fs::canonical(gymFile);
            refuseForeign(path, migrations());
            const auto mode = mayChange(path) ? Database::Mode::Write : lookingMode(path);
            Database db(path, mode, !leftOver(path, "-wal"));
            requireSound(db, path); // a copy may hide what is damaged
            return backUpInto(db, path, reason, now);
        });
    });
}

Result<std::optional<BackupMade>> backUpDaily(const fs::path& gymFile, WallTime now) {
    const auto there = listBackups(gymFile);
    if (!there) return there.why();
    const auto last = std::find_if(there->begin(), there->end(),
                                   [](const Backup& b) { return b.reason == BackupReason::Daily; });
    if (last != there->end() && dayOf(last->at) == dayOf(now)) return std::optional<BackupMade>();
    auto made = backUp(gymFile, BackupReason::Daily, now);
    if (!made) return made.why();
    return std::optional(std::move(made).value());
}

Result<std::vector<HoldsMember>> backupsHolding(const fs::path& gymFile, const MemberId& member) {
    const auto all = listBackups(gymFile);
    if (!all) return all.why();
    std::vector<HoldsMember> out;
    for (const Backup& backup : *all)
        if (HoldsMember one{backup, {}}; mayHold(one, member)) out.push_back(std::move(one));
    return out;
}

} // namespace bw
