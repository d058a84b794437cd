// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace bw {

// The whole of the window program; the answer is the exit code.
[[nodiscard]] int runDesk(int argc, char* argv[]);

} // namespace bw
