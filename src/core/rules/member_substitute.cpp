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

// Kin before strangers; among both, the same main pattern first.
const Exercise* best(const Facts& facts, const SlotFact& slot, const Member& member) {
    const auto free = [&](const Exercise& e) { return flagAgainst(member, e) == nullptr; };
    const Exercise& drafted = *slot.exercise;
    const auto kin = [&](const Exercise& e) {
        return names(drafted.easier, e.id) || names(drafted.swaps, e.id);
    };
    const auto alike = [&](const Exercise& e) {
        return e.patterns.largest() == drafted.patterns.largest();
    };
    for (const bool wantKin : {true, false})
        for (const bool wantAlike : {true, false}) {
            const auto found = substitutes(facts, slot, 1, [&](const Exercise& e) {
                return free(e) && (!wantKin || kin(e)) && (!wantAlike || alike(e));
            });
            if (!found.empty()) return found.front();
        }
    return nullptr;
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

std::optional<MemberSubstitute> memberSubstitute(const Facts& facts, const SlotFact& slot,
                                                 const Member& member) {
    if (!slot.exercise) return std::nullopt;
    const Flag* flag = flagAgainst(member, *slot.exercise);
    if (!flag) return std::nullopt;
    const Exercise* e = best(facts, slot, member);
    return MemberSubstitute{slot.place, &member, flag, e,
                            e ? reason(slot, *flag, *e) : nothing(slot, *flag)};
}

std::vector<MemberSubstitute> memberSubstitutes(const Facts& facts) {
    std::vector<MemberSubstitute> out;
    for (const SlotFact& slot : facts.slots)
        for (const Member& member : facts.gym.members)
            if (member.active)
                if (auto found = memberSubstitute(facts, slot, member))
                    out.push_back(std::move(*found));
    return out;
}

} // namespace bw
