// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/draws.hpp"

#include "core/floor/philox.hpp"
#include "core/floor/portable_math.hpp"

#include <algorithm>

namespace bw {

namespace {
// The block of bits that a step shares with its neighbour.
PhiloxCounter bitsOf(std::uint64_t seed, int run, int member, Place group, int step, int round) {
    const auto u = [](int i) { return static_cast<std::uint32_t>(i); };
    const std::uint32_t where = u(group.section) << 16 | u(group.group) << 8 | u(step) / 2;
    return philox({u(run), u(member), where, u(round) << 1},
                  {static_cast<std::uint32_t>(seed), static_cast<std::uint32_t>(seed >> 32)});
}
std::uint32_t paceBits(std::uint64_t seed, int run, int member) {
    return philox({static_cast<std::uint32_t>(run), static_cast<std::uint32_t>(member), 0, 1},
                  {static_cast<std::uint32_t>(seed), static_cast<std::uint32_t>(seed >> 32)})[0];
}

// To the nearest whole millisecond, halves up; x not below 0.
Ticks nearestTick(double x) {
    const double doubled = 2 * std::min(x, static_cast<double>(FloorSteps::kMost));
    return (static_cast<Ticks>(doubled) + 1) / 2;
}

// `part` of the way from lo to hi; whole amounts are all as likely.
double drawnAmount(const PlanWork& w, double part) {
    if (!w.whole) return w.lo + (w.hi - w.lo) * part;
    return w.lo + static_cast<double>(static_cast<std::int64_t>((w.hi - w.lo + 1) * part));
}
} // namespace

Draws::Draws(const FloorPlan& plan, const FloorOptions& options) : plan_(plan), options_(options) {
    int most = 0;
    for (const PlanGroup& g : plan.groups) most = std::max(most, g.hi * g.stepsPerRound());
    noise_.resize(static_cast<std::size_t>(most));
    part_.resize(static_cast<std::size_t>(most));
}

double Draws::pace(int run, int member) const {
    if (options_.steady || options_.paceSigma == 0) return 1;
    const double u = openUnitFrom(paceBits(options_.seed, run, member));
    return portableExp(options_.paceSigma * normalQuantile(u));
}

// Noise of the sets, one after the other; parts of the steps, each round's rest first.
void Draws::drawBits(int run, int member, const PlanGroup& g) {
    double *noise = noise_.data(), *part = part_.data();
    for (int round = 0; round < g.hi; ++round) {
        PhiloxCounter bits = bitsOf(options_.seed, run, member, g.place, 0, round);
        int block = 0;
        *part++ = unitFrom(bits[1]);
        for (int s = g.slots.begin; s < g.slots.end; ++s) {
            const int step = plan_.slots[s].place.slot + 1;
            if (step / 2 != block) bits = bitsOf(options_.seed, run, member, g.place, step, round);
            block = step / 2;
            const std::size_t word = step % 2 == 0 ? 0 : 2;
            *noise++ = openUnitFrom(bits[word]);
            *part++ = unitFrom(bits[word + 1]);
        }
    }
}

void Draws::fillGroup(int run, int member, double pace, const PlanGroup& g, Ticks* row) {
    drawBits(run, member, g);
    const std::span<double> sets(noise_.data(), static_cast<std::size_t>(g.hi * g.slots.size()));
    normalQuantiles(sets);
    for (double& z : sets) z *= options_.setSigma;
    portableExps(sets);
    const double *noise = noise_.data(), *part = part_.data();
    Ticks* step = row + g.firstStep;
    for (int round = 0; round < g.hi; ++round) {
        const double rest = static_cast<double>(g.restHi - g.restLo) * *part++;
        for (int s = g.slots.begin; s < g.slots.end; ++s) {
            const PlanSlot& slot = plan_.slots[s];
            const double work = drawnAmount(slot.work, *part++) * slot.work.perAmount;
            *step++ = slot.setup + nearestTick(work * (pace * *noise++));
        }
        *step++ = g.restLo + nearestTick(rest);
    }
}

void Draws::fillSteadily(const PlanGroup& g, Ticks* row) const {
    Ticks* step = row + g.firstStep;
    for (int round = 0; round < g.hi; ++round) {
        for (int s = g.slots.begin; s < g.slots.end; ++s)
            *step++ =
                plan_.slots[s].setup + std::min(plan_.slots[s].work.middle, FloorSteps::kMost);
        *step++ = (g.restLo + g.restHi + 1) / 2;
    }
}

void Draws::fillSection(int run, int member, double pace, const PlanSection& s, Ticks* row) {
    for (int g = s.groups.begin; g < s.groups.end; ++g) {
        if (options_.steady)
            fillSteadily(plan_.groups[g], row);
        else
            fillGroup(run, member, pace, plan_.groups[g], row);
    }
}

void Draws::fill(int run, int members, int section, FloorSteps& steps) {
    for (int m = 0; m < members; ++m)
        fillSection(run, m, pace(run, m), plan_.sections[section], steps.row(m));
}

void Draws::fill(int run, int members, FloorSteps& steps) {
    for (int m = 0; m < members; ++m) {
        const double own = pace(run, m);
        for (const PlanSection& s : plan_.sections) fillSection(run, m, own, s, steps.row(m));
    }
}

} // namespace bw
