// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/model/kit.hpp"
#include "store/sqlite/database.hpp"

namespace bw::store {

// A new item goes to the end of the list; a known one keeps its place.
void putKit(sqlite::Database& db, const KitItem& item);
void removeKit(sqlite::Database& db, const KitId& id);
[[nodiscard]] std::vector<KitItem> readKit(sqlite::Database& db);

} // namespace bw::store
