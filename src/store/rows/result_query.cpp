// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/rows/result_query.hpp"

#include "store/rows/reading.hpp"
#include "store/rows/result_rows.hpp"

namespace bw::store {

namespace {
using Visit = std::function<bool(const LiftResult&)>;

template <class I> struct Named {
    std::int64_t key;
    I id;
};

// Those that were asked for and are there; all when none was asked for.
template <class I> std::vector<Named<I>> found(sqlite::Database& db, std::string_view table,
                                               const std::vector<I>& asked) {
    std::vector<Named<I>> out;
    const std::string sql = "SELECT key, id FROM " + std::string(table);
    if (asked.empty()) {
        for (auto r = db.query(sql + " ORDER BY id"); r.any(); r.next())
            out.push_back({r->integer(0), id<I>(*r, 1)});
        return out;
    }
    auto one = db.prepare(sql + " WHERE id = ?");
    for (const I& wanted : asked) {
        one.bind(wanted.text());
        if (one.step()) out.push_back({one.integer(0), wanted});
        one.reset();
    }
    return out;
}

std::int64_t firstDay(const ResultQuery& query) {
    return query.from ? dayNumber(*query.from) : std::numeric_limits<std::int64_t>::min();
}
std::int64_t lastDay(const ResultQuery& query) {
    return query.until ? dayNumber(*query.until) : std::numeric_limits<std::int64_t>::max();
}

// Along the primary key, a member's days one after the other.
void visitMembers(sqlite::Database& db, const ResultQuery& query, const Visit& visit) {
    std::unordered_map<std::int64_t, ExerciseId> lifted;
    for (auto& l : found(db, "lifted", query.exercises)) lifted.emplace(l.key, std::move(l.id));
    auto rows = db.prepare("SELECT member, lifted, day, set_no, reps, rir_tenths, load_ug, extras "
                           "FROM result WHERE member = ? AND day BETWEEN ? AND ? "
                           "ORDER BY day, lifted, set_no");
    for (const auto& member : found(db, "member", query.members)) {
        rows.bind(member.key, firstDay(query), lastDay(query));
        while (rows.step()) {
            const auto exercise = lifted.find(rows.integer(1));
            if (exercise == lifted.end()) continue;
            if (!visit(readResult(rows, member.id, exercise->second))) return;
        }
        rows.reset();
    }
}

// Along result_by_exercise, which goes on with the rest of the primary key: day, set_no.
void visitExercises(sqlite::Database& db, const ResultQuery& query, const Visit& visit) {
    auto rows = db.prepare("SELECT member, lifted, day, set_no, reps, rir_tenths, load_ug, extras "
                           "FROM result INDEXED BY result_by_exercise "
                           "WHERE lifted = ? AND member = ? AND day BETWEEN ? AND ? "
                           "ORDER BY day, set_no");
    const auto members = found(db, "member", query.members);
    for (const auto& exercise : found(db, "lifted", query.exercises))
        for (const auto& member : members) {
            rows.bind(exercise.key, member.key, firstDay(query), lastDay(query));
            while (rows.step())
                if (!visit(readResult(rows, member.id, exercise.id))) return;
            rows.reset();
        }
}
} // namespace

// The query held open keeps one snapshot for all that follow. A row found by the index takes about
// as long as passing over four, so with many exercises their members' days are read through.
void visitResultsOf(sqlite::Database& db, const ResultQuery& query, const Visit& visit) {
    constexpr std::size_t kFew = 4;
    const auto snapshot = db.query("SELECT 1 FROM result");
    if (query.exercises.empty() || query.exercises.size() > kFew)
        visitMembers(db, query, visit);
    else
        visitExercises(db, query, visit);
}

std::optional<Date> newestDay(sqlite::Database& db) {
    const auto r = db.query("SELECT max((SELECT max(day) FROM result WHERE member = member.key)) "
                            "FROM member");
    if (!r.any() || r->null(0)) return std::nullopt;
    return dateFrom(r->integer(0));
}

} // namespace bw::store
