// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/rules/facts.hpp"

namespace bw::proposing {

// A slot as it would stand with an exercise in it: its dose the one written down, else the usual.
struct Filling {
    Slot slot;
    SlotFact fact; // of that slot, so it goes with this

    Filling(const SlotFact& open, const Exercise& exercise);
    Filling(const Filling&) = delete;
    Filling& operator=(const Filling&) = delete;
};

} // namespace bw::proposing
