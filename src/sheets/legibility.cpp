// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/legibility.hpp"

#include <cmath>
#include <numbers>

namespace bw {

namespace {
// Millimetres of letter for each metre of distance.
double perMetre() { return 1000.0 * std::tan(5.0 / 60.0 * std::numbers::pi / 180.0); }
} // namespace

double thresholdHeight(double metres) { return metres * perMetre(); }

double readableFrom(double capHeight, double times) { return capHeight / (perMetre() * times); }

} // namespace bw
