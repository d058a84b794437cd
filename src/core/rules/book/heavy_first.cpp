// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/heavy_first.hpp"
#include "core/rules/book/book.hpp"
#include "core/rules/book/pairs.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace bw::book {

namespace {
bool inReps(const SlotFact& s) { return s.slot->dose->measure() == Measure::Reps; }

// Twice the middle of the repetitions in reserve, in tenths; the higher it is the lower the effort.
int doubledReserve(const SlotFact& s) {
    return s.slot->effort->lo().tenths() + s.slot->effort->hi().tenths();
}

struct Order {
    const SlotFact& first;
    const SlotFact& second;

    // Only reps with reps, and only two efforts that were both written down.
    [[nodiscard]] bool repsCompare() const { return inReps(first) && inReps(second); }
    [[nodiscard]] bool effortCompares() const {
        return first.slot->effort.has_value() && second.slot->effort.has_value();
    }
    [[nodiscard]] double moreReps() const { // of the first than of the second
        return first.slot->dose->middle() - second.slot->dose->middle();
    }
    [[nodiscard]] bool repsWrong() const { return repsCompare() && moreReps() >= 0; }
    [[nodiscard]] bool effortWrong() const {
        return effortCompares() && doubledReserve(first) >= doubledReserve(second);
    }
    // Would the two be right the other way round?
    [[nodiscard]] bool swapHelps() const {
        const bool reps = !repsCompare() || moreReps() > 0;
        const bool effort = !effortCompares() || doubledReserve(first) > doubledReserve(second);
        return reps && effort;
    }
};

Remedy swapSlots(const Facts& facts, Place group) {
    return {{"Swap the two exercises of group %1", {groupLetter(facts.block, group)}},
            [group](Block& b) {
                Group* g = groupAt(b, group);
                if (g && g->slots.size() == 2) std::swap(g->slots[0], g->slots[1]);
            }};
}

// The second set as easy as a good long set, one repetition further from the end than the first.
std::optional<Remedy> easeSecond(const Facts& facts, const Order& order) {
    const auto first = *order.first.slot->effort;
    const auto lo = Rir::fromTenths(first.lo().tenths() + 10);
    const auto hi = Rir::fromTenths(first.hi().tenths() + 10);
    if (!lo || !hi) return std::nullopt;
    const auto effort = Range<Rir>::between(*lo, *hi);
    return Remedy{{"Leave one more repetition in reserve in %1 than in %2",
                   {slotLabel(facts.block, order.second), slotLabel(facts.block, order.first)}},
                  [place = order.second.place, effort](Block& b) {
                      if (Slot* s = slotAt(b, place)) s->effort = effort;
                  }};
}

Message wrongOrder(const Facts& facts, const Order& order) {
    const std::vector<std::string> args{slotLabel(facts.block, order.first),
                                        slotLabel(facts.block, order.second)};
    if (order.repsWrong())
        return {"%1 comes first but has no fewer reps than %2; in heavy-then-long the heavy set "
                "leads.",
                args};
    return {"%1 comes first but is no harder an effort than %2; in heavy-then-long the heavy set "
            "leads.",
            args};
}

std::optional<Remedy> heavyDose(const Facts& facts, const Order& order) {
    constexpr int kHeavyReps = 5; // what heavy means in heavy-then-long
    if (order.second.slot->dose->middle() <= kHeavyReps) return std::nullopt;
    return setDoseTo(facts, order.first, Dose::reps(kHeavyReps, kHeavyReps).value());
}

std::vector<Remedy> remediesFor(const Facts& facts, const Order& order, Place group) {
    if (order.swapHelps()) return {swapSlots(facts, group)};
    auto remedy = order.repsWrong() ? heavyDose(facts, order) : easeSecond(facts, order);
    if (remedy) return {std::move(*remedy)};
    return {advice({"Make the first set the heavy one: fewer reps, fewer left in reserve", {}})};
}

void judgeOrder(const Facts& facts, Verdict& verdict, const Order& order) {
    const bool reps = order.repsWrong();
    const auto measure = [&](const SlotFact& s) {
        return reps ? s.slot->dose->middle() : doubledReserve(s) / 20.0;
    };
    const Place group{order.first.place.section, order.first.place.group};
    Finding& f = verdict.add(Level::Look, group, measure(order.first), "second_reps",
                             wrongOrder(facts, order));
    f.limit = atMost(measure(order.second)); // to stay below
    f.basis = commonPractice();
    f.also = {order.first.place, order.second.place};
    f.remedies = remediesFor(facts, order, group);
}

void judgeLong(const Facts& facts, Verdict& verdict, const SlotFact& second) {
    const double least = verdict.limit("second_reps").lo;
    const auto now = second.slot->dose->amount();
    Finding& f = verdict.add(
        Level::Look, second.place, second.slot->dose->lo(), "second_reps",
        {"%1 is the long set of its pair and starts at %2 reps; %3 or more "
         "make it long.",
         {slotLabel(facts.block, second), std::to_string(now.lo()), numberText(least)}});
    const auto lo = static_cast<std::int64_t>(std::ceil(least));
    if (const auto dose = Dose::reps(lo, std::max(lo, now.hi())))
        f.remedies = {setDoseTo(facts, second, *dose)};
}
} // namespace

HeavyFaults heavyFaults(const SlotFact& first, const SlotFact& second, double least) {
    const Order order{first, second};
    const bool shortSecond = inReps(second) && second.slot->dose->lo() < least;
    // The wrong way round already says it of a short second set that should have been the first.
    return {order.repsWrong() || order.effortWrong(),
            shortSecond && !(order.repsWrong() && order.swapHelps())};
}

namespace {
void judge(const Facts& facts, Verdict& verdict) {
    if (facts.block.format != Format::HeavyThenLong) return;
    const double least = verdict.limit("second_reps").lo;
    eachStrengthPair(facts, [&](const SlotFact& first, const SlotFact& second) {
        const HeavyFaults faults = heavyFaults(first, second, least);
        if (faults.order) judgeOrder(facts, verdict, {first, second});
        if (faults.shortSecond) judgeLong(facts, verdict, second);
    });
}
} // namespace

Rule heavyFirst() {
    return {"heavy-first",
            {"In heavy-then-long the heavy set leads and the second set is long.", {}},
            {{"second_reps",
              atMost(8),
              "reps",
              commonPractice(),
              {"Fewest reps of the second set.", {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
