// SPDX-License-Identifier: GPL-3.0-or-later
// The median class laid along the clock, one lane a member. No pixels here.
#pragma once
#include "desk/floor/floor_view.hpp"

#include <algorithm>
#include <vector>

namespace bw {

struct LanePiece {
    enum class Kind { Talk, Wait, Set, Rest, Through }; // through: until the section ends
    Kind kind = Kind::Set;
    Place place;   // of the section (talk, through), the group (rest) or the slot (set, wait)
    int round = 0; // from 0
    Millis from{}, to{};

    [[nodiscard]] bool holds(Millis time) const { return from <= time && time < to; }
};

// A member's stay in a group, from the first set to the end of the last, or the wait to get in.
struct LaneStay {
    Place group;
    Millis from{}, to{};
};

struct Lane {
    int member = 0; // from 0
    std::vector<LanePiece> pieces;
    std::vector<LaneStay> stays;
};

struct LaneSection {
    Place place;
    SectionKind kind{};
    Millis from{}, talked{}, to{}; // talked: the end of the coach's talk
};

struct LanePlan {
    std::vector<Lane> lanes; // none: nothing was played
    std::vector<LaneSection> sections;
    Millis opening{}, finish{}, wall{};

    static LanePlan of(const FloorView& view);

    // The latest that the scale must hold.
    [[nodiscard]] Millis latest() const { return std::max(finish, wall); }
    // The piece of a lane at a time; between two pieces, and beyond the last, the nearest one.
    [[nodiscard]] int pieceAt(int lane, Millis time) const; // -1: none at all
};

} // namespace bw
