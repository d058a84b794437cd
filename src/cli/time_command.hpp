// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/command.hpp"
#include "cli/gym_source.hpp"

namespace bw::cli {

// How long the session takes in a week: short, planned and long.
class TimeCommand : public Command {
public:
    CLI::App& declare(CLI::App& program) override;
    Exit run() override;

private:
    GymSource source_;
    int week_ = 1;
    bool json_ = false;
};

} // namespace bw::cli
