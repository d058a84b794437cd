// SPDX-License-Identifier: GPL-3.0-or-later
// How a command ends. Thrown as Ending when it can't go on; main says the text and exits with the
// code.
#pragma once
#include <stdexcept>
#include <string>

namespace bw::cli {

enum class Exit {
    Done = 0,
    Stops = 1,        // done, and a finding of level stop is among the findings
    BadInput = 2,     // bad usage or bad input
    BadFile = 3,      // a file could not be read or written
    Interrupted = 130 // Ctrl-C, as a shell counts it
};

class Ending : public std::runtime_error {
public:
    Ending(Exit code, const std::string& text) : std::runtime_error(text), code_(code) {}
    [[nodiscard]] Exit code() const { return code_; }

private:
    Exit code_;
};

} // namespace bw::cli
