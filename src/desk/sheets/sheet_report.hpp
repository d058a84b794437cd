// SPDX-License-Identifier: GPL-3.0-or-later
// What there is to say of a laid-out sheet: how many pages, from how far it can be read, what does
// not fit.
#pragma once
#include "sheets/page.hpp"
#include "sheets/sheet_options.hpp"

namespace bw {

struct SheetReport {
    QString text;
    bool trouble = false; // something does not fit
};
[[nodiscard]] SheetReport reportOn(const Layout& layout, const SheetOptions& options);
[[nodiscard]] QString sheetLabel(SheetKind kind); // "Wall sheet", in the list

} // namespace bw
