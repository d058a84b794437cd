// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shelf.hpp"

namespace bw {

void Shelf::put(Exercise exercise) { put(std::make_shared<const Exercise>(std::move(exercise))); }

void Shelf::put(Entry exercise) {
    const auto [it, fresh] = at_.try_emplace(exercise->id, entries_.size());
    if (fresh)
        entries_.push_back(std::move(exercise));
    else
        entries_[it->second] = std::move(exercise);
}

bool Shelf::remove(const ExerciseId& id) {
    const auto it = at_.find(id);
    if (it == at_.end()) return false;
    const auto index = it->second;
    at_.erase(it);
    entries_.erase(entries_.begin() + static_cast<std::ptrdiff_t>(index));
    for (auto& [other, place] : at_)
        if (place > index) --place;
    return true;
}

const Exercise* Shelf::find(const ExerciseId& id) const {
    const auto it = at_.find(id);
    return it == at_.end() ? nullptr : entries_[it->second].get();
}

Shelf::Entry Shelf::entry(const ExerciseId& id) const {
    const auto it = at_.find(id);
    return it == at_.end() ? nullptr : entries_[it->second];
}

} // namespace bw
