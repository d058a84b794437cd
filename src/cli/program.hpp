// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace bw::cli {

// The whole of bwright; the answer is the exit code.
[[nodiscard]] int runProgram(int argc, char* argv[]);

} // namespace bw::cli
