// SPDX-License-Identifier: GPL-3.0-or-later
// The next event of each member, and which of all is the first: by time, then give-backs before
// turns, then by member. A winner tree: the leaves are the members, each node the earlier of its
// two.
#pragma once
#include "core/floor/floor_plan.hpp"

#include <algorithm>
#include <bit>
#include <limits>

namespace bw {

enum class EventPhase { GiveBack, Turn };

struct FloorEvent {
    Ticks time = 0;
    EventPhase phase{};
    int member = 0;
};

class EventTree {
public:
    explicit EventTree(int members)
        : leaves_(std::bit_ceil(static_cast<unsigned>(members))), tree_(2 * leaves_, kNever) {}

    void clear() { std::ranges::fill(tree_, kNever); }
    // Takes the place of the member's event; times below 2^52 ms.
    void set(int member, Ticks time, EventPhase phase) {
        put(member, (time << 1 | static_cast<Ticks>(phase)) << kMemberBits | member);
    }
    void remove(int member) { put(member, kNever); }

    [[nodiscard]] bool empty() const { return tree_[1] == kNever; }
    [[nodiscard]] FloorEvent first() const {
        const Ticks key = tree_[1];
        return {key >> (kMemberBits + 1), static_cast<EventPhase>(key >> kMemberBits & 1),
                static_cast<int>(key & ((1 << kMemberBits) - 1))};
    }

private:
    static constexpr int kMemberBits = 9; // FloorOptions::kMostMembers is below 512
    static constexpr Ticks kNever = std::numeric_limits<Ticks>::max();

    void put(int member, Ticks key) {
        std::size_t i = leaves_ + static_cast<std::size_t>(member);
        tree_[i] = key;
        while (i > 1) {
            i /= 2;
            tree_[i] = std::min(tree_[2 * i], tree_[2 * i + 1]);
        }
    }

    std::size_t leaves_;
    std::vector<Ticks> tree_; // [0] unused; of one member, [1] is root and leaf
};

} // namespace bw
