// SPDX-License-Identifier: GPL-3.0-or-later
// The slow half of Catch2 2 is compiled here, once.
#include "support/catch_run.hpp"

#ifdef BW_CATCH3
#include <catch2/catch_session.hpp>
#else
#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>
#endif

int runCatch(int argc, char* argv[]) { return Catch::Session().run(argc, argv); }
