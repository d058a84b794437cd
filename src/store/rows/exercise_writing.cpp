// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/rows/exercise_rows.hpp"

namespace bw::store {

namespace {
using sqlite::Database;

std::optional<std::int64_t> billionths(const std::optional<Rate>& rate) {
    return rate ? std::optional(rate->billionths()) : std::nullopt;
}

std::int64_t putHead(Database& db, const Exercise& e) {
    const auto& rates = e.pace.rates();
    return *db.number(
        "INSERT INTO exercise (id, name, sides, skill, measure, seconds_per_rep, "
        "metres_per_second, kcal_per_minute, setup_ms, load, no_easier, no_harder, retired, "
        "extras) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) "
        "ON CONFLICT (id) DO UPDATE SET name = excluded.name, sides = excluded.sides, "
        "skill = excluded.skill, measure = excluded.measure, "
        "seconds_per_rep = excluded.seconds_per_rep, "
        "metres_per_second = excluded.metres_per_second, "
        "kcal_per_minute = excluded.kcal_per_minute, setup_ms = excluded.setup_ms, "
        "load = excluded.load, no_easier = excluded.no_easier, no_harder = excluded.no_harder, "
        "retired = excluded.retired, extras = excluded.extras RETURNING key",
        e.id.text(), e.name, wordOf(e.sides), e.skill, wordOf(e.pace.usual()),
        billionths(rates.secondsPerRep), billionths(rates.metresPerSecond),
        billionths(rates.kcalPerMinute), e.setup.count(), e.load.text(), e.noEasier, e.noHarder,
        e.retired, e.extras.json);
}

void putShare(Database& db, std::int64_t key, const char* list, std::string_view word,
              Share share) {
    db.run("INSERT INTO exercise_share VALUES (?, ?, ?, ?)", key, list, word, share.billionths());
}
template <class E>
void putShares(Database& db, std::int64_t key, const char* list, const Shares<E>& shares) {
    for (std::size_t i = 0; i < kCount<E>; ++i)
        if (const auto e = static_cast<E>(i); shares.has(e))
            putShare(db, key, list, wordOf(e), shares[e]);
}
void putDemands(Database& db, std::int64_t key, const Demands& demands) {
    for (std::size_t i = 0; i < kCount<Demand>; ++i)
        if (const auto d = static_cast<Demand>(i); demands[d] > 0)
            db.run("INSERT INTO exercise_demand VALUES (?, ?, ?)", key, wordOf(d), demands[d]);
}

const std::string& lineOf(const std::string& line) { return line; }
template <class Tag> const std::string& lineOf(const Id<Tag>& id) { return id.text(); }
template <class T>
void putLines(Database& db, std::int64_t key, const char* list, const std::vector<T>& lines) {
    int at = 0;
    for (const auto& line : lines)
        db.run("INSERT INTO exercise_line VALUES (?, ?, ?, ?)", key, list, at++, lineOf(line));
}

void putNeeds(Database& db, std::int64_t key, const KitNeeds& needs) {
    int choice = 0;
    for (const auto& together : needs) {
        db.run("INSERT INTO exercise_choice VALUES (?, ?)", key, choice);
        int at = 0;
        for (const auto& need : together)
            db.run("INSERT INTO exercise_need VALUES (?, ?, ?, ?, ?, ?)", key, choice, at++,
                   need.kit.text(), need.count, need.extras.json);
        ++choice;
    }
}

void clearLists(Database& db, std::int64_t key) {
    db.run("DELETE FROM exercise_share WHERE exercise = ?", key);
    db.run("DELETE FROM exercise_demand WHERE exercise = ?", key);
    db.run("DELETE FROM exercise_line WHERE exercise = ?", key);
    db.run("DELETE FROM exercise_choice WHERE exercise = ?", key); // and its needs
}
} // namespace

void putExercise(Database& db, const Exercise& e) {
    const auto key = putHead(db, e);
    clearLists(db, key);
    putShares(db, key, "pattern", e.patterns);
    putShares(db, key, "plane", e.planes);
    for (const auto& [muscle, share] : e.muscles) putShare(db, key, "muscle", muscle.text(), share);
    putDemands(db, key, e.demands);
    putLines(db, key, "role", e.roles);
    putLines(db, key, "easier", e.easier);
    putLines(db, key, "harder", e.harder);
    putLines(db, key, "swap", e.swaps);
    putLines(db, key, "cue", e.cues);
    putLines(db, key, "caution", e.cautions);
    putNeeds(db, key, e.needs);
}

void removeExercise(Database& db, const ExerciseId& id) {
    db.run("DELETE FROM exercise WHERE id = ?", id.text());
}

} // namespace bw::store
