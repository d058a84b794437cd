// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/program.hpp"

int main(int argc, char* argv[]) { return bw::cli::runProgram(argc, argv); }
