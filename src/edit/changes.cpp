// SPDX-License-Identifier: GPL-3.0-or-later
#include "edit/changes.hpp"

#include <algorithm>

namespace bw {

namespace {
template <class... F> struct Each : F... { using F::operator()...; };
template <class... F> Each(F...) -> Each<F...>; // clang 14 can't work it out for an aggregate

template <class V, class I> void eraseById(V& list, const I& id) {
    std::erase_if(list, [&](const auto& x) { return x.id == id; });
}

// Puts the old value back, or takes the new one out; nothing when they are equal.
template <class Put, class Remove, class Old, class New>
std::optional<Change> restore(const Old* old, const New& now, Remove remove) {
    if (!old) return remove;
    if (*old == now) return std::nullopt;
    return Put{*old};
}
} // namespace

void applyTo(Gym& gym, const Change& change) {
    std::visit(Each{[&](const PutSettings& c) { gym.settings = c.settings; },
                    [&](const PutKit& c) { gym.put(c.item); },
                    [&](const RemoveKit& c) { eraseById(gym.kit, c.id); },
                    [&](const PutExercise& c) { gym.shelf.put(c.exercise); },
                    [&](const RemoveExercise& c) { gym.shelf.remove(c.id); },
                    [&](const PutBlock& c) { gym.blocks[c.block->month] = c.block; },
                    [&](const RemoveBlock& c) { gym.blocks.erase(c.month); },
                    [&](const PutMember& c) { gym.put(c.member); },
                    [&](const RemoveMember& c) { eraseById(gym.members, c.id); },
                    [&](const PutResult&) {}, [&](const RemoveResult&) {}},
               change);
}

std::optional<Change> wayBack(const Gym& gym, const Change& change) {
    using Back = std::optional<Change>;
    return std::visit(Each{[&](const PutSettings& c) -> Back {
                               if (gym.settings == c.settings) return std::nullopt;
                               return PutSettings{gym.settings};
                           },
                           [&](const PutKit& c) -> Back {
                               return restore<PutKit>(gym.findKit(c.item.id), c.item,
                                                      RemoveKit{c.item.id});
                           },
                           [&](const PutExercise& c) -> Back {
                               const auto old = gym.shelf.entry(c.exercise->id);
                               if (!old) return RemoveExercise{c.exercise->id};
                               if (*old == *c.exercise) return std::nullopt;
                               return PutExercise{old};
                           },
                           [&](const PutBlock& c) -> Back {
                               const auto old = gym.block(c.block->month);
                               if (!old) return RemoveBlock{c.block->month};
                               if (*old == *c.block) return std::nullopt;
                               return PutBlock{old};
                           },
                           [&](const RemoveBlock& c) -> Back {
                               if (const auto old = gym.block(c.month)) return PutBlock{old};
                               return std::nullopt;
                           },
                           [&](const PutMember& c) -> Back {
                               return restore<PutMember>(gym.findMember(c.member.id), c.member,
                                                         RemoveMember{c.member.id});
                           },
                           [&](const auto&) -> Back { return std::nullopt; }},
                      change);
}

} // namespace bw
