// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/command.hpp"
#include "cli/gym_source.hpp"

namespace bw::cli {

// The months side by side, up to the month asked for.
class AlmanacCommand : public Command {
public:
    CLI::App& declare(CLI::App& program) override;
    Exit run() override;

private:
    GymSource source_;
    int months_ = 12;
    bool json_ = false;
};

} // namespace bw::cli
