// SPDX-License-Identifier: GPL-3.0-or-later
// The floor of a section as a sketch: a room with a box for each station in the order in which
// people go round, and what stands there. Boxes of one room are of one width; nothing is to scale,
// as no gym file knows the room.
#pragma once
#include "sheets/band.hpp"
#include "sheets/coach/kit_words.hpp"
#include "sheets/flow/sheet_flow.hpp"

#include <optional>

namespace bw {

// None where the boxes would be too tall or some word too long for one.
[[nodiscard]] std::optional<Band> kitRoom(const SheetFlow& flow, const KitWords& words,
                                          const KitSection& section,
                                          const std::vector<KitMove>& moves, double width);

// The same in sentences, a paragraph for each station.
void putStationLines(SheetFlow& flow, const KitWords& words, const KitSection& section);

} // namespace bw
