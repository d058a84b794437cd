// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/rows/result_rows.hpp"

#include "store/rows/reading.hpp"

namespace bw::store {

namespace {
Rir rir(const sqlite::Statement& row, int column) {
    return need(Rir::fromTenths(small(row, column)));
}

template <class I> std::unordered_map<std::int64_t, I> readIds(sqlite::Rows rows) {
    std::unordered_map<std::int64_t, I> ids;
    for (; rows.any(); rows.next()) ids.emplace(rows->integer(0), id<I>(*rows, 1));
    return ids;
}
} // namespace

const LiftResult& ResultReader::read(const sqlite::Statement& row, const MemberId& member,
                                     const ExerciseId& exercise) {
    const std::int64_t day = row.integer(2);
    if (!last_) last_ = LiftResult{member, dateFrom(day), exercise, 1, 1, {}, {}, {}};
    if (last_->member != member) last_->member = member;
    if (last_->exercise != exercise) last_->exercise = exercise;
    if (day_ != day) last_->date = dateFrom(day);
    day_ = day;
    last_->set = small(row, 3);
    last_->reps = small(row, 4);
    last_->rir = ifAny(row, 5, rir);
    last_->load = ifAny(row, 6, mass);
    last_->extras.json = row.text(7);
    return *last_;
}

void ResultWriter::put(const LiftResult& r) {
    const auto member = memberKey(r.member);
    if (!member)
        throw Refusal{{"A result belongs to “%1”, who is not a member of this gym. Nothing was "
                       "stored. Add the member, then do it again.",
                       {r.member.text()}}};
    db_.run("INSERT OR REPLACE INTO result VALUES (?, ?, ?, ?, ?, ?, ?, ?)", *member,
            dayNumber(r.date), liftedKey(r.exercise), r.set, r.reps,
            r.rir ? std::optional(r.rir->tenths()) : std::nullopt,
            r.load ? std::optional(r.load->micrograms()) : std::nullopt, r.extras.json);
}

void ResultWriter::remove(const MemberId& member, Date date, const ExerciseId& exercise, int set) {
    db_.run("DELETE FROM result WHERE member = (SELECT key FROM member WHERE id = ?) AND day = ? "
            "AND lifted = (SELECT key FROM lifted WHERE id = ?) AND set_no = ?",
            member.text(), dayNumber(date), exercise.text(), set);
}

std::optional<std::int64_t> ResultWriter::memberKey(const MemberId& id) {
    if (const auto it = members_.find(id); it != members_.end()) return it->second;
    const auto key = db_.number("SELECT key FROM member WHERE id = ?", id.text());
    if (key) members_.emplace(id, *key);
    return key;
}

std::int64_t ResultWriter::liftedKey(const ExerciseId& id) {
    if (const auto it = lifted_.find(id); it != lifted_.end()) return it->second;
    db_.run("INSERT OR IGNORE INTO lifted (id) VALUES (?)", id.text());
    const auto key = *db_.number("SELECT key FROM lifted WHERE id = ?", id.text());
    return lifted_.emplace(id, key).first->second;
}

// The first query holds the snapshot that the other two are read from.
void visitResults(sqlite::Database& db, const std::function<bool(const LiftResult&)>& visit) {
    auto r =
        db.query("SELECT member, lifted, day, set_no, reps, rir_tenths, load_ug, result.extras "
                 "FROM member CROSS JOIN result ON result.member = member.key "
                 "JOIN lifted ON lifted.key = result.lifted "
                 "ORDER BY member.id, day, lifted.id, set_no");
    const auto members = readIds<MemberId>(db.query("SELECT key, id FROM member"));
    const auto lifted = readIds<ExerciseId>(db.query("SELECT key, id FROM lifted"));
    ResultReader reader;
    for (; r.any(); r.next())
        if (!visit(reader.read(*r, members.at(r->integer(0)), lifted.at(r->integer(1))))) return;
}

std::vector<LiftResult> readResults(sqlite::Database& db, const MemberId& member) {
    std::vector<LiftResult> results;
    auto r = db.query("SELECT member, lifted, day, set_no, reps, rir_tenths, load_ug, extras "
                      "FROM result JOIN lifted ON lifted.key = result.lifted "
                      "WHERE member = (SELECT key FROM member WHERE id = ?) "
                      "ORDER BY day, lifted.id, set_no",
                      member.text());
    const auto lifted = readIds<ExerciseId>(db.query("SELECT key, id FROM lifted"));
    ResultReader reader;
    for (; r.any(); r.next()) results.push_back(reader.read(*r, member, lifted.at(r->integer(1))));
    return results;
}

} // namespace bw::store
