// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/floor/study.hpp"
#include "blockwright/propose/propose.hpp"
#include "core/floor/served.hpp"

#include <algorithm>

namespace bw {

namespace {
constexpr double kSlip = 1e-6;
constexpr int kTryRuns = 100;         // classes, to find out what is worth more
constexpr int kRounds = 8, kEach = 2; // looks for others, and how many of each are played
constexpr MeanTime kQueue{10'000};    // a mean wait that is worth looking for others

struct Played {
    ProposedMonth answer;
    std::vector<SpareKit> queued; // its slots at the kit that is waited for longest
};

bool cheaper(const Played& a, const Played& b) {
    return a.answer.penalty < b.answer.penalty - kSlip;
}

class Trial {
public:
    Trial(const Gym& gym, const Block& draft, const FloorPlay& play, const FloorProgress& progress)
        : gym_(gym), draft_(draft), play_(play), progress_(progress) {}

    // None: it can't be simulated, or is dropped.
    std::optional<CheckResult> before(int runs) const {
        const auto study = played(draft_, runs);
        if (!study) return std::nullopt;
        return check(gym_, draft_, {}, &*study);
    }
    std::optional<Played> tried(ProposedMonth answer, int runs, const CheckResult& before) const {
        const auto study = played(answer.block, runs);
        if (!study) return std::nullopt;
        const CheckResult after = check(gym_, answer.block, {}, &*study);
        answer.penalty = after.penalty;
        answer.queueing = 0;
        answer.shift = shiftBetween(before, after);
        return Played{answer, queuedIn(answer, *study)};
    }

private:
    Result<FloorStudy> played(const Block& block, int runs) const {
        FloorOptions options = play_.options;
        options.runs = runs;
        return studyFloor(gym_, block, options, {}, play_.drop, progress_);
    }
    std::vector<SpareKit> queuedIn(const ProposedMonth& answer, const FloorStudy& study) const {
        std::vector<SpareKit> out;
        MeanTime longest = kQueue;
        for (const FloorWeek& week : study.weeks)
            for (const FloorKitUse& use : week.answer->kit) {
                if (use.wait.mean <= longest) continue;
                std::vector<SpareKit> takers;
                for (const ProposedSlot& slot : answer.slots)
                    if (mayTake(gym_, *gym_.shelf.find(slot.exercise), use.kit))
                        takers.push_back({slot.place, use.kit});
                if (takers.empty()) continue;
                longest = use.wait.mean;
                out = std::move(takers);
            }
        return out;
    }

    const Gym& gym_;
    const Block& draft_;
    const FloorPlay& play_;
    const FloorProgress& progress_;
};

// False: all of them are left alone already.
bool spareMore(ProposeOptions& options, const std::vector<SpareKit>& queued) {
    const std::size_t before = options.spare.size();
    for (const SpareKit& one : queued)
        if (std::ranges::find(options.spare, one) == options.spare.end())
            options.spare.push_back(one);
    return options.spare.size() > before;
}

// Whoever is found goes on from there, until nobody queues at what the answers have brought.
void lookFurther(const Gym& gym, const Block& draft, ProposeOptions options, const Trial& trial,
                 const CheckResult& before, const FloorPlay& play, std::vector<Played>& all) {
    options.answers = kEach;
    options.prove = false;
    Played best = *std::ranges::min_element(all, cheaper);
    for (int round = 0; round < kRounds && !play.enough.stop_requested(); ++round) {
        if (!spareMore(options, best.queued)) return;
        const auto found = propose(gym, draft, options, play.drop);
        if (!found) return; // nothing is left for a slot
        std::vector<Played> here;
        for (const ProposedMonth& answer : found.value().answers) {
            auto one = trial.tried(answer, kTryRuns, before);
            if (!one) return;
            here.push_back(std::move(*one));
        }
        best = *std::ranges::min_element(here, cheaper);
        all.insert(all.end(), here.begin(), here.end());
    }
}

bool apart(const ProposedMonth& a, const ProposedMonth& b) {
    std::size_t differ = 0;
    for (std::size_t i = 0; i < a.slots.size(); ++i)
        differ += a.slots[i].exercise == b.slots[i].exercise ? 0 : 1;
    return differ >= std::min<std::size_t>(2, a.slots.size());
}

// The best, the best of those apart from it, and so on.
std::vector<Played> bestApart(std::vector<Played> all, std::size_t most) {
    std::ranges::stable_sort(all, cheaper);
    std::vector<Played> out;
    for (Played& one : all) {
        const bool far = std::ranges::all_of(
            out, [&](const Played& other) { return apart(one.answer, other.answer); });
        if (far && out.size() < most) out.push_back(std::move(one));
    }
    return out;
}
} // namespace

Proposal onFloor(const Gym& gym, const Block& draft, const ProposeOptions& asked, Proposal proposal,
                 const FloorPlay& play, const FloorProgress& progress) {
    const auto most = static_cast<std::size_t>(std::max(1, play.keep));
    const Proposal paper = proposal;
    if (proposal.answers.size() > most)
        proposal.answers.erase(proposal.answers.begin() + static_cast<std::ptrdiff_t>(most),
                               proposal.answers.end());
    const Trial trial(gym, draft, play, progress);
    const int full = play.options.runs, few = std::min(full, kTryRuns);
    const auto before = trial.before(full);
    if (!before) return proposal;
    std::vector<Played> all;
    for (const ProposedMonth& answer : paper.answers) {
        if (all.size() >= most && play.enough.stop_requested()) break;
        auto one = trial.tried(answer, few, *before);
        if (!one) return proposal;
        all.push_back(std::move(*one));
    }
    if (all.empty()) return proposal;
    lookFurther(gym, draft, asked, trial, *before, play, all);
    std::vector<Played> best = bestApart(std::move(all), most);
    for (Played& one : best) {
        if (full == few) break;
        auto whole = trial.tried(one.answer, full, *before);
        if (!whole) return proposal;
        one = std::move(*whole);
    }
    std::ranges::stable_sort(best, cheaper);
    Proposal out{before->penalty, paper.bound, {}, true, false};
    for (std::size_t i = 0; i < best.size(); ++i) {
        out.reordered = out.reordered || i >= paper.answers.size() ||
                        !(best[i].answer.block == paper.answers[i].block);
        out.answers.push_back(std::move(best[i].answer));
    }
    return out;
}

} // namespace bw
