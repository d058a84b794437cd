// SPDX-License-Identifier: GPL-3.0-or-later
// Every sum that a stock of plates makes, each with as few plates as it takes.
#pragma once
#include "blockwright/model/quantity.hpp"

#include <map>
#include <vector>

namespace bw {

struct PlateSum {
    std::int64_t micrograms = 0;
    std::vector<Mass> plates; // heaviest first
};

// Of at most so many plates of each mass; sums up to `most`, lightest first, 0 among them. Of
// equally few plates, the heavier ones. Exact; only a stock that makes more than kMostSums of them
// loses its lightest sizes.
inline constexpr std::size_t kMostSums = 20'000;
[[nodiscard]] std::vector<PlateSum> plateSums(const std::map<Mass, int>& stock, Mass most);

} // namespace bw
