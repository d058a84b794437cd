// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/quantity.hpp"

#include <cmath>

namespace bw {

namespace {
// NaN and what no 64-bit integer holds come out as -1, which every caller refuses.
std::int64_t scaled(double x, std::int64_t scale) {
    const double y = x * static_cast<double>(scale);
    return std::isfinite(y) && y > -1 && y < 9e18 ? std::llround(y) : -1;
}
} // namespace

Result<Mass> Mass::fromMicrograms(std::int64_t ug) {
    if (ug < 0 || ug > kMost) return Message{"A load must be from 0 to 2 000 kg.", {}};
    return Mass(ug);
}
Result<Mass> Mass::fromKg(double kg) { return fromMicrograms(scaled(kg, kMicrogramsPerKg)); }
Result<Mass> Mass::fromLb(double lb) { return fromMicrograms(scaled(lb, kMicrogramsPerLb)); }

Result<Share> Share::fromBillionths(std::int64_t n) {
    if (n < 0 || n > kWhole) return Message{"A share must be from 0 to 1.", {}};
    return Share(n);
}
Result<Share> Share::of(double part) { return fromBillionths(scaled(part, kWhole)); }

Result<Rate> Rate::fromBillionths(std::int64_t n) {
    if (n <= 0 || n > 1000 * kUnit) return Message{"A pace must be above 0 and at most 1 000.", {}};
    return Rate(n);
}
Result<Rate> Rate::of(double perUnit) { return fromBillionths(scaled(perUnit, kUnit)); }

} // namespace bw
