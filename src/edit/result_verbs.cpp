// SPDX-License-Identifier: GPL-3.0-or-later
#include "edit/result_verbs.hpp"

#include <algorithm>
#include <set>

namespace bw {

namespace {
// "Marit Oyelaran: Barbell bench press"
Message nameOf(const Gym& gym, const LiftDay& day) {
    const Member* member = gym.findMember(day.member);
    const Exercise* exercise = gym.shelf.find(day.exercise);
    return {"%1: %2",
            {member ? member->name : day.member.text(),
             exercise ? exercise->name : day.exercise.text()}};
}
} // namespace

Result<std::vector<LiftResult>> setsOf(GymFile& file, const LiftDay& day) {
    std::vector<LiftResult> out;
    const auto read = file.eachResultOf({{day.member}, {day.exercise}, day.date, day.date},
                                        [&](const LiftResult& r) {
                                            out.push_back(r);
                                            return true;
                                        });
    if (!read) return read.why();
    return out;
}

Result<bool> setSets(OpenGym& gym, const LiftDay& day, const std::vector<LiftedSet>& sets) {
    const auto stored = setsOf(gym.file(), day);
    if (!stored) return stored.why();
    std::vector<Change> changes;
    for (std::size_t i = 0; i < sets.size(); ++i) {
        LiftResult r{day.member,   day.date,    day.exercise, static_cast<int>(i) + 1,
                     sets[i].reps, sets[i].rir, sets[i].load, {}};
        for (const LiftResult& old : *stored)
            if (old.set == r.set) r.extras = old.extras;
        changes.emplace_back(PutResult{std::move(r)});
    }
    for (const LiftResult& old : *stored)
        if (old.set > static_cast<int>(sets.size()))
            changes.emplace_back(RemoveResult{old.member, old.date, old.exercise, old.set});
    return gym.change({nameOf(gym.gym(), day), std::move(changes), {}, {}});
}

Result<ResultsChange> changeBy(GymFile& file, std::vector<LiftResult> results) {
    if (results.empty()) return ResultsChange{};
    std::set<MemberId> members;
    for (const LiftResult& r : results) members.insert(r.member);
    const auto [first, last] = std::minmax_element(
        results.begin(), results.end(), [](auto& a, auto& b) { return a.date < b.date; });
    std::vector<LiftResult> stored;
    const auto read = file.eachResultOf(
        {{members.begin(), members.end()}, {}, first->date, last->date}, [&](const LiftResult& r) {
            stored.push_back(r);
            return true;
        });
    if (!read) return read.why();
    return compare(std::move(results), stored);
}

Result<bool> importResults(OpenGym& gym, const ResultsChange& change) {
    std::vector<Change> changes;
    for (const auto* list : {&change.fresh, &change.changed})
        for (const LiftResult& r : *list) changes.emplace_back(PutResult{r});
    if (changes.empty()) return false;
    if (changes.size() > kMostUndoableSets) return gym.changeForGood(changes);
    Message what{"results from a table: %1 sets", {std::to_string(changes.size())}};
    return gym.change({std::move(what), std::move(changes), {}, {}});
}

} // namespace bw
