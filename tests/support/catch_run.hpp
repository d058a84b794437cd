// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Runs the tests linked into this program; the exit code is the number of failed ones.
int runCatch(int argc, char* argv[]);
