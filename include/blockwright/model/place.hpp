// SPDX-License-Identifier: GPL-3.0-or-later
// Where something stands in a block: the session, a section, a group or a slot. Indices from 0.
// Written kind/group/slot with groups and slots from 1: "strength/1/2"; "session" for the whole.
// When a kind has several sections its groups are counted on from one to the next, so each text is
// unique.
#pragma once
#include "blockwright/model/block.hpp"

#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace bw {

struct Place {
    int section = -1; // -1: the whole session
    int group = -1;   // -1: the whole section
    int slot = -1;    // -1: the whole group

    [[nodiscard]] bool isSession() const { return section < 0; }
    [[nodiscard]] bool isSection() const { return section >= 0 && group < 0; }
    [[nodiscard]] bool isGroup() const { return group >= 0 && slot < 0; }
    [[nodiscard]] bool isSlot() const { return slot >= 0; }
    auto operator<=>(const Place&) const = default;
};

[[nodiscard]] std::string placeText(const Block& block, Place place);
// Nothing when the text names no place of this block.
[[nodiscard]] std::optional<Place> placeFrom(const Block& block, std::string_view text);
// The letter of a group on the sheet, counted through the whole session: A to Z, then AA, AB, ...
[[nodiscard]] std::string groupLetter(const Block& block, Place place);

// Null when the place is none of the block's.
[[nodiscard]] const Section* sectionAt(const Block& block, Place place);
[[nodiscard]] const Group* groupAt(const Block& block, Place place);
[[nodiscard]] const Slot* slotAt(const Block& block, Place place);
[[nodiscard]] Section* sectionAt(Block& block, Place place);
[[nodiscard]] Group* groupAt(Block& block, Place place);
[[nodiscard]] Slot* slotAt(Block& block, Place place);

} // namespace bw
