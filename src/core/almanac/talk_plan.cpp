// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/almanac/talk_plan.hpp"

namespace bw {

namespace {
constexpr Millis kMonth{60'000}, kNew{45'000}, kBack{15'000}, kStays{45'000}, kWeek{30'000},
    kCare{30'000}, kQuestions{120'000};
} // namespace

std::vector<TalkItem> talkPlan(const MonthNews& news, const Block& block) {
    std::vector<TalkItem> plan;
    const auto add = [&](TalkItem item, Millis length) {
        item.from = talkLength(plan);
        item.length = length;
        plan.push_back(std::move(item));
    };
    add({TalkPart::Month, {}, {}, {}, {}}, kMonth);
    std::vector<NewsLine> back, stays;
    for (const NewsLine& line : news.lines) {
        if (line.fresh)
            add({TalkPart::New, {line}, {}, {}, {}}, kNew);
        else if (line.changed)
            back.push_back(line);
        else if (line.mainStreak > 0)
            stays.push_back(line);
    }
    if (!back.empty())
        add({TalkPart::Back, back, {}, {}, {}}, kBack * static_cast<int>(back.size()));
    if (!stays.empty()) add({TalkPart::Stays, stays, {}, {}, {}}, kStays);
    for (int w = 1; w <= static_cast<int>(block.stair.size()) && w <= Week::kMost; ++w)
        add({TalkPart::Week, {}, Week::of(w).value(), {}, {}}, kWeek);
    add({TalkPart::Care, {}, {}, {}, {}}, kCare);
    add({TalkPart::Questions, {}, {}, {}, {}}, kQuestions);
    return plan;
}

Millis talkLength(const std::vector<TalkItem>& plan) {
    return plan.empty() ? Millis{0} : plan.back().from + plan.back().length;
}

} // namespace bw
