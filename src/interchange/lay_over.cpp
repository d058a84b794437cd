// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/bundle.hpp"
#include "interchange/merge_extras.hpp"

#include <unordered_map>

namespace bw {

namespace {
// Gym::put looks through all members for each; an import may bring thousands.
void putAll(std::vector<Member>& into, const std::vector<Member>& members) {
    std::unordered_map<MemberId, std::size_t> at;
    for (std::size_t i = 0; i < into.size(); ++i) at.emplace(into[i].id, i);
    for (const auto& member : members) {
        const auto [it, fresh] = at.try_emplace(member.id, into.size());
        if (fresh)
            into.push_back(member);
        else
            into[it->second] = member;
    }
}
} // namespace

void layOver(Gym& gym, const Bundle& bundle) {
    if (bundle.settings) gym.settings = *bundle.settings;
    gym.settings.extras = mergedExtras(gym.settings.extras, bundle.gymExtras);
    for (const auto& item : bundle.kit) gym.put(item);
    for (const auto& exercise : bundle.shelf) gym.shelf.put(exercise);
    for (const auto& block : bundle.blocks) gym.put(block);
    putAll(gym.members, bundle.members);
}

Bundle bundleOf(const Gym& gym, std::vector<LiftResult> results) {
    Bundle out;
    out.settings = gym.settings;
    out.hasKit = out.hasShelf = true;
    out.kit = gym.kit;
    for (const auto& e : gym.shelf.entries()) out.shelf.push_back(*e);
    for (const auto& [month, block] : gym.blocks) out.blocks.push_back(*block);
    out.members = gym.members;
    out.results = std::move(results);
    return out;
}

} // namespace bw
