// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/floor/options.hpp"
#include "cli/command.hpp"
#include "cli/gym_source.hpp"

namespace bw::cli {

// The simulated class: who waits where, how long, and what would help.
class FloorCommand : public Command {
public:
    CLI::App& declare(CLI::App& program) override;
    Exit run() override;

private:
    [[nodiscard]] FloorOptions options(const Block& block) const;

    GymSource source_;
    FloorOptions asked_;
    int week_ = 1;
    std::string spread_; // empty: as drafted
    bool leaveBuys_ = false, json_ = false;
};

} // namespace bw::cli
