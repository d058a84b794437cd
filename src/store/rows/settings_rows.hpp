// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/model/gym.hpp"
#include "store/sqlite/database.hpp"

namespace bw::store {

void putSettings(sqlite::Database& db, const GymSettings& settings);
// The defaults while none were put.
[[nodiscard]] GymSettings readSettings(sqlite::Database& db);

} // namespace bw::store
