// SPDX-License-Identifier: GPL-3.0-or-later
// What is carried between two sections: kit that comes out, kit that stays, kit that goes away.
#pragma once
#include "blockwright/floor/kit_plan.hpp"

namespace bw {

struct KitMove {
    KitId kit;
    int before = 0, now = 0; // units that stand
    std::set<Mass> added;    // loads asked for now that did not stand before, where both are known

    [[nodiscard]] bool comesOut() const { return now > before || !added.empty(); }
    [[nodiscard]] int cleared() const { return before > now ? before - now : 0; }
};

// In the order of what stands now; then what only stood before.
[[nodiscard]] std::vector<KitMove> kitMoves(const std::vector<KitLine>& before,
                                            const std::vector<KitLine>& now);

// The other stations of a section that must share kit with this one, as together they would take
// more than stands there.
[[nodiscard]] std::vector<std::size_t> kitSharers(const KitSection& section, std::size_t station,
                                                  const KitId& kit);

} // namespace bw
