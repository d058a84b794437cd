// SPDX-License-Identifier: GPL-3.0-or-later
// The sheets that a coach holds: notes, kit list and talk outline.
#pragma once
#include "sheets/sheet_layout.hpp"

namespace bw {

[[nodiscard]] Layout layoutNotes(const SheetMatter& matter, const SheetOptions& options);
[[nodiscard]] Layout layoutKit(const SheetMatter& matter, const SheetOptions& options);
[[nodiscard]] Layout layoutTalk(const SheetMatter& matter, const SheetOptions& options);

} // namespace bw
