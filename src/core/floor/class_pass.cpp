// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/class_pass.hpp"

#include "core/floor/draws.hpp"

#include <deque>
#include <numeric>

namespace bw {

namespace {
struct ClassWorker {
    ClassWorker(const FloorPlan& plan, const FloorOptions& options, const FloorStarts& starts,
                int members)
        : draws(plan, options), steps(plan, members), run(plan, starts, members),
          record(plan, members), tally(plan, members) {}
    Draws draws;
    FloorSteps steps;
    ClassRun run;
    ClassRecord record;
    FloorTally tally;
};

struct VariantWorker {
    VariantWorker(const FloorPlan& plan, const FloorOptions& options,
                  const std::vector<FloorVariant>& variants, int members)
        : draws(plan, options), steps(plan, members), sums(variants.size()) {
        for (const FloorVariant& v : variants) {
            runs.emplace_back(v.plan, v.starts, v.members);
            records.emplace_back(v.plan, v.members);
        }
    }
    void play(int run, int members) {
        draws.fill(run, members, steps);
        for (std::size_t v = 0; v < runs.size(); ++v) {
            runs[v].play(steps, records[v]);
            sums[v] += records[v].finish;
        }
    }
    Draws draws;
    FloorSteps steps;
    std::deque<ClassRun> runs;
    std::deque<ClassRecord> records;
    std::vector<Ticks> sums;
};

// A list of counts is for the sections with as many groups.
Start startIn(const PlanSection& section, const FloorStart& wish) {
    if (std::holds_alternative<StartTogether>(wish)) return StartTogether{};
    if (std::holds_alternative<StartSpread>(wish)) return StartSpread{};
    if (const auto* counts = std::get_if<StartCounts>(&wish))
        if (static_cast<int>(counts->heads.size()) == section.groups.size()) return *counts;
    return section.start;
}
} // namespace

PlayedClasses playClasses(const FloorPlan& plan, const FloorOptions& options,
                          const FloorStarts& starts, int members, const Crew& crew) {
    const auto runs = static_cast<std::size_t>(options.runs);
    PlayedClasses out{FloorTally(plan, members), std::vector<Ticks>(runs), std::vector<Ticks>(runs),
                      std::vector(plan.sections.size(), std::vector<Ticks>(runs))};
    std::deque<ClassWorker> workers;
    for (int i = 0; i < crew.size(); ++i) workers.emplace_back(plan, options, starts, members);
    crew.work(0, options.runs, [&](int worker, int run) {
        ClassWorker& w = workers[static_cast<std::size_t>(worker)];
        w.draws.fill(run, members, w.steps);
        w.run.play(w.steps, w.record);
        w.tally.add(w.record);
        const auto r = static_cast<std::size_t>(run);
        out.finishes[r] = w.record.finish;
        out.waits[r] = std::accumulate(w.record.wait.begin(), w.record.wait.end(), Ticks{0});
        for (std::size_t s = 0; s < plan.sections.size(); ++s)
            out.sectionEnds[s][r] = w.record.sectionEnd[s];
    });
    for (const ClassWorker& w : workers) out.tally.take(w.tally);
    return out;
}

std::vector<Ticks> playVariants(const FloorPlan& plan, const FloorOptions& options,
                                const std::vector<FloorVariant>& variants, int members,
                                const Crew& crew) {
    std::deque<VariantWorker> workers;
    for (int i = 0; i < crew.size(); ++i) workers.emplace_back(plan, options, variants, members);
    crew.work(0, options.runs, [&](int worker, int run) {
        workers[static_cast<std::size_t>(worker)].play(run, members);
    });
    std::vector<Ticks> sums(variants.size());
    for (const VariantWorker& w : workers)
        for (std::size_t v = 0; v < sums.size(); ++v) sums[v] += w.sums[v];
    return sums;
}

FloorStarts startsOf(const FloorPlan& plan, const FloorStart& start, int members) {
    FloorStarts starts;
    for (const PlanSection& s : plan.sections)
        starts.push_back(startsOf(startIn(s, start), s.groups.size(), members));
    return starts;
}

FloorStarts startsOf(const FloorPlan& plan, const FloorHeads& heads, int members) {
    FloorStarts starts;
    for (std::size_t s = 0; s < plan.sections.size(); ++s)
        starts.push_back(
            startsOf(StartCounts{heads.counts[s]}, plan.sections[s].groups.size(), members));
    return starts;
}

} // namespace bw
