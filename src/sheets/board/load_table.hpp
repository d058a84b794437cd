// SPDX-License-Identifier: GPL-3.0-or-later
// Members down, slots across: what each takes on this week. Over several boards where it is too
// wide or too high for one.
#pragma once
#include "sheets/band.hpp"
#include "sheets/board/board_words.hpp"

namespace bw {

[[nodiscard]] std::vector<Band> loadTables(const BoardLoads& loads, const TypeRuler& ruler,
                                           QSizeF room, double em);

} // namespace bw
