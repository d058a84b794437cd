// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/command.hpp"
#include "cli/gym_source.hpp"

namespace bw::cli {

// The month's stair: what each slot asks week by week, of the class or of one member.
class StairCommand : public Command {
public:
    CLI::App& declare(CLI::App& program) override;
    Exit run() override;

private:
    GymSource source_;
    std::string member_, on_;
    bool json_ = false;
};

} // namespace bw::cli
