// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace bw {

// A limit of the rule book: one number, or a band.
struct LimitValue {
    double lo = 0;
    double hi = 0; // equal to lo for a single number
    bool band = false;
    bool operator==(const LimitValue&) const = default;
};

} // namespace bw
