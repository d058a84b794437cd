// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/migrations.hpp"

namespace bw::store {

const Migrations& migrations() {
    static const Migrations steps{
        {"Make the tables for a gym, its months, its members and their results.", "0.1.0",
         kSchemaVersion1},
    };
    return steps;
}

} // namespace bw::store
