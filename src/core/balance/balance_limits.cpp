// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/balance/balance_limits.hpp"

#include "core/rules/wording.hpp"

namespace bw {

const std::vector<LimitSpec>& balanceLimits() {
    static const std::vector<LimitSpec> list{
        {"window_months",
         atMost(3),
         "months",
         commonPractice(),
         {"How many months the window of the balance holds, this one among them; 1 to 36.", {}}},
        {"indirect_share",
         atMost(0),
         "share",
         {"Pelland et al. 2025 (Sports Med, doi 10.1007/s40279-025-02344-w): counting one half for "
          "a set that trains a muscle indirectly fitted the studies best.",
          {}},
         {"What each set counts for a muscle that only helps; 0: as the Shelf tells it.", {}}}};
    return list;
}

} // namespace bw
