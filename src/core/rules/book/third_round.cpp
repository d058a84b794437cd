// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shorthand.hpp"
#include "core/rules/book/book.hpp"
#include "core/rules/book/floor_facts.hpp"
#include "core/rules/remedies.hpp"

namespace bw::book {

namespace {
Message rarely(const Facts& facts, Place group, const FloorGroupRounds& done) {
    const int high = groupAt(facts.block, group)->rounds.hi();
    return {"Group %1 is open up to round %2, and %3 of the members get there in the simulated "
            "class.",
            {groupLabel(facts, group), std::to_string(high), percentText(done.reachedHigh)}};
}
Message never(const Facts& facts, Place group) {
    const int high = groupAt(facts.block, group)->rounds.hi();
    return {"Group %1 is open up to round %2, and nobody gets there in the simulated class.",
            {groupLabel(facts, group), std::to_string(high)}};
}

std::vector<Remedy> toTry(const Facts& facts, Place group) {
    const Group& g = *groupAt(facts.block, group);
    std::vector<Remedy> out;
    if (!g.rest.single()) out.push_back(setRestTo(facts, group, Range<Millis>(g.rest.lo())));
    if (const auto fewer = fewerRounds(g.rounds, RoundsMode::Open))
        out.push_back(
            {{"Set the rounds of group %1 to %2 instead of %3",
              {groupLetter(facts.block, group), roundsText(*fewer), roundsText(g.rounds)}},
             setRounds(group, *fewer)});
    return out;
}

void judgeGroup(const Facts& facts, Verdict& verdict, Place group, const FloorGroupRounds& done) {
    if (groupAt(facts.block, group)->rounds.single()) return;
    const bool none = done.reachedHigh <= verdict.limit("look_share").hi;
    if (!none && done.reachedHigh >= verdict.limit("note_share").lo) return;
    Finding& f =
        verdict.add(none ? Level::Look : Level::Note, group, done.reachedHigh,
                    none ? "look_share" : "note_share",
                    done.reachedHigh == 0 ? never(facts, group) : rarely(facts, group, done));
    f.remedies = toTry(facts, group);
}

void judge(const Facts& facts, Verdict& verdict) {
    if (!facts.floor || facts.block.step(facts.week).rounds != RoundsMode::Open) return;
    const auto& sections = facts.floor->answer->sections;
    for (int s = 0; s < static_cast<int>(sections.size()); ++s) {
        const auto& groups = sections[static_cast<std::size_t>(s)].groups;
        for (int g = 0; g < static_cast<int>(groups.size()); ++g)
            judgeGroup(facts, verdict, {s, g}, groups[static_cast<std::size_t>(g)]);
    }
}
} // namespace

Rule thirdRound() {
    return {"third-round",
            {"In a week with open rounds members get to the highest round.", {}},
            {{"note_share",
              atMost(0.25),
              "share",
              commonPractice(),
              {"When a smaller share of the members get to the highest round, it is noted.", {}}},
             {"look_share",
              atMost(0.01),
              "share",
              commonPractice(),
              {"When no larger share gets there, which is as good as nobody, a coach should look.",
               {}}}},
            judge};
}

} // namespace bw::book
