// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/floor/floor.hpp"
#include "cli/json_text.hpp"

namespace bw::cli {

// Times in seconds; members, sections, groups, rounds and slots of the timeline counted from 1.
[[nodiscard]] Json floorJson(const FloorOptions& options, const FloorAnswer& answer);
// For people: ends, rounds, waits, what buys the most and, when it was asked for, the timeline.
[[nodiscard]] std::string floorText(const Gym& gym, const Block& block, const FloorOptions& options,
                                    const FloorAnswer& answer);

} // namespace bw::cli
