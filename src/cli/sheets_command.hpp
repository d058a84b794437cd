// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/command.hpp"
#include "cli/gym_source.hpp"

namespace bw::cli {

// The month's sheets as PDF files in a folder; says their paths.
class SheetsCommand : public Command {
public:
    CLI::App& declare(CLI::App& program) override;
    Exit run() override;

private:
    GymSource source_;
    std::vector<std::string> only_;
    std::string out_;
    bool json_ = false;
};

} // namespace bw::cli
