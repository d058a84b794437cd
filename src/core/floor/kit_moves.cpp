// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/floor/kit_moves.hpp"

#include <algorithm>
#include <iterator>

namespace bw {

namespace {
const KitLine* lineOf(const std::vector<KitLine>& lines, const KitId& kit) {
    const auto it = std::ranges::find(lines, kit, &KitLine::kit);
    return it == lines.end() ? nullptr : &*it;
}

KitMove moveOf(const KitLine* before, const KitLine& now) {
    KitMove move{now.kit, before ? before->units : 0, now.units, {}};
    if (before && before->units > 0 && !before->loads.empty())
        std::ranges::set_difference(now.loads, before->loads,
                                    std::inserter(move.added, move.added.end()));
    return move;
}
} // namespace

std::vector<KitMove> kitMoves(const std::vector<KitLine>& before, const std::vector<KitLine>& now) {
    std::vector<KitMove> moves;
    moves.reserve(before.size() + now.size());
    for (const KitLine& line : now) moves.push_back(moveOf(lineOf(before, line.kit), line));
    for (const KitLine& line : before)
        if (line.units > 0 && !lineOf(now, line.kit))
            moves.push_back({line.kit, line.units, 0, {}});
    return moves;
}

std::vector<std::size_t> kitSharers(const KitSection& section, std::size_t station,
                                    const KitId& kit) {
    std::vector<std::size_t> others;
    int taken = 0;
    for (std::size_t i = 0; i < section.stations.size(); ++i)
        if (const KitLine* line = lineOf(section.stations[i].kit, kit)) {
            taken += line->units;
            if (i != station) others.push_back(i);
        }
    const KitLine* all = lineOf(section.kit, kit);
    if (!all || taken <= all->units) others.clear();
    return others;
}

} // namespace bw
