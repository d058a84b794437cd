// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/time/timing.hpp"

namespace bw {

namespace {
__extension__ using Wide = __int128;

// n / d to the nearest whole number, halves up; d above 0, n not below 0.
std::int64_t nearest(Wide n, Wide d) { return static_cast<std::int64_t>((2 * n + d) / (2 * d)); }

// Milliseconds of `twice / 2` smallest units of the dose.
Millis work(const Dose& dose, std::int64_t twice, const std::optional<Tempo>& tempo,
            const Exercise& e) {
    const Wide n = Wide{twice} * (e.sides == Sides::Each ? 2 : 1);
    const auto& rates = e.pace.rates();
    switch (dose.measure()) {
    case Measure::Reps:
        if (tempo) return Millis{nearest(n * tempo->seconds() * 1000, 2)};
        if (!rates.secondsPerRep) return Millis{0};
        return Millis{nearest(n * rates.secondsPerRep->billionths() * 1000, Wide{2} * Rate::kUnit)};
    case Measure::Seconds: return Millis{nearest(n, 2)};
    case Measure::Metres: // d / speed; the table knows no k here
        if (!rates.metresPerSecond) return Millis{0};
        return Millis{
            nearest(Wide{twice} * Rate::kUnit, Wide{2} * rates.metresPerSecond->billionths())};
    case Measure::Kcal:
        if (!rates.kcalPerMinute) return Millis{0};
        return Millis{
            nearest(Wide{twice} * Rate::kUnit * 60, Wide{2} * rates.kcalPerMinute->billionths())};
    }
    return Millis{0};
}

ExactTime half(Millis sum) { return ExactTime{sum.count() * 2}; } // half of a sum of two times

Figures rest(const Group& g) { return {g.rest.lo(), g.rest.hi(), half(g.rest.lo() + g.rest.hi())}; }

GroupTime timeGroup(const Shelf& shelf, const Group& g, RoundsMode mode) {
    Figures round;
    GroupTime out;
    for (const Slot& slot : g.slots) {
        const Exercise* e = slot.exercise ? shelf.find(*slot.exercise) : nullptr;
        if (!e || !slot.dose) continue;
        const SetTime set = setWork(*slot.dose, slot.tempo, *e);
        round += {e->setup + set.low, e->setup + set.high, e->setup + set.middle};
        out.workPlanned += set.middle;
    }
    const Figures pause = rest(g);
    const int twice = plannedRoundsDoubled(g.rounds, mode);
    out.total.low = round.low * g.rounds.lo() + pause.low * (g.rounds.lo() - 1);
    out.total.high = round.high * g.rounds.hi() + pause.high * (g.rounds.hi() - 1);
    out.total.planned = (round.planned * twice + pause.planned * (twice - 2)) / 2;
    out.roundPlanned = round.planned;
    return out;
}

SectionTime timeSection(const Shelf& shelf, const Section& s, RoundsMode mode) {
    SectionTime out;
    out.total = {s.talk, s.talk, s.talk};
    out.groups.reserve(s.groups.size());
    for (const Group& g : s.groups) {
        if (!out.groups.empty()) out.total += rest(s.groups[out.groups.size() - 1]);
        out.groups.push_back(timeGroup(shelf, g, mode));
        out.total += out.groups.back().total;
    }
    return out;
}

int countOpen(const Section& s) {
    int n = 0;
    for (const Group& g : s.groups)
        for (const Slot& slot : g.slots) n += slot.open() ? 1 : 0;
    return n;
}
} // namespace

Millis roundHalvesUp(ExactTime t) {
    const auto q = t.count();
    return Millis{q >= 0 ? (q + 2) / 4 : -((-q + 1) / 4)};
}

double seconds(ExactTime t) { return static_cast<double>(roundHalvesUp(t).count()) / 1000.0; }

Figures& Figures::operator+=(const Figures& o) {
    low += o.low;
    high += o.high;
    planned += o.planned;
    return *this;
}

SetTime setWork(const Dose& dose, const std::optional<Tempo>& tempo, const Exercise& e) {
    const auto [lo, hi] = std::pair{dose.amount().lo(), dose.amount().hi()};
    return {work(dose, 2 * lo, tempo, e), work(dose, lo + hi, tempo, e),
            work(dose, 2 * hi, tempo, e)};
}

int plannedRoundsDoubled(Range<int> rounds, RoundsMode mode) {
    switch (mode) {
    case RoundsMode::Low: return 2 * rounds.lo();
    case RoundsMode::High: return 2 * rounds.hi();
    case RoundsMode::Open: break;
    }
    return rounds.lo() + rounds.hi();
}

SessionTime timeSession(const GymSettings& gym, const Shelf& shelf, const Block& block, Week week) {
    const RoundsMode mode = block.step(week).rounds;
    SessionTime out;
    const ExactTime ends = gym.opening + gym.closing;
    out.total = {ends, ends, ends};
    out.sections.reserve(block.sections.size());
    for (const Section& s : block.sections) {
        out.sections.push_back(timeSection(shelf, s, mode));
        out.total += out.sections.back().total;
        out.openSlots += countOpen(s);
    }
    return out;
}

} // namespace bw
