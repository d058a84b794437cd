// SPDX-License-Identifier: GPL-3.0-or-later
// Where a command takes its gym and its month from: --bundle or --gym, --month, --week.
#pragma once
#include "blockwright/model/gym.hpp"

#include <optional>
#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace bw::cli {

struct LoadedGym {
    Gym gym;
    std::vector<LiftResult> results; // only when they were asked for
};

class GymSource {
public:
    enum class Results { Leave, Take };

    void declare(CLI::App& command);
    // All throw Ending.
    [[nodiscard]] LoadedGym load(Results results = Results::Leave) const;
    [[nodiscard]] std::optional<Month> month() const;              // none: not asked for
    [[nodiscard]] const std::string& file() const { return gym_; } // empty: bundles
    // The block of the month asked for, else the latest.
    [[nodiscard]] Gym::BlockPtr block(const Gym& gym) const;

private:
    std::vector<std::string> bundles_;
    std::string gym_, month_;
};

// Throws Ending when the block has no such week.
[[nodiscard]] Week weekOf(const Block& block, int number);

} // namespace bw::cli
