// SPDX-License-Identifier: GPL-3.0-or-later
// Playing classes from the terminal: on all cores, telling how far it is, heeding Ctrl-C.
#pragma once
#include "blockwright/floor/options.hpp"
#include "cli/terminal.hpp"

namespace bw::cli {

[[nodiscard]] int coresHere();
// Throws Ending when an end was asked for. The line must outlive it.
[[nodiscard]] FloorProgress telling(Progress& line);

} // namespace bw::cli
