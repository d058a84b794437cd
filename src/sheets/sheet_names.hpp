// SPDX-License-Identifier: GPL-3.0-or-later
// Names of sheets and of their files. The files of a gym sort by month: "2026-09 Low tide -
// wall.pdf".
#pragma once
#include "sheets/page.hpp"
#include "sheets/sheet_options.hpp"

#include <optional>
#include <string_view>

namespace bw {

[[nodiscard]] std::string_view
sheetWord(SheetKind kind); // "wall", in file names and on the terminal
[[nodiscard]] std::optional<SheetKind> sheetFrom(std::string_view word);
[[nodiscard]] QString sheetTitle(SheetKind kind,
                                 const Block& block); // "September 2026: Low tide (wall sheet)"
// Without folder. What no file system takes is left out, and a long title is shortened.
[[nodiscard]] QString sheetFileName(SheetKind kind, const Block& block);

// No pages yet: title, paper and inks.
[[nodiscard]] Layout emptyLayout(SheetKind kind, const Block& block, const SheetOptions& options);

} // namespace bw
