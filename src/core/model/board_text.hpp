// SPDX-License-Identifier: GPL-3.0-or-later
// Reads what coaches write on a board: one amount or two, each with or without a unit, and a remark
// on sides at the end. Says nothing of what the amounts are for: see shorthand.hpp.
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace bw::board {

enum class Unit { None, Rep, Second, Minute, Hour, Metre, Kilometre, Kcal, Round, Rir, Rpe };

// number / 10^decimals of the unit; at most eleven figures in all, so that no later sum overflows.
struct Amount {
    std::int64_t number = 0;
    int decimals = 0;
    Unit unit = Unit::None;
    bool clock = false; // written 1:30, kept as seconds

    // Whole `grains` of the unit, with so many grains to one unit; none when they are not whole.
    [[nodiscard]] std::optional<std::int64_t> grains(std::int64_t perUnit) const;
};

struct Span {
    Amount lo, hi; // a lone amount is both; an amount without a unit takes its neighbour's
    bool perSide = false;
};

// None unless the whole text is understood. A first number above the second is for the caller to
// judge.
[[nodiscard]] std::optional<Span> readSpan(std::string_view text);

// Small letters, plain characters, single spaces inside and none around.
[[nodiscard]] std::string plainWords(std::string_view text);

// Without blanks and tabs around.
[[nodiscard]] std::string_view trimmed(std::string_view text);

// Small letters, "x" for every times sign, a plain blank for every kind of one.
[[nodiscard]] std::string plainSigns(std::string_view text);

// What was typed, for a sentence: at most 40 characters of it.
[[nodiscard]] std::string quoted(std::string_view text);

} // namespace bw::board
