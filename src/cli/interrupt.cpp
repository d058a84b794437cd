// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/interrupt.hpp"

#include "cli/ending.hpp"

#include <csignal>

namespace bw::cli {

namespace {
volatile std::sig_atomic_t g_asked = 0;
void ask(int) { g_asked = 1; }
} // namespace

Interrupt::Interrupt() {
    struct sigaction action {};
    action.sa_handler = ask;
    action.sa_flags = static_cast<int>(SA_RESETHAND); // the second one does what it always does
    sigaction(SIGINT, &action, nullptr);
    sigaction(SIGTERM, &action, nullptr);
}

bool Interrupt::asked() { return g_asked != 0; }

void Interrupt::check() {
    if (g_asked) throw Ending(Exit::Interrupted, "Stopped as asked; nothing was changed.");
}

} // namespace bw::cli
