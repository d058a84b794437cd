// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/command.hpp"

#include <string>

namespace bw::cli {

// A backup, or any other gym file, in place of the gym file; what was there is kept.
class RestoreCommand : public Command {
public:
    CLI::App& declare(CLI::App& program) override;
    Exit run() override;

private:
    std::string gym_, backup_;
    bool json_ = false;
};

} // namespace bw::cli
