// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/command.hpp"

#include <string>

namespace bw::cli {

// The backups of a gym file, each read through; or those that hold a member.
class BackupsCommand : public Command {
public:
    CLI::App& declare(CLI::App& program) override;
    Exit run() override;

private:
    std::string gym_, member_;
    bool json_ = false;
};

} // namespace bw::cli
