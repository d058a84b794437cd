// SPDX-License-Identifier: GPL-3.0-or-later
// The one way to include Catch2 here: version 2 and 3 keep their headers in different places.
#pragma once
#ifdef BW_CATCH3
#include <catch2/catch_all.hpp>
using Catch::Approx;
#else
#include <catch2/catch.hpp>
#endif
