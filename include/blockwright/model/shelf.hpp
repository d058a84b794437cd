// SPDX-License-Identifier: GPL-3.0-or-later
// The exercise library: exercises in order, found by id. A copy shares its exercises, so it costs
// little.
#pragma once
#include "blockwright/model/exercise.hpp"

#include <memory>
#include <unordered_map>
#include <vector>

namespace bw {

class Shelf {
public:
    using Entry = std::shared_ptr<const Exercise>;

    // Adds, or takes the place of the exercise with the same id.
    void put(Exercise exercise);
    void put(Entry exercise);
    // False when there was none.
    bool remove(const ExerciseId& id);

    // Null when there is none; the pointer lives as long as an entry of that exercise.
    [[nodiscard]] const Exercise* find(const ExerciseId& id) const;
    [[nodiscard]] Entry entry(const ExerciseId& id) const;
    [[nodiscard]] const std::vector<Entry>& entries() const { return entries_; }
    [[nodiscard]] std::size_t size() const { return entries_.size(); }

private:
    std::vector<Entry> entries_;
    std::unordered_map<ExerciseId, std::size_t> at_;
};

} // namespace bw
