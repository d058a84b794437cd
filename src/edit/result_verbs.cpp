// SPDX-License-Identifier: GPL-3.0-or-later
#include "edit/result_verbs.hpp"

#include <algorithm>
#include <set>

namespace bw {

Result<ResultsChange> changeBy(GymFile& file, std::vector<LiftResult> results) {
    if (results.empty()) return ResultsChange{};
    std::set<MemberId> members;
    for (const LiftResult& r : results) members.insert(r.member);
    const auto first = std::min_element(results.begin(), results.end(), [](auto& a, auto& b) {
                           return a.date < b.date;
                       })->date;
    std::vector<LiftResult> stored;
    const auto read =
        file.eachResultOf({{members.begin(), members.end()}, {}, first}, [&](const LiftResult& r) {
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
    return gym.changeForGood(changes);
}

} // namespace bw
