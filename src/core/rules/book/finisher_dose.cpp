// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shorthand.hpp"
#include "blockwright/rules/work_rest.hpp"
#include "core/rules/book/book.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>
#include <cmath>

namespace bw::book {

namespace {
bool allOut(const SlotFact& s, const Verdict& verdict) {
    if (!s.exercise || s.section->kind != SectionKind::Finisher) return false;
    return s.exercise->demands[Demand::Breath] >= verdict.limit("breath").lo &&
           s.work.middle > Millis{0} &&
           inSeconds(s.work.middle) <= verdict.limit("work_seconds").hi;
}

// From the end of the slot's set to its next one, in the middle of the written ranges: the rest
// between rounds, every set-up, and the group's other work when that is not all-out too.
Millis recovery(const Facts& facts, const Verdict& verdict, const SlotFact& slot) {
    const Range<Millis> rest = slot.group->rest;
    Millis sum = (rest.lo() + rest.hi()) / 2;
    for (const SlotFact& s : facts.slots) {
        if (s.group != slot.group || !s.exercise) continue;
        sum += s.exercise->setup;
        if (&s != &slot && !allOut(s, verdict)) sum += s.work.middle;
    }
    return sum;
}

// The group's rest, longer by what is missing, to the next five seconds.
std::optional<Remedy> restLonger(const Facts& facts, const SlotFact& slot, Millis missing) {
    constexpr std::int64_t kStep = 5'000, kMost = 30 * 60 * 1000;
    const std::int64_t more = (missing.count() + kStep - 1) / kStep * kStep;
    const Range<Millis> now = slot.group->rest;
    if (now.hi().count() + more > kMost) return std::nullopt;
    return setRestTo(facts, {slot.place.section, slot.place.group},
                     Range<Millis>::between(now.lo() + Millis{more}, now.hi() + Millis{more}));
}

Millis wholeSeconds(Millis t) { return std::chrono::round<std::chrono::seconds>(t); }

Remedy onlyOnce(const Facts& facts, const SlotFact& slot) {
    const Place group{slot.place.section, slot.place.group};
    return {{"Go through group %1 once", {groupLetter(facts.block, group)}},
            setRounds(group, Range<int>(1))};
}

void judgeSlot(const Facts& facts, Verdict& verdict, const SlotFact& slot) {
    const auto table = restAfter(slot.work.middle);
    if (!table) return;
    const double part = verdict.limit("table_share").lo;
    const Millis wanted{std::llround(static_cast<double>(table->lo().count()) * part)};
    const Millis has = recovery(facts, verdict, slot);
    if (has >= wanted) return;
    Finding& f = verdict.add(
        Level::Note, slot.place, inSeconds(has), "table_share",
        {"%1 is %2 all out and has %3 until it comes again; the table gives %4. The next round is "
         "slower: conditioning, not power.",
         {slotLabel(facts.block, slot), secondsText(inSeconds(slot.work.middle)),
          secondsText(inSeconds(has)),
          restText(Range<Millis>::between(wholeSeconds(table->lo()), wholeSeconds(table->hi())))}});
    f.limit = atMost(inSeconds(wanted));
    f.unit = "s";
    if (auto longer = restLonger(facts, slot, wanted - has))
        f.remedies.push_back(std::move(*longer));
    f.remedies.push_back(onlyOnce(facts, slot));
}

void judge(const Facts& facts, Verdict& verdict) {
    for (const SlotFact& slot : facts.slots)
        if (allOut(slot, verdict) && slot.group->rounds.hi() > 1) judgeSlot(facts, verdict, slot);
}
} // namespace

Rule finisherDose() {
    const Message table{
        "Haff and Triplett (eds), Essentials of Strength Training and Conditioning, 4th ed. 2016, "
        "table 3.6: rest 12 to 20 times the work after 5 to 10 s, 3 to 5 times after 15 to 30 s. "
        "Nothing is said between the rows.",
        {}};
    return {
        "finisher-dose",
        {"Short all-out work in the finisher has the rest of the work:rest table.", {}},
        {{"table_share",
          atMost(1),
          "share",
          table,
          {"How much of the table's shortest rest there must be.", {}}},
         {"work_seconds", atMost(30), "s", table, {"Up to which length work can be all-out.", {}}},
         {"breath",
          atMost(3),
          "",
          commonPractice(),
          {"From which demand of breath on, 1 to 3, work counts as all-out.", {}}}},
        judge,
        {},
        false};
}

} // namespace bw::book
