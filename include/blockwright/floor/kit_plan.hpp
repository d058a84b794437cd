// SPDX-License-Identifier: GPL-3.0-or-later
// What has to stand where before each section, for a full class. A station is a group. Kit of a
// group is counted for the most members that can be there at once: all of them when the section
// starts together, else the largest head count. Of an exercise's alternatives the first at hand
// counts; exercises of one group share kit of the same kind.
#pragma once
#include "blockwright/ledger/target.hpp"

#include <set>

namespace bw {

struct KitLine {
    KitId kit;
    int wanted = 0;                   // for everybody there at once
    int units = 0;                    // to put out: wanted, or all that the gym owns of these loads
    std::set<Mass> loads;             // of bells and balls on members' cards; empty: none known
    std::optional<Range<Mass>> total; // of loaded bars and sleds on the cards
    std::set<Mass> plates;            // that the cards ask for on them

    [[nodiscard]] bool shared() const { return wanted > units; }
};

struct KitStation {
    Place group;
    int heads = 0; // that start here
    std::vector<KitLine> kit;
};

struct KitSection {
    Place section;
    bool together = false;
    std::vector<KitLine> kit; // over all stations, in the gym's order
    std::vector<KitStation> stations;
};

// With a ledger of the members' results, the loads of their cards. A gym that has told no kit gets
// stations without any.
[[nodiscard]] std::vector<KitSection> kitPlan(const Gym& gym, const Block& block,
                                              const Ledger* ledger);

} // namespace bw
