// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/command.hpp"
#include "cli/gym_source.hpp"

namespace bw::cli {

// A gym as one bundle, its results as a table, or a month's classes as a calendar, on standard
// output or in a file.
class ExportCommand : public Command {
public:
    CLI::App& declare(CLI::App& program) override;
    Exit run() override;

private:
    [[nodiscard]] std::string text() const;
    [[nodiscard]] std::string calendar() const;

    GymSource source_;
    std::string out_, at_;
    std::vector<std::string> days_;
    bool csv_ = false, calendar_ = false, json_ = false;
};

} // namespace bw::cli
