// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shorthand.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw {

namespace {
using Action = std::function<void(Block&)>;

// How much longer the planned session gets in this week; negative when shorter.
Millis change(const Facts& facts, const Action& action) {
    Block copy = facts.block;
    action(copy);
    const auto after = timeSession(facts.gym.settings, facts.gym.shelf, copy, facts.week);
    return roundHalvesUp(after.total.planned - facts.time.total.planned);
}

RoundsMode modeOf(const Facts& facts) { return facts.block.step(facts.week).rounds; }

// One round more where this week would feel it.
std::optional<Range<int>> more(Range<int> r, RoundsMode mode) {
    constexpr int kMost = 20;
    const auto [lo, hi] = std::pair{r.lo(), r.hi()};
    if (mode == RoundsMode::Low)
        return lo < kMost ? std::optional(Range<int>::between(lo + 1, std::max(hi, lo + 1)))
                          : std::nullopt;
    return hi < kMost ? std::optional(Range<int>::between(lo, hi + 1)) : std::nullopt;
}

std::vector<Place> groupsIn(const Facts& facts, int section) {
    std::vector<Place> out;
    for (int s = 0; s < static_cast<int>(facts.block.sections.size()); ++s) {
        if (section >= 0 && s != section) continue;
        const auto& groups = facts.block.sections[static_cast<std::size_t>(s)].groups;
        for (int g = 0; g < static_cast<int>(groups.size()); ++g) out.push_back({s, g});
    }
    return out;
}

ExactTime plannedOf(const Facts& facts, Place group) {
    const auto& section = facts.time.sections[static_cast<std::size_t>(group.section)];
    return section.groups[static_cast<std::size_t>(group.group)].total.planned;
}

std::optional<Remedy> cutRound(const Facts& facts, int section) {
    std::optional<Place> longest;
    for (const Place g : groupsIn(facts, section))
        if (fewerRounds(groupAt(facts.block, g)->rounds, modeOf(facts)) &&
            (!longest || plannedOf(facts, g) > plannedOf(facts, *longest)))
            longest = g;
    if (!longest) return std::nullopt;
    const Range<int> now = groupAt(facts.block, *longest)->rounds;
    const Range<int> then = *fewerRounds(now, modeOf(facts));
    Action action = setRounds(*longest, then);
    Message label{"Cut the rounds of group %1 from %2 to %3: saves %4",
                  {groupLetter(facts.block, *longest), roundsText(now), roundsText(then),
                   clockText(-change(facts, action))}};
    return Remedy{std::move(label), std::move(action)};
}

std::optional<Remedy> shortRests(const Facts& facts, int section) {
    Action action = [groups = groupsIn(facts, section)](Block& b) {
        for (const Place place : groups)
            if (Group* g = groupAt(b, place)) g->rest = Range<Millis>(g->rest.lo());
    };
    const Millis saved = -change(facts, action);
    if (saved <= Millis{0}) return std::nullopt;
    Message label = section < 0
                        ? Message{"Keep every rest at its short end: saves %1", {clockText(saved)}}
                        : Message{"Keep every rest of this section at its short end: saves %1",
                                  {clockText(saved)}};
    return Remedy{std::move(label), std::move(action)};
}

std::optional<Remedy> dropTalk(const Facts& facts, int section) {
    const auto& sections = facts.block.sections;
    int longest = section;
    if (section < 0) {
        const auto it = std::max_element(sections.begin(), sections.end(),
                                         [](auto& a, auto& b) { return a.talk < b.talk; });
        longest = static_cast<int>(it - sections.begin());
    }
    const Section* s = sectionAt(facts.block, {longest});
    if (!s || s->talk == Millis{0}) return std::nullopt;
    return Remedy{{"Explain the %1 section before the class, not in it: saves %2",
                   {kindLabel(*s), clockText(s->talk)}},
                  [longest](Block& b) {
                      if (Section* at = sectionAt(b, {longest})) at->talk = Millis{0};
                  }};
}
} // namespace

std::vector<Remedy> shorten(const Facts& facts, int section) {
    std::vector<Remedy> out;
    for (auto way : {cutRound, shortRests, dropTalk})
        if (auto remedy = way(facts, section)) out.push_back(std::move(*remedy));
    return out;
}

std::optional<Remedy> addRound(const Facts& facts, int section, Millis most) {
    auto groups = groupsIn(facts, section);
    std::stable_sort(groups.begin(), groups.end(),
                     [&](Place a, Place b) { return plannedOf(facts, a) < plannedOf(facts, b); });
    const auto planned = facts.time.sections[static_cast<std::size_t>(section)].total.planned;
    for (const Place g : groups) {
        const Range<int> now = groupAt(facts.block, g)->rounds;
        const auto then = more(now, modeOf(facts));
        if (!then) continue;
        Action action = setRounds(g, *then);
        const Millis added = change(facts, action);
        if (added <= Millis{0} || roundHalvesUp(planned) + added > most) continue;
        return Remedy{
            {"Set the rounds of group %1 to %2 instead of %3: adds %4",
             {groupLetter(facts.block, g), roundsText(*then), roundsText(now), clockText(added)}},
            std::move(action)};
    }
    return std::nullopt;
}

} // namespace bw
