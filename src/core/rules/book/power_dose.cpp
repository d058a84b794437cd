// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shorthand.hpp"
#include "core/rules/book/book.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>
#include <cmath>

namespace bw::book {

namespace {
// An alternating dose is the total of both sides; every other one is what one side does.
double sidesIn(const Exercise& e) { return e.sides == Sides::Alternating ? 2 : 1; }

Message tooMany(const Facts& facts, const SlotFact& slot, double perSide, double most) {
    const std::vector<std::string> args{slotLabel(facts.block, slot), numberText(perSide),
                                        numberText(most)};
    if (slot.exercise->sides == Sides::Both)
        return {"%1 goes up to %2 reps in a power set; past %3 the speed is lost.", args};
    return {"%1 goes up to %2 reps a side in a power set; past %3 the speed is lost.", args};
}

Remedy fewerReps(const Facts& facts, const SlotFact& slot, double mostPerSide) {
    const auto now = slot.slot->dose->amount();
    const auto most = std::max<std::int64_t>(
        1, static_cast<std::int64_t>(std::floor(mostPerSide * sidesIn(*slot.exercise))));
    return setDoseTo(facts, slot,
                     Dose::reps(std::min(now.lo(), most), std::min(now.hi(), most)).value());
}

void judge(const Facts& facts, Verdict& verdict) {
    const double look = verdict.limit("look_reps").hi;
    const double stop = verdict.limit("stop_reps").hi;
    for (const SlotFact& slot : facts.slots) {
        if (slot.section->kind != SectionKind::Power || !slot.exercise || !slot.slot->dose)
            continue;
        if (slot.slot->dose->measure() != Measure::Reps) continue;
        const double perSide = slot.slot->dose->hi() / sidesIn(*slot.exercise);
        const bool tooLong = perSide > stop;
        if (!tooLong && perSide <= look) continue;
        Finding& f = verdict.add(tooLong ? Level::Stop : Level::Look, slot.place, perSide,
                                 tooLong ? "stop_reps" : "look_reps",
                                 tooMany(facts, slot, perSide, tooLong ? stop : look));
        f.remedies = {fewerReps(facts, slot, std::min(look, stop)),
                      advice({"Or move it to the finisher, where longer sets belong", {}})};
    }
}
} // namespace

Rule powerDose() {
    return {
        "power-dose",
        {"Power sets are short enough to stay fast.", {}},
        {{"look_reps",
          atMost(6),
          "reps",
          {"ACSM 2026 (Med Sci Sports Exerc, overview of reviews, from summaries): power is moved "
           "fast, at 30 to 70 % 1RM. ACSM 2009 (Med Sci Sports Exerc 41(3):687-708): 3 to 6 reps "
           "in a power set.",
           {}},
          {"Most reps a side in a power set before a coach should look.", {}}},
         {"stop_reps",
          atMost(10),
          "reps",
          commonPractice(),
          {"Most reps a side that can still be called a power set.", {}}}},
        judge,
        {},
        false};
}

} // namespace bw::book
