// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/catch_run.hpp"

int main(int argc, char* argv[]) { return runCatch(argc, argv); }
