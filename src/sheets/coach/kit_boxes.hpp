// SPDX-License-Identifier: GPL-3.0-or-later
// The floor as a simple sketch: a box for each station, with what stands there.
#pragma once
#include "blockwright/floor/kit_plan.hpp"
#include "sheets/flow/sheet_flow.hpp"
#include "sheets/sheet_layout.hpp"

namespace bw {

// Nothing for a single station. Boxes too tall for a sketch become lines of text.
void putStations(SheetFlow& flow, const SheetMatter& matter, const KitSection& section);

} // namespace bw
