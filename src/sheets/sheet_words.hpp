// SPDX-License-Identifier: GPL-3.0-or-later
// The engine's words as members read them on paper.
#pragma once
#include "blockwright/model/message.hpp"
#include "sheets/sheet_options.hpp"

namespace bw {

// A source sentence of the sheets, translated; text from the gym on one line; a sentence of the
// engine.
[[nodiscard]] QString sheetSay(const char* english);
[[nodiscard]] QString printed(const std::string& text);
[[nodiscard]] QString printed(const Message& message);
// The Shelf's name, else the id.
[[nodiscard]] QString nameOf(const Shelf& shelf, const ExerciseId& id);

[[nodiscard]] QString sheetName(SheetKind kind);     // "wall sheet"
[[nodiscard]] QString printedMonth(Month month);     // "September 2026"
[[nodiscard]] QString printedDate(Date date);        // "1 September 2026"
[[nodiscard]] QString monthWord(int month);          // "September"; 1 to 12
[[nodiscard]] QString blockText(const Block& block); // "September 2026 · Low tide"
// Gym, block and the day of printing, for the foot.
[[nodiscard]] QString footText(const Gym& gym, const Block& block, const SheetOptions& options);
[[nodiscard]] QString sectionName(SectionKind kind);
[[nodiscard]] QString printedFormat(Format format);
[[nodiscard]] QString formatSentence(Format format); // what it asks of a member
[[nodiscard]] QString intentName(Intent intent);
[[nodiscard]] QString roundsName(RoundsMode mode);
[[nodiscard]] QString cautionText(); // foot of every sheet that members read
// "page 2 of 3"; numbers from 1.
[[nodiscard]] QString pageText(int page, int pages);

} // namespace bw
