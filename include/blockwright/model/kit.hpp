// SPDX-License-Identifier: GPL-3.0-or-later
// What a gym owns, and what an exercise asks of it.
#pragma once
#include "blockwright/model/extras.hpp"
#include "blockwright/model/id.hpp"
#include "blockwright/model/quantity.hpp"
#include "blockwright/model/vocabulary.hpp"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace bw {

// One kind of kit. Units 0: the gym knows the word and owns none.
struct KitItem {
    KitId id;
    std::string name; // 1 to 200 characters
    int units = 0;    // 0 to 1 000
    Claim claim = Claim::Group;
    std::map<Mass, int> loads;  // how many of each load (bells, balls); empty: not told
    std::optional<Mass> bar;    // the empty bar or sled
    std::map<Mass, int> plates; // how many single plates of each mass
    Extras extras;
    bool operator==(const KitItem&) const = default;
};

// What one member takes for one slot.
struct KitNeed {
    KitId kit;
    int count = 1; // 1 to 100
    Extras extras;
    bool operator==(const KitNeed&) const = default;
};

// Alternatives in order of preference; none at all: needs nothing.
using KitNeeds = std::vector<std::vector<KitNeed>>;

} // namespace bw
