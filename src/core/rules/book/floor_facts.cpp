// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/floor_facts.hpp"

#include "blockwright/model/shorthand.hpp"

#include <cmath>
#include <set>

namespace bw::book {

std::string kitName(const Gym& gym, const KitId& id) {
    const KitItem* item = gym.findKit(id);
    return item ? item->name : id.text();
}

std::string clockOf(MeanTime t) { return clockText(Millis{std::llround(t.count() / 1000) * 1000}); }

std::string percentText(double share) { return std::to_string(std::llround(share * 100)) + " %"; }

std::vector<Remedy> provenRemedies(const FloorWeek& week, const Helps& helps) {
    constexpr std::size_t kMost = 3;
    std::set<std::pair<std::string, Place>> kinds;
    std::vector<Remedy> out;
    for (const ProvenChange& change : week.changes) {
        if (out.size() == kMost) break;
        if (helps(change) && kinds.emplace(change.label.source, change.place).second)
            out.push_back({change.label, change.change});
    }
    return out;
}

} // namespace bw::book
