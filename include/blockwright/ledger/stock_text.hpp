// SPDX-License-Identifier: GPL-3.0-or-later
// What a gym has of each load, as a coach lists it: the load, then how many of it.
//   8x2, 12x4, 16      two of 8, four of 12, one of 16
// Reading is lenient (spaces, ×, *, capitals, ";", "kg" or "lb"); writing has one form. A comma
// with a figure on either side could be of a decimal, so it is refused, not guessed at.
#pragma once
#include "blockwright/model/quantity.hpp"
#include "blockwright/model/vocabulary.hpp"

#include <map>
#include <string>
#include <string_view>

namespace bw {

// How many of each load.
using LoadStock = std::map<Mass, int>;

inline constexpr int kMostPieces = 1000; // of all loads together

// A load without a unit is in `usual`. Blank: none. Why() says what is understood.
[[nodiscard]] Result<LoadStock> parseStock(std::string_view text, MassUnit usual);
// "8×2, 12×4, 16": loads to two decimals of the unit, lightest first.
[[nodiscard]] std::string stockText(const LoadStock& stock, MassUnit unit);

[[nodiscard]] int piecesOf(const LoadStock& stock);

} // namespace bw
