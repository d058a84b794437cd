// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/command.hpp"
#include "cli/gym_source.hpp"

namespace bw::cli {

// A gym as one bundle, or its results as a table, on standard output or in a file.
class ExportCommand : public Command {
public:
    CLI::App& declare(CLI::App& program) override;
    Exit run() override;

private:
    [[nodiscard]] std::string text() const;

    GymSource source_;
    std::string out_;
    bool csv_ = false, json_ = false;
};

} // namespace bw::cli
