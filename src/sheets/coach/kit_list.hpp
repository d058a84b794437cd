// SPDX-License-Identifier: GPL-3.0-or-later
// What is carried before a section, to tick off: first what goes away, then what has to stand.
#pragma once
#include "sheets/band.hpp"
#include "sheets/coach/kit_words.hpp"
#include "sheets/flow/sheet_flow.hpp"

namespace bw {

// A band for each row, `width` wide.
[[nodiscard]] std::vector<Band> kitList(const SheetFlow& flow, const KitWords& words,
                                        const KitSection& section,
                                        const std::vector<KitMove>& moves, double width);

} // namespace bw
