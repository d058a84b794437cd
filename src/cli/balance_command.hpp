// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/command.hpp"
#include "cli/gym_source.hpp"

namespace bw::cli {

// What the month trains, beside the months of the window.
class BalanceCommand : public Command {
public:
    CLI::App& declare(CLI::App& program) override;
    Exit run() override;

private:
    GymSource source_;
    int week_ = 0; // 0: the average of all weeks
    bool json_ = false;
};

} // namespace bw::cli
