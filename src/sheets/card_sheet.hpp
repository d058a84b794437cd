// SPDX-License-Identifier: GPL-3.0-or-later
// A member's month on a card to keep in the hand and write on, several to a page with marks to cut
// along. The type is as large as a card has room for; where one member's would not fit at the
// least size there are fewer cards to the page, and only a card of a whole page goes on overleaf.
#pragma once
#include "sheets/sheet_layout.hpp"

namespace bw {

// Active members in the gym's order. Needs a QGuiApplication for its fonts.
[[nodiscard]] Layout layoutCards(const SheetMatter& matter, const SheetOptions& options,
                                 const SheetProgress& progress = {});

} // namespace bw
