// SPDX-License-Identifier: GPL-3.0-or-later
// The engine's words as members read them on paper.
#pragma once
#include "sheets/sheet_options.hpp"

namespace bw {

[[nodiscard]] QString sheetName(SheetKind kind); // "wall sheet"
[[nodiscard]] QString printedMonth(Month month); // "September 2026"
[[nodiscard]] QString sectionName(SectionKind kind);
[[nodiscard]] QString printedFormat(Format format);
[[nodiscard]] QString formatSentence(Format format); // what it asks of a member
[[nodiscard]] QString intentName(Intent intent);
[[nodiscard]] QString roundsName(RoundsMode mode);
[[nodiscard]] QString cautionText(); // foot of every sheet that members read
// "page 2 of 3"; numbers from 1.
[[nodiscard]] QString pageText(int page, int pages);

} // namespace bw
