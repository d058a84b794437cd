// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shorthand.hpp"
#include "core/rules/book/book.hpp"
#include "core/rules/book/rests.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/wording.hpp"

namespace bw::book {

namespace {
std::string_view limitFor(std::optional<Format> format) {
    if (format == Format::HeavyThenLong) return "heavy_then_long_seconds";
    if (format == Format::StraightHeavy) return "straight_heavy_seconds";
    return "other_seconds";
}

Message outside(const Facts& facts, Place place, const Group& group, const LimitValue& limit,
                bool below) {
    const std::vector<std::string> args{groupLabel(facts, place), restText(group.rest),
                                        bandText(limit)};
    if (below)
        return {
            "Group %1 rests %2 between rounds, shorter than %3: the next round would have to be "
            "lighter.",
            args};
    return {"Group %1 rests %2 between rounds, longer than %3: the class stands about.", args};
}

void judge(const Facts& facts, Verdict& verdict) {
    const std::string_view name = limitFor(facts.block.format);
    const LimitValue limit = verdict.limit(name);
    eachRestingGroup(facts.block, SectionKind::Strength, [&](Place place, const Group& group) {
        const auto missed = missedEnd(group.rest, limit);
        if (!missed) return;
        Finding& f = verdict.add(Level::Look, place, missed->seconds, name,
                                 outside(facts, place, group, limit, missed->below));
        f.remedies = {setRestTo(facts, place, restWithin(group.rest, limit))};
    });
}
} // namespace

Rule strengthRest() {
    const Message trained{
        "Grgic et al. 2018 (Sports Med 48:137-151): more than 2 min for trained lifters, 60 to 120 "
        "s "
        "enough for untrained. ACSM 2009 (Med Sci Sports Exerc 41(3):687-708) gives longer rests "
        "for "
        "the heaviest loads. The upper end is common practice in an hour's class.",
        {}};
    return {"strength-rest",
            {"Rests between strength rounds suit the month's format.", {}},
            {{"heavy_then_long_seconds",
              within(60, 120),
              "s",
              commonPractice(),
              {"Rest after a heavy-then-long round.", {}}},
             {"straight_heavy_seconds",
              within(120, 180),
              "s",
              trained,
              {"Rest between sets of one main lift at a time.", {}}},
             {"other_seconds",
              within(60, 180),
              "s",
              commonPractice(),
              {"Rest between rounds in every other format, or when none is chosen.", {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
