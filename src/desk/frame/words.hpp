// SPDX-License-Identifier: GPL-3.0-or-later
// The engine's text on the screen: its source sentence is translated, then filled.
#pragma once
#include "blockwright/model/calendar.hpp"
#include "blockwright/model/message.hpp"
#include "blockwright/model/vocabulary.hpp"

#include <QString>

#include <string_view>

namespace bw {

[[nodiscard]] QString say(const Message& message);
[[nodiscard]] QString plain(std::string_view utf8);
[[nodiscard]] QString monthName(Month month);            // "September 2026"
[[nodiscard]] QString unitSaid(std::string_view figure); // "3 months"
// Translated names of the trade: "Warm-up", "heavy-then-long", "vertical pull".
[[nodiscard]] QString kindName(SectionKind kind);
[[nodiscard]] QString formatName(Format format);
[[nodiscard]] QString patternName(Pattern pattern);
[[nodiscard]] QString weekIntent(Intent intent);

} // namespace bw
