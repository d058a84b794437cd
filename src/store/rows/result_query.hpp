// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "store/gym_file.hpp"
#include "store/sqlite/database.hpp"

namespace bw::store {

// Exposed for the tests of how they are found.
inline constexpr std::string_view kResultsOfMember =
    "SELECT member, lifted, day, set_no, reps, rir_tenths, load_ug, extras FROM result "
    "WHERE member = ? AND day BETWEEN ? AND ? ORDER BY day, lifted, set_no";
inline constexpr std::string_view kResultsInLineOf =
    "SELECT member, lifted, day, set_no, reps, rir_tenths, load_ug, extras FROM result "
    "INDEXED BY result_by_exercise WHERE lifted = ? AND member = ? AND day BETWEEN ? AND ? "
    "ORDER BY day, set_no";

void visitResultsOf(sqlite::Database& db, const ResultQuery& query,
                    const std::function<bool(const LiftResult&)>& visit);
[[nodiscard]] std::optional<Date> newestDay(sqlite::Database& db);

} // namespace bw::store
