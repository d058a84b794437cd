// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "cli/ending.hpp"

#include <memory>
#include <vector>

namespace CLI {
class App;
}

namespace bw::cli {

class Command {
public:
    virtual ~Command() = default;
    // Adds itself, with its options, to the program; the answer is its part of it.
    virtual CLI::App& declare(CLI::App& program) = 0;
    // After the options were read. Throws Ending.
    virtual Exit run() = 0;
};

// All commands, in the order of the help.
[[nodiscard]] std::vector<std::unique_ptr<Command>> allCommands();

} // namespace bw::cli
