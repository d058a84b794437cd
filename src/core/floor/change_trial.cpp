// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/change_trial.hpp"

#include "blockwright/model/shorthand.hpp"
#include "core/floor/start_ideas.hpp"

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
constexpr MeanTime kWorth{15'000}; // less than this is not worth changing a draft for
constexpr MeanTime kHint{5'000};   // over a few runs, so much may become as much as that
constexpr int kFewRuns = 64;       // enough to see what does not help at all
constexpr std::size_t kMostProven = 12;
constexpr double kStandardErrors = 3;

MeanTime saved(const FloorAnswer& now, const FloorAnswer& then) {
    return now.finish.mean - then.finish.mean;
}
MeanTime spared(const FloorAnswer& now, const FloorAnswer& then) {
    return now.wait.mean - then.wait.mean;
}
bool helps(const FloorAnswer& now, const FloorAnswer& then, MeanTime by) {
    const MeanTime finish = saved(now, then), wait = spared(now, then);
    return (finish >= by && wait > -by) || (wait >= by && finish > -by);
}

// Is the mean of what each run gains surely above 0?
bool beyondLuck(const std::vector<Millis>& now, const std::vector<Millis>& then) {
    const auto runs = static_cast<double>(now.size());
    double sum = 0, squares = 0;
    for (std::size_t r = 0; r < now.size(); ++r) {
        const auto gain = static_cast<double>((now[r] - then[r]).count());
        sum += gain;
        squares += gain * gain;
    }
    if (now.size() < 2) return sum > 0;
    const double variance = (squares - sum * sum / runs) / (runs - 1);
    return sum / runs > kStandardErrors * std::sqrt(std::max(variance, 0.0) / runs);
}

Message filled(Message label, MeanTime time) {
    label.args.push_back(clockText(Millis{std::llround(time.count() / 1000) * 1000}));
    return label;
}
} // namespace

ChangeTrial::ChangeTrial(const Gym& gym, const Block& block, const FloorOptions& options,
                         std::stop_token stop, const FloorProgress& progress)
    : gym_(gym), block_(block), options_(options), stop_(std::move(stop)), progress_(progress) {
    options_.buys = options_.timeline = false;
}

Result<FloorAnswer> ChangeTrial::play(const Block& block, const FloorOptions& options) const {
    return simulateFloor(gym_, block, options, stop_, [&](FloorStage, int, int) {
        if (progress_) progress_(FloorStage::Changes, done_, total_);
    });
}

std::vector<FloorIdea> ChangeTrial::starts(FloorOptions few) const {
    few.start = StartBest{};
    const bool choice =
        std::ranges::any_of(block_.sections, [](const Section& s) { return s.groups.size() > 1; });
    if (!choice || !std::holds_alternative<StartAsDrafted>(options_.start)) return {};
    const auto best = play(block_, few);
    return best ? startIdeas(block_, *best->best) : std::vector<FloorIdea>{};
}

std::vector<ChangeTrial::Candidate>
ChangeTrial::candidates(const std::vector<FloorIdea>& ideas) const {
    std::vector<Candidate> out;
    for (const FloorIdea& idea : ideas) {
        Candidate c{.idea = &idea, .trial = block_, .promise = {}};
        idea.change(c.trial);
        const bool known = c.trial == block_ || std::ranges::any_of(out, [&](const Candidate& o) {
                               return o.trial == c.trial;
                           });
        if (!known) out.push_back(std::move(c));
    }
    return out;
}

void ChangeTrial::glanceAt(std::vector<Candidate>& candidates, const FloorOptions& few) {
    const auto now = play(block_, few);
    for (Candidate& c : candidates) {
        const auto then = now ? play(c.trial, few) : now;
        if (then && helps(*now, *then, kHint))
            c.promise = std::max(saved(*now, *then), spared(*now, *then));
        ++done_;
    }
    std::erase_if(candidates, [](const Candidate& c) { return c.promise <= MeanTime{0}; });
    std::ranges::stable_sort(candidates, std::greater{}, &Candidate::promise);
    if (candidates.size() > kMostProven)
        candidates.erase(candidates.begin() + kMostProven, candidates.end());
}

std::optional<ProvenChange> ChangeTrial::prove(const FloorAnswer& now,
                                               const Candidate& candidate) const {
    const auto then = play(candidate.trial, options_);
    if (!then || !helps(now, *then, kWorth)) return std::nullopt;
    const MeanTime finish = saved(now, *then), wait = spared(now, *then);
    const bool sooner = finish >= kWorth && beyondLuck(now.finishes, then->finishes);
    const bool calmer = wait >= kWorth && beyondLuck(now.waits, then->waits);
    if (!sooner && !calmer) return std::nullopt;
    const FloorIdea& idea = *candidate.idea;
    return ProvenChange{.label = sooner ? filled(idea.saves, finish) : filled(idea.spares, wait),
                        .change = idea.change,
                        .place = idea.place,
                        .saves = finish,
                        .waitsLess = wait,
                        .overrunChance = then->overrunChance,
                        .kit = then->kit};
}

std::vector<ProvenChange> ChangeTrial::proven(const FloorAnswer& now,
                                              const std::vector<FloorIdea>& ideas) {
    FloorOptions few = options_;
    few.runs = std::min(options_.runs, kFewRuns);
    std::vector<FloorIdea> all = starts(few);
    all.insert(all.end(), ideas.begin(), ideas.end());
    std::vector<Candidate> left = candidates(all);
    const bool many = now.runs > 2 * kFewRuns;
    total_ =
        static_cast<int>(many ? left.size() + std::min(left.size(), kMostProven) : left.size());
    if (many) glanceAt(left, few);
    std::vector<ProvenChange> out;
    for (const Candidate& c : left) {
        if (stop_.stop_requested()) return {};
        if (auto change = prove(now, c)) out.push_back(std::move(*change));
        ++done_;
    }
    std::ranges::stable_sort(out, std::greater{}, &ProvenChange::saves);
    return out;
}

} // namespace bw
