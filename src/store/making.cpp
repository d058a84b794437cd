// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/making.hpp"

#include "store/judging.hpp"
#include "store/sqlite/transaction.hpp"
#include "store/trouble.hpp"

namespace bw::store {

namespace fs = std::filesystem;
using sqlite::Database;

namespace {
// SQLite would take the log of an earlier file of that name for a part of the new one.
void requireFree(const fs::path& path) {
    if (fs::exists(fs::symlink_status(path))) throw Refusal{alreadyThere(path)};
    for (const char* ending : {"-wal", "-journal"})
        if (const fs::path rest = beside(path, ending); fs::exists(rest))
            throw Refusal{{"“%1” was not made: “%2” is left there from another gym file. Move that "
                           "file elsewhere, or choose another name.",
                           {path.string(), rest.string()}}};
}

// Runs the work of making `path`, and says of any failure what it means for a file not made yet.
template <class Work> void making(const fs::path& path, const Work& work) {
    const auto refuse = [&](const std::string& detail) {
        throw Refusal{
            {"“%1” was not made (%2). Nothing of it is left, and no other file has changed. "
             "Free some space, or choose a folder that you may write to; then do it again.",
             {path.string(), detail}}};
    };
    try {
        requireFree(path);
        work();
    } catch (const sqlite::Failure& failure) {
        refuse(failure.what());
    } catch (const std::system_error& error) {
        if (error.code() == std::errc::file_exists) throw Refusal{alreadyThere(path)};
        refuse(error.code().message());
    }
}

void buildAndPlace(const fs::path& path, const Migrations& steps) {
    makeFolders(path.parent_path());
    FileInTheMaking file(path);
    {
        Database db(file.path(), Database::Mode::Write);
        // Nobody needs half a new file; it is made to last before it gets its name.
        db.script("PRAGMA journal_mode = MEMORY; PRAGMA synchronous = OFF;");
        db.script("PRAGMA application_id = " + std::to_string(kApplicationId));
        migrate(db, 0, steps);
    }
    file.putInPlace();
}

void requireWhole(Database& db) {
    if (const auto r = db.query("PRAGMA foreign_key_check"); r.any())
        throw Unreadable("a row of “" + r->string(0) + "” belongs to nothing");
}
} // namespace

void makeGymFile(const fs::path& path, const Migrations& steps) {
    making(path, [&] { buildAndPlace(path, steps); });
}

void fill(FileInTheMaking& file, Database& from) {
    from.run("VACUUM INTO ?", file.path().string());
    Database copy(file.path(), Database::Mode::Frozen, false);
    requireSound(copy, file.path());
}

void copyInto(Database& db, const fs::path& path) {
    making(path, [&] {
        FileInTheMaking file(path);
        fill(file, db);
        file.putInPlace();
    });
}

void migrate(Database& db, int from, const Migrations& steps) {
    // Has no effect within a transaction; a step may make a table anew that others refer to.
    db.script("PRAGMA foreign_keys = OFF");
    sqlite::Transaction all(db, sqlite::Transaction::Kind::Write);
    for (auto i = static_cast<std::size_t>(from); i < steps.size(); ++i) db.script(steps[i].sql);
    db.run("DELETE FROM readable_by");
    db.run("INSERT INTO readable_by VALUES (?)", steps.back().since);
    db.script("PRAGMA user_version = " + std::to_string(steps.size()));
    requireWhole(db);
    all.commit();
    db.script("PRAGMA foreign_keys = ON");
}

} // namespace bw::store
