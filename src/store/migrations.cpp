// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/migrations.hpp"

namespace bw::store {

const Migrations& migrations() {
    static const Migrations steps{
        {"Make the tables for a gym, its months, its members and their results.", "0.1.0",
         kSchemaVersion1},
        {"Keep with a month the findings that its coach accepted.", "0.1.0", kAcceptedTable},
        {"Keep what a member lifted in an exercise side by side.", "0.1.0", kResultsInLine},
    };
    return steps;
}

} // namespace bw::store
