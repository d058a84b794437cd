// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/floor/study.hpp"

#include "core/floor/change_trial.hpp"
#include "core/floor/floor_plan.hpp"
#include "core/model/weeks.hpp"

#include <algorithm>

namespace bw {

namespace {
std::vector<Range<int>> roundsOf(const Block& block, Week week) {
    std::vector<Range<int>> out;
    for (const Section& s : block.sections)
        for (const Group& g : s.groups) out.push_back(roundsIn(block.step(week).rounds, g.rounds));
    return out;
}

bool troubled(const FloorAnswer& answer, const FloorSearch& search) {
    return answer.overrunChance > search.overrunChance ||
           std::ranges::any_of(answer.kit,
                               [&](const FloorKitUse& use) { return use.wait.mean > search.wait; });
}

// The week of the study that this one can share with; null: none.
template <class Same> const FloorWeek* like(const FloorStudy& study, Same same) {
    const auto it = std::ranges::find_if(study.weeks, same);
    return it == study.weeks.end() ? nullptr : &*it;
}

using SharedAnswer = std::shared_ptr<const FloorAnswer>;

class StudyJob {
public:
    StudyJob(const Gym& gym, const Block& block, const FloorOptions& options, std::stop_token stop,
             const FloorProgress& progress, const FloorSearch* search)
        : gym_(gym), block_(block), options_(options), stop_(std::move(stop)), progress_(progress),
          search_(search) {}

    Result<FloorStudy> study(const std::vector<Week>& weeks) {
        for (const Week w : weeks) {
            options_.week = w;
            auto answer = answerOf(w);
            if (!answer) return answer.why();
            FloorWeek now{.week = w, .answer = std::move(answer).value(), .changes = {}};
            now.changes = changesOf(now);
            if (stop_.stop_requested()) return Message{"Stopped as asked; there is no answer.", {}};
            study_.weeks.push_back(std::move(now));
        }
        return std::move(study_);
    }

private:
    Result<SharedAnswer> answerOf(Week week) const {
        const auto rounds = roundsOf(block_, week);
        const FloorWeek* same = like(
            study_, [&](const FloorWeek& known) { return roundsOf(block_, known.week) == rounds; });
        if (same) return same->answer;
        auto answer = simulateFloor(gym_, block_, options_, stop_, progress_);
        if (!answer) return answer.why();
        return SharedAnswer(std::make_shared<FloorAnswer>(std::move(answer).value()));
    }

    // Changes look at the mode, too: a round less is another one in a low week.
    std::vector<ProvenChange> changesOf(const FloorWeek& week) const {
        if (!search_ || !troubled(*week.answer, *search_)) return {};
        const FloorWeek* twin = like(study_, [&](const FloorWeek& known) {
            return block_.step(known.week).rounds == block_.step(week.week).rounds;
        });
        if (twin) return twin->changes;
        const auto ideas = search_->ideas ? search_->ideas(week) : std::vector<FloorIdea>{};
        return ChangeTrial(gym_, block_, options_, stop_, progress_).proven(*week.answer, ideas);
    }

    const Gym& gym_;
    const Block& block_;
    FloorOptions options_;
    std::stop_token stop_;
    const FloorProgress& progress_;
    const FloorSearch* search_;
    FloorStudy study_;
};
} // namespace

const FloorWeek* FloorStudy::of(Week week) const {
    return like(*this, [&](const FloorWeek& w) { return w.week == week; });
}

Result<FloorStudy> studyFloor(const Gym& gym, const Block& block, const FloorOptions& options,
                              std::optional<Week> week, std::stop_token stop,
                              const FloorProgress& progress, const FloorSearch* search) {
    StudyJob job(gym, block, options, std::move(stop), progress, search);
    return job.study(week ? std::vector{*week} : weeksOf(block));
}

} // namespace bw
