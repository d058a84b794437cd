// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/step_sample.hpp"

#include <algorithm>

namespace bw {

namespace {

FloorPlan planOf(Place group, IndexSpan slots, int rounds, Range<Millis> rest) {
    FloorPlan plan;
    plan.sections.push_back({.kind = {}, .groups = {0, 1}, .talk = 0, .budget = {}, .start = {}});
    plan.groups.push_back({.place = group,
                           .slots = slots,
                           .lo = rounds,
                           .hi = rounds,
                           .restLo = rest.lo().count(),
                           .restHi = rest.hi().count(),
                           .firstStep = 0});
    plan.steps = rounds * plan.groups.front().stepsPerRound();
    return plan;
}
} // namespace

double StepSample::parts(bool whole) { return whole ? 1000 : 1; }

StepSample::StepSample(const FloorOptions& options, int members)
    : options_(options), members_(members) {
    if (options_.steady) options_.runs = 1;
}

template <class F> void StepSample::play(const FloorPlan& plan, F take) {
    Draws draws(plan, options_);
    FloorSteps steps(plan, members_);
    for (int run = 0; run < options_.runs; ++run) {
        draws.fill(run, members_, steps);
        take(steps);
    }
}

const std::vector<double>& StepSample::ranks(const SampledSets& sets, int rounds,
                                             const std::vector<int>& members) {
    const auto [it, fresh] = known_.try_emplace(sets);
    if (fresh) sample(sets, members, it->second);
    return it->second[static_cast<std::size_t>(rounds - 1)];
}

void StepSample::sample(const SampledSets& sets, const std::vector<int>& members,
                        std::vector<std::vector<double>>& byRounds) {
    const Place group{sets.slot.section, sets.slot.group};
    FloorPlan plan = planOf(group, {0, 1}, sets.most, Range<Millis>(Millis{0}));
    const double fine = parts(sets.whole), middle = (sets.lo + sets.hi) / 2 * fine;
    plan.slots.push_back({.place = sets.slot,
                          .setup = 0,
                          .work = {.lo = sets.lo,
                                   .hi = sets.hi,
                                   .whole = sets.whole,
                                   .perAmount = fine,
                                   .middle = static_cast<Ticks>(middle)},
                          .alternatives = {},
                          .chosenOnEntry = false});
    byRounds.assign(static_cast<std::size_t>(sets.most), std::vector<double>(members.size()));
    std::vector<Ticks> soFar(members.size()), ranked;
    play(plan, [&](const FloorSteps& steps) {
        std::ranges::fill(soFar, 0);
        for (std::size_t round = 0; round < byRounds.size(); ++round) {
            for (std::size_t i = 0; i < members.size(); ++i)
                soFar[i] += steps.row(members[i])[2 * round];
            ranked = soFar;
            std::ranges::sort(ranked);
            for (std::size_t i = 0; i < ranked.size(); ++i)
                byRounds[round][i] += static_cast<double>(ranked[i]);
        }
    });
    for (auto& ranks : byRounds)
        for (double& amount : ranks) amount /= fine * options_.runs;
}

double StepSample::rests(Place group, Range<Millis> rest, int count,
                         const std::vector<int>& members) {
    if (count <= 0) return 0;
    const FloorPlan plan = planOf(group, {0, 0}, count, rest);
    Ticks all = 0;
    play(plan, [&](const FloorSteps& steps) {
        for (const int m : members)
            for (int round = 0; round < count; ++round) all += steps.row(m)[round];
    });
    return static_cast<double>(all) / options_.runs;
}

double leastTotal(const std::vector<double>& ascending, int servers) {
    double sum = 0;
    const auto jobs = static_cast<int>(ascending.size());
    for (int i = 0; i < jobs; ++i) {
        const int waiting = (jobs - 1 - i) / servers; // behind this one
        sum += ascending[static_cast<std::size_t>(i)] * (waiting + 1);
    }
    return sum;
}

double leastTotal(std::size_t jobs, int servers) {
    return leastTotal(std::vector<double>(jobs, 1), servers);
}

} // namespace bw
