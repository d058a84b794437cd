// SPDX-License-Identifier: GPL-3.0-or-later
// The type scale of the sheets that are read in the hand. All in millimetres.
#pragma once
#include "sheets/sheet_options.hpp"

namespace bw {

struct SheetType {
    double title = 0, head = 0, body = 0, small = 0, foot = 0;
    double hair = 0; // width of a thin line
};
enum class SheetReader { Sitting, Standing }; // who stands needs it a little larger
// Large print has nothing below 12 points.
[[nodiscard]] SheetType sheetType(SheetReader reader, const SheetOptions& options);

} // namespace bw
