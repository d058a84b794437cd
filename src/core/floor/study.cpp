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
    const auto it = std::ranges::find_if(study.weeks, [&](const FloorWeek& w) { return same(w); });
    return it == study.weeks.end() ? nullptr : &*it;
}
} // namespace

const FloorWeek* FloorStudy::of(Week week) const {
    return like(*this, [&](const FloorWeek& w) { return w.week == week; });
}

Result<FloorStudy> studyFloor(const Gym& gym, const Block& block, const FloorOptions& options,
                              std::optional<Week> week, std::stop_token stop,
                              const FloorProgress& progress, const FloorSearch* search) {
    FloorStudy study;
    for (const Week w : week ? std::vector{*week} : weeksOf(block)) {
        FloorOptions o = options;
        o.week = w;
        FloorWeek now{.week = w, .answer = {}, .changes = {}};
        // Changes look at the mode: a round less is another one in a low week.
        const auto rounds = roundsOf(block, w);
        const FloorWeek* same =
            like(study, [&](const FloorWeek& k) { return roundsOf(block, k.week) == rounds; });
        const FloorWeek* twin = like(study, [&](const FloorWeek& k) {
            return block.step(k.week).rounds == block.step(w).rounds;
        });
        if (same) {
            now.answer = same->answer;
        } else {
            auto answer = simulateFloor(gym, block, o, stop, progress);
            if (!answer) return answer.why();
            now.answer = std::make_shared<const FloorAnswer>(std::move(answer).value());
        }
        if (twin) {
            now.changes = twin->changes;
        } else if (search && troubled(*now.answer, *search)) {
            ChangeTrial trial(gym, block, o, stop, progress);
            now.changes = trial.proven(*now.answer, search->ideas ? search->ideas(now)
                                                                  : std::vector<FloorIdea>{});
            if (stop.stop_requested()) return Message{"Stopped as asked; there is no answer.", {}};
        }
        study.weeks.push_back(std::move(now));
    }
    return study;
}

} // namespace bw
