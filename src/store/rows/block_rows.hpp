// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/model/gym.hpp"
#include "store/sqlite/database.hpp"

namespace bw::store {

void putBlock(sqlite::Database& db, const Block& block);
void removeBlock(sqlite::Database& db, Month month);
[[nodiscard]] std::map<Month, Gym::BlockPtr> readBlocks(sqlite::Database& db);

} // namespace bw::store
