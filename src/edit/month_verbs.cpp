// SPDX-License-Identifier: GPL-3.0-or-later
#include "edit/month_verbs.hpp"

#include <algorithm>

namespace bw {

namespace {
Did putMonth(OpenGym& gym, Message what, Block block) {
    const Month month = block.month;
    if (gym.gym().block(month)) return false;
    std::optional<Spot> before;
    if (const auto latest = gym.gym().latest()) before = Spot{latest->month, {}};
    return gym.change({std::move(what),
                       {PutBlock{std::make_shared<const Block>(std::move(block))}},
                       before,
                       Spot{month, {}}});
}
} // namespace

Did setTitle(OpenGym& gym, Month month, std::string title) {
    return editBlock(gym, {month, {}}, {"title", {}},
                     [&](Block& b) { b.title = std::move(title); });
}
Did setFormat(OpenGym& gym, Month month, std::optional<Format> format) {
    return editBlock(gym, {month, {}}, {"format", {}}, [&](Block& b) { b.format = format; });
}
Did setVisits(OpenGym& gym, Month month, int perWeek) {
    return editBlock(gym, {month, {}}, {"visits a week", {}},
                     [&](Block& b) { b.visitsPerWeek = std::clamp(perWeek, 1, 14); });
}
Did setStairStep(OpenGym& gym, Month month, Week week, StairStep step) {
    return editBlock(gym, {month, {}}, {"week %1 of the stair", {std::to_string(week.number())}},
                     [&](Block& b) {
                         if (week.index() < static_cast<int>(b.stair.size()))
                             b.stair[static_cast<std::size_t>(week.index())] = std::move(step);
                     });
}

Did startMonth(OpenGym& gym, Month month) {
    Block block{.month = month,
                .title = {},
                .format = {},
                .visitsPerWeek = 3,
                .sections = {},
                .stair = defaultStair(),
                .extras = {}};
    for (const auto kind :
         {SectionKind::WarmUp, SectionKind::Power, SectionKind::Strength, SectionKind::Finisher})
        block.sections.push_back(usualSection(kind));
    auto& strength = block.sections[2]; // one pair would not fill its minutes
    strength.groups.push_back(usualGroup(strength.kind));
    return putMonth(gym, {"start %1", {month.text()}}, std::move(block));
}

Did copyMonth(OpenGym& gym, Month from, Month to) {
    const auto source = gym.gym().block(from);
    if (!source) return false;
    Block block = *source;
    block.month = to;
    block.title.clear();
    block.accepted.clear();
    return putMonth(gym, {"start %1 from %2", {to.text(), from.text()}}, std::move(block));
}

Did startNextFrom(OpenGym& gym, Month from) {
    const auto latest = gym.gym().latest();
    return latest ? copyMonth(gym, from, latest->month.plus(1)) : Did(false);
}

Did removeMonth(OpenGym& gym, Month month) {
    if (!gym.gym().block(month)) return false;
    std::optional<Spot> after;
    for (const auto& [other, block] : gym.gym().blocks)
        if (other != month && (!after || other < month)) after = Spot{other, {}};
    return gym.change(
        {{"remove %1", {month.text()}}, {RemoveBlock{month}}, Spot{month, {}}, after});
}

} // namespace bw
