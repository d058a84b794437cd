// SPDX-License-Identifier: GPL-3.0-or-later
// Results name member and exercise by the keys of `member` and `lifted`. A ResultWriter looks each
// key up once, so it is made for one transaction.
#pragma once
#include "blockwright/model/member.hpp"
#include "store/sqlite/database.hpp"

#include <functional>

namespace bw::store {

class ResultWriter {
public:
    explicit ResultWriter(sqlite::Database& db) : db_(db) {}
    // Throws Refusal for a member that is not in the file.
    void put(const LiftResult& result);
    void remove(const MemberId& member, Date date, const ExerciseId& exercise, int set);
    // Keys looked up before are worth nothing any more.
    void forgetMembers() { members_.clear(); }

private:
    std::optional<std::int64_t> memberKey(const MemberId& id);
    std::int64_t liftedKey(const ExerciseId& id);

    sqlite::Database& db_;
    std::unordered_map<MemberId, std::int64_t> members_;
    std::unordered_map<ExerciseId, std::int64_t> lifted_;
};

// Reads rows that begin: member, lifted, day, set_no, reps, rir_tenths, load_ug, extras. What a row
// has in common with the one before it is not made anew.
class ResultReader {
public:
    // Until the next call.
    const LiftResult& read(const sqlite::Statement& row, const MemberId& member,
                           const ExerciseId& exercise);

private:
    std::optional<LiftResult> last_;
    std::int64_t day_ = 0;
};

// In order of member id, date, exercise id, set, until the visitor returns false.
void visitResults(sqlite::Database& db, const std::function<bool(const LiftResult&)>& visit);
[[nodiscard]] std::vector<LiftResult> readResults(sqlite::Database& db, const MemberId& member);

} // namespace bw::store
