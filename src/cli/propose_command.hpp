// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/command.hpp"
#include "cli/gym_source.hpp"

#include "blockwright/propose/propose.hpp"

namespace bw::cli {

// What could stand in the open slots of a month. Ctrl-C ends the search, not the answer.
class ProposeCommand : public Command {
public:
    CLI::App& declare(CLI::App& program) override;
    Exit run() override;

private:
    [[nodiscard]] ProposeOptions asked(const Gym& gym, const Block& block) const;

    GymSource source_;
    ProposeOptions options_;
    double seconds_ = 10;
    int runs_ = 1000; // of the simulated class; 0: it is not simulated
    std::vector<std::string> slots_, sections_;
    std::string member_;
    bool json_ = false;
};

} // namespace bw::cli
