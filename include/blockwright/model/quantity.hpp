// SPDX-License-Identifier: GPL-3.0-or-later
// Quantities as integers in their smallest unit, so that sums are exact and a round trip loses
// nothing.
//   Millis  milliseconds                  Mass   micrograms (1 lb = 453 592 370 ug exactly, 1959)
//   Share   billionths of a whole, 0 to 1 Rate   billionths of a unit, above 0
#pragma once
#include "blockwright/model/result.hpp"

#include <chrono>
#include <compare>
#include <cstdint>

namespace bw {

using Millis = std::chrono::milliseconds;

// Mass of a load, 0 to 2 000 kg.
class Mass {
public:
    static constexpr std::int64_t kMicrogramsPerKg = 1'000'000'000;
    static constexpr std::int64_t kMicrogramsPerLb = 453'592'370;
    static constexpr std::int64_t kMost = 2'000 * kMicrogramsPerKg;

    constexpr Mass() = default;
    static Result<Mass> fromMicrograms(std::int64_t ug);
    static Result<Mass> fromKg(double kg); // to the nearest microgram
    static Result<Mass> fromLb(double lb);

    [[nodiscard]] constexpr std::int64_t micrograms() const { return ug_; }
    [[nodiscard]] double kg() const { return static_cast<double>(ug_) / kMicrogramsPerKg; }
    [[nodiscard]] double lb() const { return static_cast<double>(ug_) / kMicrogramsPerLb; }
    auto operator<=>(const Mass&) const = default;

private:
    explicit constexpr Mass(std::int64_t ug) : ug_(ug) {}
    std::int64_t ug_ = 0;
};

// A part of a whole: 0 to 1, kept in billionths.
class Share {
public:
    static constexpr std::int64_t kWhole = 1'000'000'000;
    constexpr Share() = default;
    static Result<Share> fromBillionths(std::int64_t n);
    static Result<Share> of(double part);
    static constexpr Share whole() { return Share(kWhole); }

    [[nodiscard]] constexpr std::int64_t billionths() const { return n_; }
    [[nodiscard]] double part() const { return static_cast<double>(n_) / kWhole; }
    auto operator<=>(const Share&) const = default;

private:
    explicit constexpr Share(std::int64_t n) : n_(n) {}
    std::int64_t n_ = 0;
};

// A pace such as seconds per repetition, metres per second or kilocalories per minute:
// above 0, at most 1 000, kept in billionths.
class Rate {
public:
    static constexpr std::int64_t kUnit = 1'000'000'000;
    static Result<Rate> fromBillionths(std::int64_t n);
    static Result<Rate> of(double perUnit);

    [[nodiscard]] constexpr std::int64_t billionths() const { return n_; }
    [[nodiscard]] double value() const { return static_cast<double>(n_) / kUnit; }
    auto operator<=>(const Rate&) const = default;

private:
    explicit constexpr Rate(std::int64_t n) : n_(n) {}
    std::int64_t n_ = kUnit;
};

} // namespace bw
