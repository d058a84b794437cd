// SPDX-License-Identifier: GPL-3.0-or-later
// The class as it will run on the gym's floor: every member goes through the session, takes kit,
// waits for it and gives it back. docs/floor.md says how, to the millisecond.
//   simulateFloor(gym, block, {.members = 12, .steady = true})->finish.mean
#pragma once
#include "blockwright/floor/answer.hpp"
#include "blockwright/floor/options.hpp"
#include "blockwright/model/gym.hpp"

#include <stop_token>

namespace bw {

// A slot none of whose alternatives the gym can ever serve, and the first kit item of the preferred
// one that is too few. A member would wait for ever.
struct FloorShortage {
    Place place;
    KitId kit;
    int needed = 0, units = 0;
    bool operator==(const FloorShortage&) const = default;
};
[[nodiscard]] std::vector<FloorShortage> floorShortages(const Gym& gym, const Block& block);

// Why(): an option out of range, a shortage, a class too large to simulate, or that it was stopped.
[[nodiscard]] Result<FloorAnswer> simulateFloor(const Gym& gym, const Block& block,
                                                const FloorOptions& options,
                                                std::stop_token stop = {},
                                                const FloorProgress& progress = {});

} // namespace bw
