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
    for (auto& l : found<ExerciseId>(db, "lifted", {})) lifted.emplace(l.key, std::move(l.id));
    ResultReader reader;
    auto rows = db.prepare(kResultsOfMember);
    for (const auto& member : found(db, "member", query.members)) {
        rows.bind(member.key, firstDay(query), lastDay(query));
        while (rows.step())
            if (!visit(reader.read(rows, member.id, lifted.at(rows.integer(1))))) return;
        rows.reset();
    }
}

// Along result_by_exercise, which holds all that is asked for.
void visitExercises(sqlite::Database& db, const ResultQuery& query, const Visit& visit) {
    ResultReader reader;
    auto rows = db.prepare(kResultsInLineOf);
    const auto members = found(db, "member", query.members);
    for (const auto& exercise : found(db, "lifted", query.exercises))
        for (const auto& member : members) {
            rows.bind(exercise.key, member.key, firstDay(query), lastDay(query));
            while (rows.step())
                if (!visit(reader.read(rows, member.id, exercise.id))) return;
            rows.reset();
        }
}
} // namespace

// The query held open keeps one snapshot for all that follow.
void visitResultsOf(sqlite::Database& db, const ResultQuery& query, const Visit& visit) {
    const auto snapshot = db.query("SELECT 1 FROM result");
    if (query.exercises.empty())
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
