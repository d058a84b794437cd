// SPDX-License-Identifier: GPL-3.0-or-later
// What the gym file holds of the results that a step is about to change, so that the step has a way
// back. Reads each of them once, whatever the years.
#pragma once
#include "store/gym_file.hpp"

#include <map>
#include <tuple>

namespace bw {

class ResultsBefore {
public:
    // Reads nothing when no change is about a result.
    static Result<ResultsBefore> of(GymFile& file, const std::vector<Change>& changes);

    [[nodiscard]] static bool isAbout(const Change& change); // one result
    // What undoes the change; none when it changes nothing. The next answer builds on this one.
    [[nodiscard]] std::optional<Change> wayBack(const Change& change);

private:
    using Key = std::tuple<MemberId, Date, ExerciseId, int>;
    static std::optional<Key> keyOf(const Change& change);
    std::map<Key, std::optional<LiftResult>> stored_; // by every key of the changes
};

} // namespace bw
