// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "store/gym_file.hpp"
#include "store/sqlite/database.hpp"

namespace bw::store {

// In their order; within the caller's transaction.
void write(sqlite::Database& db, const std::vector<Change>& changes);

} // namespace bw::store
