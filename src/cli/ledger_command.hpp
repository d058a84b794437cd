// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/command.hpp"
#include "cli/gym_source.hpp"

namespace bw::cli {

class GymResults;

// How strong members are by their results, and what to take next.
class LedgerCommand : public Command {
public:
    CLI::App& declare(CLI::App& program) override;
    Exit run() override;

private:
    [[nodiscard]] struct LedgerReport report(const GymResults& results) const;

    GymSource source_;
    std::string member_, exercise_, on_;
    bool json_ = false;
};

} // namespace bw::cli
