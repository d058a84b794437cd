// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/asked.hpp"

#include "blockwright/model/shorthand.hpp"

#include <algorithm>
#include <set>

namespace bw::proposing {

namespace {
bool within(Place slot, Place whole) {
    return (whole.section < 0 || whole.section == slot.section) &&
           (whole.group < 0 || whole.group == slot.group) &&
           (whole.slot < 0 || whole.slot == slot.slot);
}

std::vector<Place> slotsOf(const Block& block) {
    std::vector<Place> out;
    Place at;
    for (at.section = 0; const Section& section : block.sections) {
        for (at.group = 0; const Group& group : section.groups) {
            for (at.slot = 0; at.slot < static_cast<int>(group.slots.size()); ++at.slot)
                out.push_back(at);
            ++at.group;
        }
        ++at.section;
    }
    return out;
}

// Main lifts that the rule book wants changed.
std::set<Place> staleLifts(const Gym& gym, const Block& draft) {
    std::set<Place> out;
    for (const Finding& f : check(gym, draft).findings)
        if (f.rule == "staleness" && f.place.isSlot()) out.insert(f.place);
    return out;
}

std::optional<Message> faultOf(const Block& draft, Place p) {
    if (p.isSlot() ? !slotAt(draft, p) : p.isGroup() ? !groupAt(draft, p) : false)
        return Message{"The month has no such place.", {}};
    if (p.isSection() && !sectionAt(draft, p)) return Message{"The month has no such place.", {}};
    if (p.isSlot() && slotAt(draft, p)->locked)
        return Message{"%1 is locked: proposals leave it alone. Unlock it first.",
                       {placeText(draft, p)}};
    return std::nullopt;
}
} // namespace

std::optional<Message> faultOf(const Gym& gym, const Block& draft, const ProposeOptions& o) {
    if (o.answers < 1 || o.answers > ProposeOptions::kMostAnswers)
        return Message{"Between 1 and %1 answers can be asked for.",
                       {std::to_string(ProposeOptions::kMostAnswers)}};
    if (o.threads < 1 || o.threads > ProposeOptions::kMostThreads)
        return Message{"Between 1 and %1 threads can be asked for.",
                       {std::to_string(ProposeOptions::kMostThreads)}};
    if (o.member && !gym.findMember(*o.member))
        return Message{"This gym has no member %1.", {o.member->text()}};
    for (const Place p : o.places)
        if (auto wrong = faultOf(draft, p)) return wrong;
    return std::nullopt;
}

std::vector<AskedSlot> slotsAsked(const Gym& gym, const Block& draft,
                                  const ProposeOptions& options) {
    const std::set<Place> stale = options.anew ? staleLifts(gym, draft) : std::set<Place>{};
    std::vector<AskedSlot> out;
    for (const Place p : slotsOf(draft)) {
        const Slot& slot = *slotAt(draft, p);
        const bool named = std::ranges::find(options.places, p) != options.places.end();
        const bool inside =
            options.places.empty() ||
            std::ranges::any_of(options.places, [&](Place whole) { return within(p, whole); });
        const bool anew = options.anew && (!slot.main || stale.contains(p));
        if (slot.locked || !inside || !(slot.open() || named || anew)) continue;
        AskedSlot asked{p, slot, nullptr, {}};
        asked.like.exercise.reset();
        const Exercise* now = slot.open() ? nullptr : gym.shelf.find(*slot.exercise);
        if (now && anew && slot.patterns.empty() && !now->patterns.none())
            asked.like.patterns = {now->patterns.largest()};
        if (named || stale.contains(p)) asked.leaves = now;
        for (const SpareKit& one : options.spare)
            if (one.slot == p) asked.spare.push_back(one.kit);
        out.push_back(std::move(asked));
    }
    return out;
}

} // namespace bw::proposing
