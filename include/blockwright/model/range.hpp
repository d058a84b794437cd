// SPDX-License-Identifier: GPL-3.0-or-later
// From lo to hi, both included, lo never above hi.
#pragma once
#include "blockwright/model/result.hpp"

namespace bw {

template <class T> class Range {
public:
    Range() = default;
    explicit Range(T both) : lo_(both), hi_(both) {}
    static Result<Range> of(T lo, T hi) {
        if (hi < lo) return Message{"The first number must not be larger than the second.", {}};
        return Range(lo, hi);
    }
    // The two in either order.
    static Range between(T a, T b) { return a < b ? Range(a, b) : Range(b, a); }

    [[nodiscard]] T lo() const { return lo_; }
    [[nodiscard]] T hi() const { return hi_; }
    [[nodiscard]] bool single() const { return lo_ == hi_; }
    [[nodiscard]] bool holds(T x) const { return !(x < lo_) && !(hi_ < x); }
    bool operator==(const Range&) const = default;

private:
    Range(T lo, T hi) : lo_(lo), hi_(hi) {}
    T lo_{};
    T hi_{};
};

} // namespace bw
