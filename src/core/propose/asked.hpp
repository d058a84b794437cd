// SPDX-License-Identifier: GPL-3.0-or-later
// Which slots a question for proposals is about.
#pragma once
#include "blockwright/propose/propose.hpp"

namespace bw::proposing {

struct AskedSlot {
    Place place;
    Slot like;                        // open, with the patterns that are wanted of it
    const Exercise* leaves = nullptr; // what stands there and must not come back
    std::vector<KitId> spare;         // kit that nothing takes there
};

// Options out of range, or a place that isn't there or is locked.
[[nodiscard]] std::optional<Message> faultOf(const Gym& gym, const Block& draft,
                                             const ProposeOptions& options);

// In order of the session; none: nothing is open.
[[nodiscard]] std::vector<AskedSlot> slotsAsked(const Gym& gym, const Block& draft,
                                                const ProposeOptions& options);

} // namespace bw::proposing
