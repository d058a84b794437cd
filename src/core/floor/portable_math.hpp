// SPDX-License-Identifier: GPL-3.0-or-later
// exp, log and the normal quantile from additions, multiplications, divisions and square roots
// alone. IEEE 754 rounds those the same way everywhere, which the C library's exp and log do not,
// so a drawn class is the same to the last bit on every machine. Good to a few units in the last
// place.
#pragma once
#include <span>

namespace bw {

[[nodiscard]] double portableExp(double x);    // x within -700 to 700, else as at the nearer bound
[[nodiscard]] double portableLog(double x);    // x above 0, finite and normal
[[nodiscard]] double normalQuantile(double p); // p strictly between 0 and 1

// The same of each in place, several times as fast: the steps of one need not wait for those of
// another.
void portableExps(std::span<double> xs);
void normalQuantiles(std::span<double> ps);

} // namespace bw
