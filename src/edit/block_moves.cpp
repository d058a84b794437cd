// SPDX-License-Identifier: GPL-3.0-or-later
// Adding, taking out and moving sections, groups and slots.
#include "blockwright/model/place.hpp"
#include "edit/block_verbs.hpp"

#include <algorithm>

namespace bw {

namespace {
template <class V> auto at(V& list, int i) { return list.begin() + static_cast<std::ptrdiff_t>(i); }
template <class V> int sizeOf(const V& list) { return static_cast<int>(list.size()); }

// Heads told by count no longer fit when the number of groups changes.
void fitStart(Section& s) {
    const auto* counts = std::get_if<StartCounts>(&s.start);
    if (counts && counts->heads.size() != s.groups.size()) s.start = StartSpread{};
}

template <class T> T take(std::vector<T>& list, int i) {
    T thing = std::move(list[static_cast<std::size_t>(i)]);
    list.erase(at(list, i));
    return thing;
}

bool exists(const Block& b, Place p) {
    if (p.isSlot()) return slotAt(b, p);
    return p.isGroup() ? groupAt(b, p) != nullptr : sectionAt(b, p) != nullptr;
}

void dropIfEmpty(Block& b, Place group) {
    Group* g = groupAt(b, group);
    if (!g || !g->slots.empty()) return;
    Section* s = sectionAt(b, group);
    s->groups.erase(at(s->groups, group.group));
    fitStart(*s);
}

void removeFrom(Block& b, Place p) {
    if (p.isSlot()) {
        auto& slots = groupAt(b, p)->slots;
        slots.erase(at(slots, p.slot));
        dropIfEmpty(b, {p.section, p.group});
    } else if (p.isGroup()) {
        Section* s = sectionAt(b, p);
        s->groups.erase(at(s->groups, p.group));
        fitStart(*s);
    } else {
        b.sections.erase(at(b.sections, p.section));
    }
}

// Where the attention goes once the thing at p is gone: the one that took its place, or the last.
Place afterRemoval(const Block& b, Place p) {
    if (p.isSlot() && !groupAt(b, {p.section, p.group})) p = {p.section, p.group};
    if (p.isSlot()) {
        const Group* g = groupAt(b, p);
        return {p.section, p.group, std::min(p.slot, sizeOf(g->slots) - 1)};
    }
    const Section* s = sectionAt(b, p);
    if (p.isGroup() && s && !s->groups.empty())
        return {p.section, std::min(p.group, sizeOf(s->groups) - 1)};
    return {std::min(p.section, sizeOf(b.sections) - 1)};
}

Place moveSlotTo(Block& b, Place from, Place to) {
    Slot slot = take(groupAt(b, from)->slots, from.slot);
    auto& slots = groupAt(b, to)->slots;
    int index = to.isSlot() ? to.slot : sizeOf(slots);
    const bool sameGroup = from.section == to.section && from.group == to.group;
    if (sameGroup && to.isSlot() && from.slot < index) --index;
    slots.insert(at(slots, std::min(index, sizeOf(slots))), std::move(slot));
    Place landed{to.section, to.group, std::min(index, sizeOf(slots) - 1)};
    if (groupAt(b, from)->slots.empty()) {
        dropIfEmpty(b, {from.section, from.group});
        if (from.section == to.section && from.group < to.group) --landed.group;
    }
    return landed;
}

Place moveGroupTo(Block& b, Place from, Place to) {
    Section* source = sectionAt(b, from);
    Group group = take(source->groups, from.group);
    fitStart(*source);
    Section* target = sectionAt(b, to);
    int index = to.isGroup() ? to.group : sizeOf(target->groups);
    if (from.section == to.section && to.isGroup() && from.group < index) --index;
    index = std::min(index, sizeOf(target->groups));
    target->groups.insert(at(target->groups, index), std::move(group));
    fitStart(*target);
    return {to.section, index};
}

Place moveSectionTo(Block& b, Place from, Place to) {
    Section section = take(b.sections, from.section);
    const int index = to.section > from.section ? to.section - 1 : to.section;
    b.sections.insert(at(b.sections, index), std::move(section));
    return {index};
}

// What moveTo needs to be told for one step up or down; none at the very edge.
std::optional<Place> stepTarget(const Block& b, Place p, int step) {
    if (p.isSlot()) {
        const int next = p.slot + step;
        if (next >= 0 && next < sizeOf(groupAt(b, p)->slots))
            return Place{p.section, p.group, step > 0 ? next + 1 : next};
        for (int s = p.section, g = p.group + step; s >= 0 && s < sizeOf(b.sections);) {
            if (groupAt(b, {s, g})) return step > 0 ? Place{s, g, 0} : Place{s, g};
            s += step;
            g = step > 0 || s < 0 ? 0 : sizeOf(b.sections[static_cast<std::size_t>(s)].groups) - 1;
        }
        return std::nullopt;
    }
    if (p.isGroup()) {
        const int next = p.group + step;
        if (next >= 0 && next < sizeOf(sectionAt(b, p)->groups))
            return Place{p.section, step > 0 ? next + 1 : next};
        const Section* other = sectionAt(b, {p.section + step});
        if (!other) return std::nullopt;
        return step > 0 && !other->groups.empty() ? Place{p.section + 1, 0}
                                                  : Place{p.section + step};
    }
    const int next = p.section + step;
    if (next < 0 || next >= sizeOf(b.sections)) return std::nullopt;
    return Place{step > 0 ? next + 1 : next};
}

Place moveIn(Block& b, Place from, Place to) {
    if (from.isSlot()) return moveSlotTo(b, from, to);
    return from.isGroup() ? moveGroupTo(b, from, to) : moveSectionTo(b, from, to);
}

bool canMove(const Block& b, Place from, Place to) {
    if (!exists(b, from)) return false;
    if (from.isSlot()) // the end of a group, or before one of its slots
        return groupAt(b, to) && (!to.isSlot() || to.slot <= sizeOf(groupAt(b, to)->slots));
    if (from.isGroup()) return sectionAt(b, to) && !to.isSlot();
    return to.section >= 0 && to.section <= sizeOf(b.sections);
}

Did moved(OpenGym& gym, Spot spot, Place to) {
    Block copy = *gym.gym().block(spot.month);
    const Place landed = moveIn(copy, spot.place, to);
    return editBlock(
        gym, spot, {"move", {}}, [&](Block& b) { b = std::move(copy); }, landed);
}
} // namespace

Did addSlot(OpenGym& gym, Spot behind) {
    Place p = behind.place;
    const auto block = gym.gym().block(behind.month);
    const Group* g = block ? groupAt(*block, p) : nullptr;
    if (!g) return addGroup(gym, behind);
    p.slot = p.isSlot() ? p.slot + 1 : sizeOf(g->slots);
    return editBlock(
        gym, behind, {"add a slot", {}},
        [&](Block& b) {
            auto& slots = groupAt(b, behind.place)->slots;
            slots.insert(at(slots, std::min(p.slot, sizeOf(slots))), Slot{});
        },
        p);
}

Did addGroup(OpenGym& gym, Spot behind) {
    Place p = behind.place;
    const auto block = gym.gym().block(behind.month);
    const Section* s = block ? sectionAt(*block, p) : nullptr;
    if (!s) return addSection(gym, behind, SectionKind::Strength);
    p.group = p.group >= 0 ? std::min(p.group + 1, sizeOf(s->groups)) : sizeOf(s->groups);
    p.slot = 0;
    return editBlock(
        gym, behind, {"add a group", {}},
        [&](Block& b) {
            Section* section = sectionAt(b, behind.place);
            section->groups.insert(at(section->groups, p.group), usualGroup(section->kind));
            fitStart(*section);
        },
        p);
}

Did addSection(OpenGym& gym, Spot behind, SectionKind kind) {
    const auto block = gym.gym().block(behind.month);
    if (!block) return false;
    const int index =
        sectionAt(*block, behind.place) ? behind.place.section + 1 : sizeOf(block->sections);
    return editBlock(
        gym, behind, {"add a section", {}},
        [&](Block& b) { b.sections.insert(at(b.sections, index), usualSection(kind)); },
        Place{index, 0, 0});
}

Did removeAt(OpenGym& gym, Spot spot) {
    const auto block = gym.gym().block(spot.month);
    if (!block || !exists(*block, spot.place)) return false;
    Block copy = *block;
    removeFrom(copy, spot.place);
    const Place after = afterRemoval(copy, spot.place);
    return editBlock(
        gym, spot, {"remove", {}}, [&](Block& b) { b = std::move(copy); }, after);
}

Did moveBy(OpenGym& gym, Spot spot, int step) {
    const auto block = gym.gym().block(spot.month);
    if (!block || !exists(*block, spot.place)) return false;
    const auto to = stepTarget(*block, spot.place, step);
    return to ? moved(gym, spot, *to) : Did(false);
}

Did moveTo(OpenGym& gym, Spot spot, Place to) {
    const auto block = gym.gym().block(spot.month);
    if (!block || !canMove(*block, spot.place, to)) return false;
    return moved(gym, spot, to);
}

} // namespace bw
