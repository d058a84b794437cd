// SPDX-License-Identifier: GPL-3.0-or-later
// Ctrl-C (and a polite kill) asks for an end: a command looks between two steps of its work and
// leaves nothing half done. A second Ctrl-C ends the program at once.
#pragma once

namespace bw::cli {

class Interrupt {
public:
    Interrupt();                       // from now on
    [[nodiscard]] static bool asked(); // for an end
    // Throws Ending when an end was asked for.
    static void check();
};

} // namespace bw::cli
