// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/stair_jump.hpp"
#include "core/rules/book/book.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>
#include <cmath>

namespace bw::book {

namespace {
// The share of a one-repetition maximum that can be lifted n times, turned over: Epley, Poundage
// chart, 1985, 1 + n/30; a single is the maximum itself.
double epley(double n) { return n <= 1 ? 1 : 1 + n / 30; }

} // namespace

double riseOfLoad(double reps, Rir from, Rir to) {
    return 100 * (epley(reps + from.reps()) / epley(reps + to.reps()) - 1);
}

namespace {
// The fewest repetitions of a strength set: there a repetition in reserve weighs most.
const SlotFact* heaviest(const Facts& facts) {
    const SlotFact* best = nullptr;
    for (const SlotFact& s : facts.slots) {
        if (s.section->kind != SectionKind::Strength || !s.slot->dose) continue;
        if (s.slot->dose->measure() != Measure::Reps) continue;
        if (!best || s.slot->dose->middle() < best->slot->dose->middle()) best = &s;
    }
    return best;
}

std::vector<Rir> evenly(Rir first, Rir last, std::size_t weeks) {
    std::vector<Rir> out;
    for (std::size_t i = 0; i < weeks; ++i) {
        const double part = static_cast<double>(i) / static_cast<double>(weeks - 1);
        const double tenths = first.tenths() + part * (last.tenths() - first.tenths());
        constexpr int kHalf = 5; // a coach says 2 or 2.5
        out.push_back(
            Rir::fromTenths(static_cast<int>(std::lround(tenths / kHalf)) * kHalf).value());
    }
    return out;
}

bool keeps(const std::vector<Rir>& weeks, double reps, double most) {
    for (std::size_t w = 0; w + 1 < weeks.size(); ++w)
        if (riseOfLoad(reps, weeks[w], weeks[w + 1]) > most) return false;
    return true;
}

Remedy setReserves(Message label, std::vector<Rir> weeks) {
    return {std::move(label), [weeks = std::move(weeks)](Block& b) {
                for (std::size_t w = 0; w < std::min(weeks.size(), b.stair.size()); ++w)
                    b.stair[w].rir = weeks[w];
            }};
}

std::string reserves(const std::vector<Rir>& weeks) {
    std::vector<std::string> words;
    words.reserve(weeks.size());
    for (const Rir rir : weeks) words.push_back(numberText(rir.reps()));
    return listText(words);
}

std::vector<Remedy> remediesFor(const Facts& facts, double reps, double most, std::size_t week) {
    const auto& stair = facts.block.stair;
    const auto even = evenly(stair.front().rir, stair.back().rir, stair.size());
    if (keeps(even, reps, most))
        return {setReserves({"Let the effort rise evenly: %1 left in reserve", {reserves(even)}},
                            even)};
    std::vector<Rir> gentler;
    gentler.reserve(stair.size());
    for (const StairStep& step : stair) gentler.push_back(step.rir);
    while (riseOfLoad(reps, gentler[week], gentler[week + 1]) > most) {
        const auto next = Rir::fromTenths(gentler[week + 1].tenths() + 5);
        if (!next) return {advice({"A gentler step between the two weeks", {}})};
        gentler[week + 1] = *next;
    }
    const Message label{"Leave %1 in reserve in week %2",
                        {numberText(gentler[week + 1].reps()), std::to_string(week + 2)}};
    return {setReserves(label, gentler)};
}

void judge(const Facts& facts, Verdict& verdict) {
    const SlotFact* slot = heaviest(facts);
    const double most = verdict.limit("percent").hi;
    const auto& stair = facts.block.stair;
    for (std::size_t w = 0; slot && w + 1 < stair.size(); ++w) {
        const double reps = slot->slot->dose->middle();
        const double percent = riseOfLoad(reps, stair[w].rir, stair[w + 1].rir);
        if (percent <= most) continue;
        Finding& f = verdict.add(
            Level::Look, {}, percent, "percent",
            {"From week %1 to week %2 %3 goes from %4 to %5 left in reserve: about %6 % more "
             "weight in one week, more than %7 %.",
             {std::to_string(w + 1), std::to_string(w + 2), slotLabel(facts.block, *slot),
              numberText(stair[w].rir.reps()), numberText(stair[w + 1].rir.reps()),
              numberText(percent), numberText(most)}});
        f.also = {slot->place};
        f.about = "week " + std::to_string(w + 2);
        f.remedies = remediesFor(facts, reps, most, w);
    }
}
} // namespace

Rule stairJump() {
    return {
        "stair-jump",
        {"The weight that the stair asks for rises in small steps.", {}},
        {{"percent",
          atMost(10),
          "%",
          {"ACSM 2009 (Med Sci Sports Exerc 41(3):687-708): 2 to 10 % more load once one or two "
           "repetitions over the target are possible. What was read of the stand of 2026 gives no "
           "other step.",
           {}},
          {"Most that the weight of the set with the fewest repetitions may rise from one week to "
           "the next, as the stair's reserve and Epley's formula (1985) have it.",
           {}}}},
        judge,
        {},
        false};
}

} // namespace bw::book
