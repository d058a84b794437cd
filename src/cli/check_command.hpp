// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/command.hpp"
#include "cli/gym_source.hpp"

namespace bw::cli {

// What the rule book says of a month. Exit 1 when a finding of level stop is among it.
class CheckCommand : public Command {
public:
    CLI::App& declare(CLI::App& program) override;
    Exit run() override;

private:
    GymSource source_;
    int week_ = 0;    // 0: all weeks
    int runs_ = 1000; // of the simulated class; 0: it is not simulated
    bool json_ = false;
};

} // namespace bw::cli
