// SPDX-License-Identifier: GPL-3.0-or-later
// Which exercises of the Shelf could stand in a slot.
#pragma once
#include "blockwright/rules/facts.hpp"

#include <functional>
#include <vector>

namespace bw {

using Fits = std::function<bool(const Exercise&)>;

// At most `most` exercises that fit the slot and `fits`, best first: the slot's own easier versions
// and swaps, then what this gym has done before, then by skill, then as the Shelf stands. All are
// offered on the Shelf, of a role that belongs in the slot, within the kit of the gym, and not in
// the draft already.
[[nodiscard]] std::vector<const Exercise*> substitutes(const Facts& facts, const SlotFact& slot,
                                                       std::size_t most, const Fits& fits);

// The roles that belong in a slot: the one that an open slot wants, else its place's.
[[nodiscard]] std::vector<std::string_view> rolesFor(const Facts& facts, const SlotFact& slot);
// Is it mainly of a pattern that an open slot wants? True of every other slot.
[[nodiscard]] bool patternFits(const Slot& slot, const Exercise& e);

} // namespace bw
