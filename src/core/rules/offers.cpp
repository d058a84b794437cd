// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/offers.hpp"

#include "blockwright/model/fitting.hpp"

#include <algorithm>

namespace bw {

Offers::Offers(const Facts& facts) : gym_(facts.gym), history_(facts.history) {
    for (const SlotFact& s : facts.slots)
        if (s.exercise) drafted_.push_back(s.exercise);
}

bool Offers::free(const Exercise& e) const {
    return !e.retired && std::find(drafted_.begin(), drafted_.end(), &e) == drafted_.end() &&
           ownsKitFor(gym_, e);
}

void Offers::rank(std::vector<const Exercise*>& exercises) const {
    std::vector<std::pair<int, const Exercise*>> ranked;
    ranked.reserve(exercises.size());
    constexpr int kNew = 1000; // far above any skill
    for (const Exercise* e : exercises)
        ranked.emplace_back((history_.knows(e->id) ? 0 : kNew) + e->skill, e);
    std::stable_sort(ranked.begin(), ranked.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::transform(ranked.begin(), ranked.end(), exercises.begin(),
                   [](const auto& r) { return r.second; });
}

const std::vector<const Exercise*>& Offers::ofRoles(const std::vector<std::string_view>& roles) {
    std::string key;
    for (const std::string_view role : roles) key.append(role).push_back(' ');
    const auto [it, fresh] = known_.try_emplace(key);
    if (!fresh) return it->second;
    for (const Shelf::Entry& e : gym_.shelf.entries())
        if (std::any_of(roles.begin(), roles.end(),
                        [&](std::string_view role) { return e->hasRole(role); }) &&
            free(*e))
            it->second.push_back(e.get());
    rank(it->second);
    return it->second;
}

} // namespace bw
