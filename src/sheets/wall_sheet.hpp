// SPDX-License-Identifier: GPL-3.0-or-later
// The month on the wall, read at three metres during the class. Names and doses are set as large as
// the fewest pages allow, and never below 1.3 times the smallest letter that can be read from
// there; rather than that a further page is begun, by whole sections.
#pragma once
#include "sheets/page.hpp"
#include "sheets/sheet_options.hpp"

namespace bw {

// Needs a QGuiApplication for its fonts. Large print is given up when a single row would not fit on
// a page. Layout::keyCap says how large it came out (legibility.hpp).
[[nodiscard]] Layout layoutWall(const Gym& gym, const Block& block, const SheetOptions& options);

} // namespace bw
