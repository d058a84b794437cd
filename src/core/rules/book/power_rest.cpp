// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shorthand.hpp"
#include "core/rules/book/book.hpp"
#include "core/rules/book/rests.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/wording.hpp"

namespace bw::book {

namespace {
void judgeGroup(const Facts& facts, Verdict& verdict, Place place, const Group& group) {
    const LimitValue limit = verdict.limit("seconds");
    const auto missed = missedEnd(group.rest, limit);
    if (!missed) return;
    const Message tooShort{"Group %1 rests %2 between power rounds; speed needs %3, or the later "
                           "rounds turn into conditioning.",
                           {groupLabel(facts, place), restText(group.rest), bandText(limit)}};
    const Message tooLong{
        "Group %1 rests %2 between power rounds, more than the usual %3. Right for "
        "heavy power work; for light, fast work it costs the class time.",
        {groupLabel(facts, place), restText(group.rest), bandText(limit)}};
    Finding& f = verdict.add(missed->below ? Level::Look : Level::Note, place, missed->seconds,
                             "seconds", missed->below ? tooShort : tooLong);
    f.remedies = {setRestTo(facts, place, restWithin(group.rest, limit))};
}

void judge(const Facts& facts, Verdict& verdict) {
    eachRestingGroup(facts.block, SectionKind::Power, [&](Place place, const Group& group) {
        judgeGroup(facts, verdict, place, group);
    });
}
} // namespace

Rule powerRest() {
    return {
        "power-rest",
        {"Rounds of power work are far enough apart to be done fresh.", {}},
        {{"seconds",
          within(60, 120),
          "s",
          {"Common practice for light, fast work. ACSM 2009 (Med Sci Sports Exerc 41(3):687-708) "
           "gives 2 to 3 min for heavy power work.",
           {}},
          {"Rest after a power round. Below it a coach should look; above it is only noted.", {}}}},
        judge,
        {},
        false};
}

} // namespace bw::book
