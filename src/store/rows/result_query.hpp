// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "store/gym_file.hpp"
#include "store/sqlite/database.hpp"

namespace bw::store {

void visitResultsOf(sqlite::Database& db, const ResultQuery& query,
                    const std::function<bool(const LiftResult&)>& visit);
[[nodiscard]] std::optional<Date> newestDay(sqlite::Database& db);

} // namespace bw::store
