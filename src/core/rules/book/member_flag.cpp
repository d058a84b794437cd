// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/member_substitute.hpp"
#include "core/rules/book/book.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw::book {

namespace {
std::string namesText(const std::vector<MemberSubstitute>& cases, const Exercise* substitute) {
    std::vector<std::string> names;
    for (const MemberSubstitute& c : cases)
        if (c.substitute == substitute) names.push_back(c.member->name);
    return listText(names);
}

std::string demandsText(const std::vector<MemberSubstitute>& cases) {
    std::vector<std::string> words;
    for (const MemberSubstitute& c : cases) {
        std::string word(wordOf(c.flag->demand));
        if (std::find(words.begin(), words.end(), word) == words.end())
            words.push_back(std::move(word));
    }
    return listText(words);
}

// One a substitute, in the order of the members.
std::vector<Remedy> remediesFor(const Facts& facts, const SlotFact& slot,
                                const std::vector<MemberSubstitute>& cases) {
    std::vector<Remedy> out;
    std::vector<const Exercise*> seen;
    for (const MemberSubstitute& c : cases) {
        if (std::find(seen.begin(), seen.end(), c.substitute) != seen.end()) continue;
        seen.push_back(c.substitute);
        const std::string names = namesText(cases, c.substitute);
        out.push_back(advice(
            c.substitute ? Message{"For %1: %2", {names, c.substitute->name}}
                         : Message{"For %1: leave it out; nothing on the Shelf fits", {names}}));
    }
    const bool oneForAll = seen.size() == 1 && seen[0] && !slot.slot->locked;
    if (oneForAll) out.push_back(useExercise(facts, slot, *seen[0]));
    return out;
}

void judgeSlot(const Facts& facts, Verdict& verdict, const SlotFact& slot,
               const std::vector<MemberSubstitute>& cases) {
    const bool anyWithout = std::any_of(cases.begin(), cases.end(),
                                        [](const auto& c) { return c.substitute == nullptr; });
    std::vector<std::string> names;
    names.reserve(cases.size());
    for (const MemberSubstitute& c : cases) names.push_back(c.member->name);
    Finding& f = verdict.add(anyWithout ? Level::Look : Level::Note, slot.place,
                             static_cast<double>(cases.size()), "members",
                             {"%1 asks for %2; flags rule it out for %3.",
                              {slotLabel(facts.block, slot), demandsText(cases), listText(names)}});
    f.remedies = remediesFor(facts, slot, cases);
}

void judge(const Facts& facts, Verdict& verdict) {
    const double most = verdict.limit("members").hi;
    const auto all = memberSubstitutes(facts);
    for (const SlotFact& slot : facts.slots) {
        std::vector<MemberSubstitute> cases;
        std::copy_if(all.begin(), all.end(), std::back_inserter(cases),
                     [&](const auto& c) { return c.place == slot.place; });
        if (static_cast<double>(cases.size()) > most) judgeSlot(facts, verdict, slot, cases);
    }
}
} // namespace

Rule memberFlag() {
    return {"member-flag",
            {"Members whose flags meet an exercise have another one ready.", {}},
            {{"members",
              atMost(0),
              "",
              {"This gym's setting: the flags of its members. The program only looks for another "
               "exercise; a licensed professional decides.",
               {}},
              {"How many members may be left without a word at a slot.", {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
