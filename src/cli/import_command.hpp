// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/command.hpp"

#include <string>

namespace bw {
struct Bundle;
}

namespace bw::cli {

// Bundles, or a table of results, into a gym file, all or nothing. For a bundle, a file that does
// not exist is made.
class ImportCommand : public Command {
public:
    CLI::App& declare(CLI::App& program) override;
    Exit run() override;

private:
    [[nodiscard]] Bundle intoNew() const;
    [[nodiscard]] Bundle intoOld() const;
    void tell(const Bundle& brought) const;

    std::vector<std::string> bundles_;
    std::string gym_, csv_;
    bool dry_ = false, json_ = false;
};

} // namespace bw::cli
