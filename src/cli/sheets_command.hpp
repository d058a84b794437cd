// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/command.hpp"
#include "cli/gym_source.hpp"
#include "sheets/sheet_options.hpp"

namespace bw::cli {

// The month's sheets as PDF files in a folder; says their paths.
class SheetsCommand : public Command {
public:
    CLI::App& declare(CLI::App& program) override;
    Exit run() override;

private:
    [[nodiscard]] SheetOptions options(SheetKind kind, const GymSettings& gym) const;

    GymSource source_;
    std::vector<std::string> only_;
    std::string out_, paper_, unit_;
    int perPage_ = 2;
    bool landscape_ = false, portrait_ = false, blackAndWhite_ = false, largePrint_ = false,
         json_ = false;
};

} // namespace bw::cli
