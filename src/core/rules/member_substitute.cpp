// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/member_substitute.hpp"

#include "core/rules/substitutes.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw {

namespace {
constexpr int kMainLimit = 3; // a demand of 3 is a main limit of the exercise

bool names(const std::vector<ExerciseId>& list, const ExerciseId& id) {
    return std::find(list.begin(), list.end(), id) != list.end();
}

using Candidates = std::vector<const Exercise*>; // best first, whoever it is for

Candidates candidatesFor(const Facts& facts, const SlotFact& slot) {
    return substitutes(facts, slot, facts.gym.shelf.size(), [](const Exercise&) { return true; });
}

// Kin before strangers; among both, the same main pattern first.
const Exercise* best(const Candidates& candidates, const Exercise& drafted, const Member& member) {
    const Exercise* found = nullptr;
    int least = 4;
    for (const Exercise* e : candidates) {
        const bool kin = names(drafted.easier, e->id) || names(drafted.swaps, e->id);
        const bool alike = e->patterns.largest() == drafted.patterns.largest();
        const int rank = (kin ? 0 : 2) + (alike ? 0 : 1);
        if (rank >= least || flagAgainst(member, *e)) continue;
        found = e;
        least = rank;
        if (least == 0) break;
    }
    return found;
}

Message reason(const SlotFact& slot, const Flag& flag, const Exercise& e) {
    const Exercise& drafted = *slot.exercise;
    const std::string demand(wordOf(flag.demand));
    std::vector<std::string> args{drafted.name, std::to_string(drafted.demands[flag.demand]),
                                  demand, e.name, std::to_string(e.demands[flag.demand])};
    if (names(drafted.easier, e.id))
        return {"%1 asks %2 of 3 for %3. %4 asks %5, is its easier version, and its kit is here.",
                std::move(args)};
    if (names(drafted.swaps, e.id))
        return {"%1 asks %2 of 3 for %3. %4 asks %5, is named as its swap, and its kit is here.",
                std::move(args)};
    args.emplace_back(wordOf(e.patterns.largest()));
    return {"%1 asks %2 of 3 for %3. %4 asks %5, mainly trains %6, and its kit is here.",
            std::move(args)};
}

Message nothing(const SlotFact& slot, const Flag& flag) {
    const Exercise& drafted = *slot.exercise;
    return {"%1 asks %2 of 3 for %3, and nothing on the Shelf fits in its place: leave it out for "
            "this member, or add an exercise.",
            {drafted.name, std::to_string(drafted.demands[flag.demand]),
             std::string(wordOf(flag.demand))}};
}
} // namespace

bool rulesOut(const Flag& flag, const Exercise& exercise) {
    const int level = exercise.demands[flag.demand];
    return flag.level == FlagLevel::Avoid ? level >= 1 : level >= kMainLimit;
}

const Flag* flagAgainst(const Member& member, const Exercise& exercise) {
    const auto it = std::find_if(member.flags.begin(), member.flags.end(),
                                 [&](const Flag& flag) { return rulesOut(flag, exercise); });
    return it == member.flags.end() ? nullptr : &*it;
}

namespace {
MemberSubstitute caseOf(const SlotFact& slot, const Member& member, const Exercise* e) {
    const Flag* flag = flagAgainst(member, *slot.exercise);
    return {slot.place, &member, flag, e, e ? reason(slot, *flag, *e) : nothing(slot, *flag)};
}

bool sameKinds(const Member& a, const Member& b) {
    return std::equal(
        a.flags.begin(), a.flags.end(), b.flags.begin(), b.flags.end(),
        [](const Flag& x, const Flag& y) { return x.demand == y.demand && x.level == y.level; });
}

// Members with the same kinds of flags get the same exercise.
void addCases(const Facts& facts, const SlotFact& slot, std::vector<MemberSubstitute>& out) {
    const auto first = static_cast<std::ptrdiff_t>(out.size());
    std::optional<Candidates> candidates;
    for (const Member& member : facts.gym.members) {
        if (!member.active || !flagAgainst(member, *slot.exercise)) continue;
        const auto known = std::find_if(out.begin() + first, out.end(), [&](const auto& c) {
            return sameKinds(*c.member, member);
        });
        if (known != out.end()) {
            out.push_back(caseOf(slot, member, known->substitute));
            continue;
        }
        if (!candidates) candidates = candidatesFor(facts, slot);
        out.push_back(caseOf(slot, member, best(*candidates, *slot.exercise, member)));
    }
}
} // namespace

std::optional<MemberSubstitute> memberSubstitute(const Facts& facts, const SlotFact& slot,
                                                 const Member& member) {
    if (!slot.exercise || !flagAgainst(member, *slot.exercise)) return std::nullopt;
    return caseOf(slot, member, best(candidatesFor(facts, slot), *slot.exercise, member));
}

std::vector<MemberSubstitute> memberSubstitutes(const Facts& facts) {
    std::vector<MemberSubstitute> out;
    for (const SlotFact& slot : facts.slots)
        if (slot.exercise) addCases(facts, slot, out);
    return out;
}

} // namespace bw
