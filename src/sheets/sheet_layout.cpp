// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/sheet_layout.hpp"
#include "sheets/card_sheet.hpp"
#include "sheets/coach_sheets.hpp"
#include "sheets/wall_sheet.hpp"

namespace bw {

Layout layoutSheet(SheetKind kind, const SheetMatter& matter, const SheetOptions& options,
                   const SheetProgress& progress) {
    switch (kind) {
    case SheetKind::Cards: return layoutCards(matter, options, progress);
    case SheetKind::Notes: return layoutNotes(matter, options);
    case SheetKind::Kit: return layoutKit(matter, options);
    case SheetKind::Talk: return layoutTalk(matter, options);
    case SheetKind::Wall: break;
    }
    return layoutWall(matter.gym, matter.block, options);
}

} // namespace bw
