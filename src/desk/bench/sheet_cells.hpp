// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in a cell of the sheet, what is there to edit, and what typed text would do.
#pragma once
#include "blockwright/time/timing.hpp"
#include "desk/bench/sheet_rows.hpp"
#include "edit/block_verbs.hpp"

#include <QString>

#include <functional>
#include <optional>

namespace bw {

// What one cell belongs to.
struct SheetCell {
    const Gym& gym;
    const Block& block;
    SheetRow row;
    SheetColumn column;
};

[[nodiscard]] QString cellText(const SheetCell& cell, const SessionTime& time);
// Nothing when the cell is not for typing.
[[nodiscard]] std::optional<QString> editText(const SheetCell& cell);
[[nodiscard]] QString cellName(const SheetCell& cell); // for a screen reader: "A1, dose"

// Typed text, understood: what the draft would be, and the verb that makes it so.
struct CellEdit {
    std::function<void(Block&)> preview;
    std::function<Did(OpenGym&, Spot)> enter;
};
// Why() says what is understood there.
[[nodiscard]] Result<CellEdit> readCell(const SheetCell& cell, const QString& text);

// The exercise chosen for a slot.
[[nodiscard]] CellEdit chooseExercise(const SheetCell& cell, const Exercise& exercise);

} // namespace bw
