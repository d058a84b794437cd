// SPDX-License-Identifier: GPL-3.0-or-later
// What a coach does to a month as a whole. Like the block verbs, each is one undoable step.
#pragma once
#include "edit/block_verbs.hpp"

namespace bw {

[[nodiscard]] Did setTitle(OpenGym& gym, Month month, std::string title);
[[nodiscard]] Did setFormat(OpenGym& gym, Month month, std::optional<Format> format);
[[nodiscard]] Did setVisits(OpenGym& gym, Month month, int perWeek);
[[nodiscard]] Did setStairStep(OpenGym& gym, Month month, Week week, StairStep step);

// A month with the usual empty sections. False when the month is already there.
[[nodiscard]] Did startMonth(OpenGym& gym, Month month);
// Another month's draft as a start, without its title and what was accepted in it. False when `to`
// is already there.
[[nodiscard]] Did copyMonth(OpenGym& gym, Month from, Month to);
// The same, into the month after the latest.
[[nodiscard]] Did startNextFrom(OpenGym& gym, Month from);
[[nodiscard]] Did removeMonth(OpenGym& gym, Month month);

} // namespace bw
