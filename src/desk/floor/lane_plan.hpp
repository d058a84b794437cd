// SPDX-License-Identifier: GPL-3.0-or-later
// The median class laid along the clock: one lane a member, or for each kit item one with the
// members who wait for it and one a unit. No pixels here.
#pragma once
#include "desk/floor/floor_view.hpp"

#include <algorithm>
#include <vector>

namespace bw {

struct LanePiece {
    // Through: until the section ends. Line and Hold are those of kit: members waiting for it, and
    // a member who has it.
    enum class Kind { Talk, Wait, Set, Rest, Through, Line, Hold };
    Kind kind = Kind::Set;
    Place place;   // of the section (talk, through), the group (rest, hold) or the slot (set, wait)
    int round = 0; // from 0
    Millis from{}, to{};
    int member = -1;             // of a hold, from 0
    int count = 0;               // members in the line
    std::optional<KitId> lacked; // of a wait

    [[nodiscard]] bool holds(Millis time) const { return from <= time && time < to; }
};

// A member's stay in a group, from the first set to the end of the last, or the wait to get in.
struct LaneStay {
    Place group;
    Millis from{}, to{};
};

struct Lane {
    int member = -1; // from 0; -1: a lane of kit
    std::optional<KitId> kit;
    int unit = -1; // from 0; -1: the line of those who wait
    std::vector<LanePiece> pieces;
    std::vector<LaneStay> stays;
};

struct LaneSection {
    Place place;
    SectionKind kind{};
    Millis from{}, talked{}, to{}; // talked: the end of the coach's talk
};

enum class LaneOrder { Members, Kit };

struct LanePlan {
    LaneOrder order = LaneOrder::Members;
    std::vector<Lane> lanes; // none: nothing was played, or nobody takes kit
    std::vector<LaneSection> sections;
    Millis opening{}, finish{}, wall{};

    static LanePlan of(const FloorView& view, LaneOrder order);

    // The latest that the scale must hold.
    [[nodiscard]] Millis latest() const { return std::max(finish, wall); }
    // The piece of a lane at a time; between two pieces the one before, before the first that.
    [[nodiscard]] int pieceAt(int lane, Millis time) const; // -1: none at all
};

// One lane for each member; those of kit, the longest wait first.
[[nodiscard]] std::vector<Lane> memberLanes(const FloorAnswer& answer,
                                            const std::vector<LaneSection>& sections);
[[nodiscard]] std::vector<Lane> kitLanes(const FloorAnswer& answer);

} // namespace bw
