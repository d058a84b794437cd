// SPDX-License-Identifier: GPL-3.0-or-later
#include "edit/results_before.hpp"

#include <set>

namespace bw {

std::optional<ResultsBefore::Key> ResultsBefore::keyOf(const Change& change) {
    if (const auto* put = std::get_if<PutResult>(&change))
        return Key{put->result.member, put->result.date, put->result.exercise, put->result.set};
    if (const auto* out = std::get_if<RemoveResult>(&change))
        return Key{out->member, out->date, out->exercise, out->set};
    return std::nullopt;
}

bool ResultsBefore::isAbout(const Change& change) { return keyOf(change).has_value(); }

Result<ResultsBefore> ResultsBefore::of(GymFile& file, const std::vector<Change>& changes) {
    ResultsBefore out;
    std::set<MemberId> members;
    std::set<ExerciseId> exercises;
    std::optional<Date> first, last;
    for (const Change& c : changes) {
        const auto key = keyOf(c);
        if (!key) continue;
        const auto& [member, date, exercise, set] = *key;
        members.insert(member);
        exercises.insert(exercise);
        first = first ? std::min(*first, date) : date;
        last = last ? std::max(*last, date) : date;
        out.stored_.emplace(*key, std::nullopt);
    }
    if (members.empty()) return out;
    const auto read = file.eachResultOf(
        {{members.begin(), members.end()}, {exercises.begin(), exercises.end()}, first, last},
        [&](const LiftResult& r) {
            const auto at = out.stored_.find({r.member, r.date, r.exercise, r.set});
            if (at != out.stored_.end()) at->second = r;
            return true;
        });
    if (!read) return read.why();
    return out;
}

std::optional<Change> ResultsBefore::wayBack(const Change& change) {
    std::optional<LiftResult>& now = stored_.at(keyOf(change).value());
    const std::optional<LiftResult> before = now;
    if (const auto* put = std::get_if<PutResult>(&change)) {
        if (before == put->result) return std::nullopt;
        now = put->result;
        if (!before)
            return RemoveResult{put->result.member, put->result.date, put->result.exercise,
                                put->result.set};
    } else {
        if (!before) return std::nullopt;
        now.reset();
    }
    return PutResult{*before};
}

} // namespace bw
