// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>

namespace bw {

// Of a number not below 0, without zeros at the end: "62.5", "1.25", "20".
[[nodiscard]] std::string decimals(double value, int mostDigits);

} // namespace bw
