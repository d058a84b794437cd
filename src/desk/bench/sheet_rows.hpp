// SPDX-License-Identifier: GPL-3.0-or-later
// The lines of the sheet: for each section its head, then each group's slots and the group's foot
// with rounds and rest; an empty section has one line that says so.
#pragma once
#include "blockwright/model/place.hpp"

#include <vector>

namespace bw {

struct SheetRow {
    enum class Kind { Section, Slot, Foot, Empty };
    Kind kind = Kind::Slot;
    Place place; // of the section, slot or group; an empty line: of its section
    bool operator==(const SheetRow&) const = default;
};

enum class SheetColumn { Mark, Exercise, Dose, Tempo, Effort, Kit, Options, Findings };
inline constexpr int kSheetColumns = 8;

[[nodiscard]] std::vector<SheetRow> sheetRows(const Block& block);
// The line that stands for a place; -1 when there is none. A group: its first slot.
[[nodiscard]] int rowOf(const std::vector<SheetRow>& rows, Place place);

} // namespace bw
