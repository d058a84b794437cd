// SPDX-License-Identifier: GPL-3.0-or-later
// What the coach chose for a sheet last time, kept with the program's settings under sheets/WORD/.
#pragma once
#include "sheets/sheet_options.hpp"

namespace bw {

// What was never chosen is as the gym has it.
[[nodiscard]] SheetOptions rememberedOptions(SheetKind kind, const GymSettings& gym);
void rememberOptions(SheetKind kind, const SheetOptions& options);

// Where files were saved last; the documents folder until then.
[[nodiscard]] QString rememberedFolder();
void rememberFolder(const QString& folder);

} // namespace bw
