// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/backup_difference.hpp"

#include "blockwright/model/gym.hpp"
#include "store/judging.hpp"
#include "store/rows/block_rows.hpp"
#include "store/rows/exercise_rows.hpp"
#include "store/rows/kit_rows.hpp"
#include "store/rows/member_rows.hpp"
#include "store/rows/settings_rows.hpp"
#include "store/sqlite/transaction.hpp"
#include "store/trouble.hpp"

#include <map>
#include <tuple>

namespace bw {

namespace fs = std::filesystem;
using namespace store;
using sqlite::Database;
using sqlite::Rows;
using sqlite::Statement;

namespace {
template <class T> using ById = std::map<std::string, T>;

struct Contents {
    GymSettings settings;
    std::map<Month, Gym::BlockPtr> blocks;
    ById<Exercise> exercises;
    ById<KitItem> kit;
    ById<Member> members;
};

template <class T> ById<T> byId(std::vector<T> list) {
    ById<T> out;
    for (T& one : list) out.emplace(one.id.text(), std::move(one));
    return out;
}

Contents contentsOf(Database& db) {
    Contents c{readSettings(db), readBlocks(db), {}, byId(readKit(db)), byId(readMembers(db))};
    const Shelf shelf = readShelf(db);
    for (const Shelf::Entry& e : shelf.entries()) c.exercises.emplace(e->id.text(), *e);
    return c;
}

// One file open to be looked at.
struct Side {
    Database db;
    std::optional<Contents> in; // none: of an earlier format
};

Result<Side> sideOf(const fs::path& given) {
    return answered<Result<Side>>(given, [&] {
        const fs::path path = fs::canonical(given);
        refuseForeign(path, migrations());
        Side side{Database(path, lookingMode(path), false), {}};
        const auto version = side.db.number("PRAGMA user_version").value_or(0);
        if (version != static_cast<std::int64_t>(migrations().size())) return side;
        {
            const sqlite::Transaction snapshot(side.db, sqlite::Transaction::Kind::Read);
            side.in = contentsOf(side.db);
        }
        return side;
    });
}

template <class T> Differing differing(const ById<T>& now, const ById<T>& then) {
    Differing d;
    for (const auto& [id, one] : now) {
        const auto there = then.find(id);
        if (there == then.end())
            ++d.gone;
        else if (!(there->second == one))
            ++d.changed;
    }
    d.back = then.size() - (now.size() - d.gone);
    return d;
}

void compareMonths(const Contents& now, const Contents& then, BackupDifference& d) {
    for (const auto& [month, block] : now.blocks) {
        const auto there = then.blocks.find(month);
        if (there == then.blocks.end())
            d.monthsGone.push_back(month);
        else if (!(*there->second == *block))
            d.monthsChanged.push_back(month);
    }
    for (const auto& [month, block] : then.blocks)
        if (!now.blocks.contains(month)) d.monthsBack.push_back(month);
}

Rows results(Database& db) {
    return db.query("SELECT m.id, r.day, l.id, r.set_no, r.reps, r.rir_tenths, r.load_ug, r.extras "
                    "FROM result r JOIN member m ON m.key = r.member JOIN lifted l ON "
                    "l.key = r.lifted ORDER BY 1, 2, 3, 4");
}
auto keyOf(const Statement& row) {
    return std::tuple(row.text(0), row.integer(1), row.text(2), row.integer(3));
}
// A number in a column that may be empty.
std::optional<std::int64_t> maybe(const Statement& row, int column) {
    return row.null(column) ? std::nullopt : std::optional(row.integer(column));
}
auto liftedIn(const Statement& row) {
    return std::tuple(row.integer(4), maybe(row, 5), maybe(row, 6), row.text(7));
}

// Both lists side by side, so that a million results take no room.
Differing compareResults(Database& now, Database& then) {
    Differing d;
    Rows a = results(now), b = results(then);
    while (a.any() || b.any()) {
        const bool here = a.any() && (!b.any() || keyOf(*a) <= keyOf(*b));
        const bool there = b.any() && (!a.any() || keyOf(*b) <= keyOf(*a));
        if (here && there) d.changed += liftedIn(*a) != liftedIn(*b) ? 1 : 0;
        d.gone += here && !there ? 1 : 0;
        d.back += there && !here ? 1 : 0;
        if (here) a.next();
        if (there) b.next();
    }
    return d;
}

BackupDifference compare(Side& now, Side& then) {
    BackupDifference d;
    compareMonths(*now.in, *then.in, d);
    d.exercises = differing(now.in->exercises, then.in->exercises);
    d.kit = differing(now.in->kit, then.in->kit);
    d.members = differing(now.in->members, then.in->members);
    d.results = compareResults(now.db, then.db);
    d.settings = !(now.in->settings == then.in->settings);
    return d;
}
} // namespace

bool BackupDifference::any() const {
    const Differing none;
    return !monthsGone.empty() || !monthsChanged.empty() || !monthsBack.empty() ||
           exercises != none || kit != none || members != none || results != none || settings;
}

Result<std::optional<BackupDifference>> compareWithBackup(const fs::path& gymFile,
                                                          const fs::path& backup) {
    auto now = sideOf(gymFile);
    if (!now) return now.why();
    auto then = sideOf(backup);
    if (!then) return then.why();
    if (!now->in || !then->in) return std::optional<BackupDifference>();
    return answered<Result<std::optional<BackupDifference>>>(gymFile, [&] {
        Side a = std::move(now).value(), b = std::move(then).value();
        return std::optional(compare(a, b));
    });
}

} // namespace bw
