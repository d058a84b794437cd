// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/sheet_rows.hpp"

namespace bw {

std::vector<SheetRow> sheetRows(const Block& block) {
    using Kind = SheetRow::Kind;
    std::vector<SheetRow> rows;
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s) {
        rows.push_back({Kind::Section, {s}});
        const auto& groups = block.sections[static_cast<std::size_t>(s)].groups;
        if (groups.empty()) rows.push_back({Kind::Empty, {s}});
        for (int g = 0; g < static_cast<int>(groups.size()); ++g) {
            const auto& slots = groups[static_cast<std::size_t>(g)].slots;
            for (int i = 0; i < static_cast<int>(slots.size()); ++i)
                rows.push_back({Kind::Slot, {s, g, i}});
            rows.push_back({Kind::Foot, {s, g}});
        }
    }
    return rows;
}

int rowOf(const std::vector<SheetRow>& rows, Place place) {
    const auto inGroup = [&](const SheetRow& r) {
        return r.place.section == place.section && r.place.group == place.group;
    };
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (rows[i].place == place && (!place.isGroup() || rows[i].kind == SheetRow::Kind::Foot))
            return static_cast<int>(i);
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (!place.isSession() && inGroup(rows[i])) return static_cast<int>(i);
    return -1;
}

} // namespace bw
