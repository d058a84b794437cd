// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/ledger/decimals.hpp"

#include <cmath>
#include <cstdint>

namespace bw {

std::string decimals(double value, int mostDigits) {
    std::int64_t scale = 1;
    for (int i = 0; i < mostDigits; ++i) scale *= 10;
    const std::int64_t n = std::llround(value * static_cast<double>(scale));
    std::string text = std::to_string(n / scale);
    if (n % scale == 0) return text;
    std::string part = std::to_string(scale + n % scale);
    part.front() = '.';
    part.erase(part.find_last_not_of('0') + 1);
    return text + part;
}

} // namespace bw
