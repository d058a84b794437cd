// SPDX-License-Identifier: GPL-3.0-or-later
// The steps by which a gym file comes to be, oldest first. The version of a file (user_version) is
// how many steps it has gone through. A step that has shipped never changes again.
#pragma once
#include <string_view>
#include <vector>

namespace bw::store {

// "BwGm" in ASCII, at byte 68 of the file (https://www.sqlite.org/fileformat2.html#application_id).
inline constexpr int kApplicationId = 0x4277476d;

struct Migration {
    std::string_view sentence; // what this step is for
    std::string_view since;    // the first Blockwright that reads a file of this version
    std::string_view sql;
};
using Migrations = std::vector<Migration>;

[[nodiscard]] const Migrations& migrations();
extern const std::string_view kSchemaVersion1, kAcceptedTable, kResultsInLine;

} // namespace bw::store
