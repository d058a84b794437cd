// SPDX-License-Identifier: GPL-3.0-or-later
// How long each part of a talk takes that explains the month to members: first what the month is
// for, then exercises new to the gym, then those that come back after a month or more, then what
// stays, then the weeks, then care and questions. The lengths are common practice, no source.
#pragma once
#include "blockwright/almanac/month_news.hpp"

namespace bw {

enum class TalkPart { Month, New, Back, Stays, Week, Care, Questions };

struct TalkItem {
    TalkPart part = TalkPart::Month;
    std::vector<NewsLine> lines; // New: one; Back: all; Stays: the main lifts
    std::optional<Week> week;    // with Week
    Millis from{0}, length{0};
};

// Parts without matter are left out.
[[nodiscard]] std::vector<TalkItem> talkPlan(const MonthNews& news, const Block& block);
[[nodiscard]] Millis talkLength(const std::vector<TalkItem>& plan);

} // namespace bw
