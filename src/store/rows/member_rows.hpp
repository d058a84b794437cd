// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/model/member.hpp"
#include "store/sqlite/database.hpp"

namespace bw::store {

// A new member goes to the end of the list; a known one keeps place and results.
void putMember(sqlite::Database& db, const Member& member);
void removeMember(sqlite::Database& db, const MemberId& id); // with all results
[[nodiscard]] std::vector<Member> readMembers(sqlite::Database& db);

} // namespace bw::store
