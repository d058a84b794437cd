// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of the coach's notes, each put into the flow in turn; a part without matter puts
// nothing.
#pragma once
#include "blockwright/almanac/month_news.hpp"
#include "sheets/flow/sheet_flow.hpp"
#include "sheets/sheet_layout.hpp"

namespace bw {

void putNews(SheetFlow& flow, const SheetMatter& matter, const MonthNews& news);
void putSection(SheetFlow& flow, const SheetMatter& matter, const MonthNews& news, int section);
void putFindings(SheetFlow& flow, const CheckResult& verdict, const Block& block);
// On a page of its own, with initials: a coach can leave it in the drawer.
void putFlags(SheetFlow& flow, const SheetMatter& matter);

// "M. O." while that means one active member only, else more of the name.
[[nodiscard]] QString discreetName(const Gym& gym, const Member& member);

} // namespace bw
