// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/best_start.hpp"

#include "core/floor/head_counts.hpp"
#include "core/floor/tally.hpp"

#include <limits>

namespace bw {

namespace {
constexpr std::int64_t kMostChoices = 1'000'000; // of several sections at once
constexpr int kBlocks = 20, kLeastBlock = 64;
constexpr int kMostCounts = 5000, kMostHeads = 100'000; // of one section; heads: of all its counts

// So many runs may be later than a p90.
int allowedLate(int runs) { return runs - 1 - static_cast<int>(percentileIndex(90, runs)); }

Ticks p90Of(std::vector<Ticks>& sample) {
    const auto at = sample.begin() + percentileIndex(90, static_cast<std::int64_t>(sample.size()));
    std::nth_element(sample.begin(), at, sample.end());
    return *at;
}
} // namespace

BestStart::BestStart(const FloorPlan& plan, const FloorOptions& options, int members, Crew& crew)
    : plan_(plan), members_(members), runs_(options.runs), crew_(crew),
      fields_(plan.sections.size()), always_(plan.opening + plan.closing),
      limit_(std::numeric_limits<Ticks>::max()) {
    for (int i = 0; i < crew.size(); ++i)
        workers_.push_back({Draws(plan, options), FloorSteps(plan, members),
                            SectionRun(plan, members), ClassRecord(plan, members)});
    for (int s = 0; s < static_cast<int>(plan.sections.size()); ++s) {
        always_ += plan.sections[s].talk;
        listCandidates(s);
    }
}

void BestStart::listCandidates(int section) {
    const int groups = plan_.sections[section].groups.size();
    if (groups < 2) {
        fields_[section].push_back(
            {.heads = {}, .starts = startsOf({}, groups, members_), .runs = {}});
        return;
    }
    HeadCounts counts = headCounts(members_, groups, std::min(kMostCounts, kMostHeads / members_));
    allTried_ = allTried_ && counts.complete;
    for (auto& heads : counts.all) {
        auto starts = startsOf(StartCounts{heads}, groups, members_);
        fields_[section].push_back(
            {.heads = std::move(heads), .starts = std::move(starts), .runs = {}});
    }
}

void BestStart::playRun(Worker& worker, int run,
                        const std::vector<std::vector<Candidate*>>& due) const {
    for (int s = 0; s < static_cast<int>(due.size()); ++s) {
        if (due[s].empty()) continue;
        worker.draws.fill(run, members_, s, worker.steps);
        for (Candidate* c : due[s]) {
            worker.record.clear();
            Played& played = c->runs[static_cast<std::size_t>(run)];
            played.length = worker.run.play(s, c->starts, worker.steps, worker.record);
            for (const Ticks w : worker.record.wait) played.wait += w;
        }
    }
}

template <class Wanted> void BestStart::play(int to, Wanted wanted) {
    int from = to;
    std::vector<std::vector<Candidate*>> due(fields_.size());
    for (std::size_t s = 0; s < fields_.size(); ++s)
        for (std::size_t c = 0; c < fields_[s].size(); ++c)
            if (wanted(s, c)) from = std::min(from, static_cast<int>(fields_[s][c].runs.size()));
    for (std::size_t s = 0; s < fields_.size(); ++s)
        for (std::size_t c = 0; c < fields_[s].size(); ++c) {
            Candidate& one = fields_[s][c];
            // All that are wanted have been played equally far, or to the end already.
            if (!wanted(s, c) || static_cast<int>(one.runs.size()) >= to) continue;
            one.runs.resize(static_cast<std::size_t>(to));
            due[s].push_back(&one);
            played_ += to - from;
        }
    if (std::ranges::all_of(due, [](const auto& list) { return list.empty(); })) return;
    crew_.work(from, to, [&](int worker, int run) {
        playRun(workers_[static_cast<std::size_t>(worker)], run, due);
    });
}

std::size_t BestStart::mostPromising(const Field& field, int seen) const {
    std::optional<Worth> best;
    std::size_t at = 0;
    for (std::size_t c = 0; c < field.size(); ++c) {
        if (field[c].out) continue;
        std::vector<Ticks> lengths;
        Worth worth;
        for (int r = 0; r < seen; ++r) {
            lengths.push_back(field[c].runs[static_cast<std::size_t>(r)].length);
            worth.wait += field[c].runs[static_cast<std::size_t>(r)].wait;
        }
        worth.p90 = p90Of(lengths);
        if (best && !(worth < *best)) continue;
        best = worth;
        at = c;
    }
    return at;
}

// Plays what looks best so far to the end: the best choice can't be later than that.
void BestStart::tightenLimit(int seen) {
    Choice choice;
    for (const Field& field : fields_) choice.push_back(mostPromising(field, seen));
    play(runs_, [&](std::size_t s, std::size_t c) { return choice[s] == c; });
    if (!crew_.stopped()) limit_ = std::min(limit_, worthOf(choice).p90);
}

// Least length of each section in a run, over what is not out.
std::vector<Ticks> BestStart::quickest(int run) const {
    std::vector<Ticks> least;
    for (const Field& field : fields_) {
        Ticks length = std::numeric_limits<Ticks>::max();
        for (const Candidate& c : field)
            if (!c.out) length = std::min(length, c.runs[static_cast<std::size_t>(run)].length);
        least.push_back(length);
    }
    return least;
}

void BestStart::sieve(int from, int to) {
    for (int run = from; run < to; ++run) {
        const std::vector<Ticks> least = quickest(run);
        Ticks all = always_;
        for (const Ticks t : least) all += t;
        for (std::size_t s = 0; s < fields_.size(); ++s)
            for (Candidate& c : fields_[s])
                if (!c.out &&
                    all - least[s] + c.runs[static_cast<std::size_t>(run)].length > limit_)
                    ++c.late;
    }
    for (Field& field : fields_)
        for (Candidate& c : field) {
            if (c.out || c.late <= allowedLate(runs_)) continue;
            c.out = true;
            c.runs = {};
        }
}

Ticks BestStart::finishOf(const Choice& choice, int run) const {
    Ticks t = always_;
    for (std::size_t s = 0; s < fields_.size(); ++s)
        t += fields_[s][choice[s]].runs[static_cast<std::size_t>(run)].length;
    return t;
}

BestStart::Worth BestStart::worthOf(const Choice& choice) const {
    std::vector<Ticks> finishes;
    Worth worth;
    for (int run = 0; run < runs_; ++run) {
        finishes.push_back(finishOf(choice, run));
        for (std::size_t s = 0; s < fields_.size(); ++s)
            worth.wait += fields_[s][choice[s]].runs[static_cast<std::size_t>(run)].wait;
    }
    worth.p90 = p90Of(finishes);
    return worth;
}

bool BestStart::surelyWorse(const Choice& choice, Ticks p90) const {
    int late = 0;
    for (int run = 0; run < runs_; ++run) {
        late += finishOf(choice, run) > p90 ? 1 : 0;
        if (late > allowedLate(runs_)) return true;
    }
    return false;
}

bool BestStart::nextChoice(Choice& choice) const {
    for (std::size_t s = fields_.size(); s-- > 0;) {
        do ++choice[s];
        while (choice[s] < fields_[s].size() && fields_[s][choice[s]].out);
        if (choice[s] < fields_[s].size()) return true;
        choice[s] = 0;
        while (fields_[s][choice[s]].out) ++choice[s];
    }
    return false;
}

BestStart::Choice BestStart::bestOfAll() {
    double choices = 1;
    for (const Field& field : fields_)
        choices *= static_cast<double>(
            std::ranges::count_if(field, [](const Candidate& c) { return !c.out; }));
    if (choices > static_cast<double>(kMostChoices)) {
        allTried_ = false;
        return bestOneByOne();
    }
    Choice choice, best;
    for (const Field& field : fields_) {
        choice.push_back(0);
        while (field[choice.back()].out) ++choice.back();
    }
    Worth worth = worthOf(best = choice);
    while (nextChoice(choice) && !crew_.stopped()) {
        if (surelyWorse(choice, worth.p90)) continue;
        const Worth other = worthOf(choice);
        if (!(other < worth)) continue;
        worth = other;
        best = choice;
    }
    return best;
}

BestStart::Choice BestStart::bestOneByOne() const {
    Choice choice;
    for (const Field& field : fields_) choice.push_back(mostPromising(field, runs_));
    return choice;
}

std::optional<FloorHeads> BestStart::find() {
    crew_.tellAs(FloorStage::BestStart, runs_);
    const auto stillIn = [&](std::size_t s, std::size_t c) { return !fields_[s][c].out; };
    const int block = std::max(kLeastBlock, runs_ / kBlocks);
    for (int from = 0; from < runs_ && !crew_.stopped(); from += block) {
        const int to = std::min(from + block, runs_);
        play(to, stillIn);
        if (!crew_.stopped()) tightenLimit(to);
        if (!crew_.stopped()) sieve(from, to);
    }
    if (crew_.stopped()) return std::nullopt;
    const Choice best = bestOfAll();
    if (crew_.stopped()) return std::nullopt;
    FloorHeads heads{.counts = {}, .allTried = allTried_};
    for (std::size_t s = 0; s < fields_.size(); ++s)
        heads.counts.push_back(fields_[s][best[s]].heads);
    return heads;
}

} // namespace bw
