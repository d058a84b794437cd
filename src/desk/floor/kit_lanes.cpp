// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/lane_plan.hpp"

#include <algorithm>
#include <map>

namespace bw {

namespace {
// Members who wait for the kit, as steps over time: one piece for each length of the line.
std::vector<LanePiece> lineFor(const KitId& kit, const std::vector<FloorRow>& rows) {
    std::map<Millis, int> changes;
    Place first;
    for (const FloorRow& row : rows) {
        if (row.lacked != kit) continue;
        ++changes[row.from];
        --changes[row.to];
        first = row.place;
    }
    std::vector<LanePiece> pieces;
    int waiting = 0;
    Millis since{};
    for (const auto& [time, change] : changes) {
        if (waiting > 0 && change != 0)
            pieces.push_back({LanePiece::Kind::Line, first, 0, since, time, -1, waiting, {}});
        if (change != 0) since = time;
        waiting += change;
    }
    return pieces;
}

// The slot that a member works at, or the group that they are in, when they take the kit.
Place placeIn(const FloorHold& hold, const std::vector<FloorRow>& rows) {
    const auto mine = std::ranges::equal_range(rows, hold.member, {}, &FloorRow::member);
    for (const FloorRow& row : mine) {
        if (row.doing != FloorDoing::Set || row.from < hold.from || row.to > hold.to) continue;
        const bool oneSet = row.from == hold.from && row.to == hold.to;
        return oneSet ? row.place : Place{row.place.section, row.place.group, -1};
    }
    return {};
}

// Each hold goes to the first units that are free.
void layOut(const FloorHold& hold, Place place, std::vector<Lane>& units) {
    int left = hold.count;
    for (std::size_t u = 0; left > 0; ++u) {
        if (u == units.size()) units.push_back({-1, hold.kit, static_cast<int>(u), {}, {}});
        auto& pieces = units[u].pieces;
        if (!pieces.empty() && pieces.back().to > hold.from) continue;
        pieces.push_back({LanePiece::Kind::Hold, place, 0, hold.from, hold.to, hold.member, 0, {}});
        --left;
    }
}
} // namespace

std::vector<Lane> kitLanes(const FloorAnswer& answer) {
    auto kit = answer.kit;
    std::ranges::stable_sort(kit, std::greater{}, [](const auto& use) { return use.wait.mean; });
    std::vector<Lane> lanes;
    for (const FloorKitUse& use : kit) {
        std::vector<Lane> units;
        for (const FloorHold& hold : answer.holds)
            if (hold.kit == use.kit) layOut(hold, placeIn(hold, answer.timeline), units);
        Lane line{-1, use.kit, -1, lineFor(use.kit, answer.timeline), {}};
        if (!line.pieces.empty()) lanes.push_back(std::move(line));
        std::ranges::move(units, std::back_inserter(lanes));
    }
    return lanes;
}

} // namespace bw
