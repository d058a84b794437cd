// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/ledger/plates.hpp"

#include <algorithm>

namespace bw {

namespace {
// How a sum is made: so many plates in all, of which `used` of the last size; the rest is the way
// of another sum without that size.
struct Way {
    int plates = 0, used = 0;
};
using Ways = std::map<std::int64_t, Way>;

bool better(const Way& a, const Way& b) {
    return a.plates != b.plates ? a.plates < b.plates : a.used < b.used;
}

// All that `before` makes, with up to `count` more plates of one size. Stops once they are too
// many.
Ways withSize(const Ways& before, std::int64_t size, int count, std::int64_t most) {
    Ways after;
    for (const auto& [sum, way] : before)
        for (int n = 0; n <= count && sum + n * size <= most; ++n) {
            const Way found{way.plates + n, n};
            const auto [it, fresh] = after.emplace(sum + n * size, found);
            if (!fresh && better(found, it->second)) it->second = found;
            if (after.size() > kMostSums) return after;
        }
    return after;
}
} // namespace

std::vector<PlateSum> plateSums(const std::map<Mass, int>& stock, Mass most) {
    std::vector<Mass> sizes;
    std::vector<Ways> layers{{{0, {}}}}; // after each size, heaviest first
    const std::vector<std::pair<Mass, int>> heaviestFirst(stock.rbegin(), stock.rend());
    for (const auto& [size, pieces] : heaviestFirst) {
        if (size.micrograms() == 0 || pieces < 1) continue;
        Ways next = withSize(layers.back(), size.micrograms(), pieces, most.micrograms());
        if (next.size() > kMostSums) break;
        layers.push_back(std::move(next));
        sizes.push_back(size);
    }
    std::vector<PlateSum> out;
    for (const auto& last : layers.back()) {
        PlateSum made{last.first, {}};
        std::int64_t left = last.first;
        for (std::size_t layer = sizes.size(); layer > 0; --layer) {
            const int used = layers[layer].at(left).used;
            left -= used * sizes[layer - 1].micrograms();
            made.plates.insert(made.plates.end(), static_cast<std::size_t>(used), sizes[layer - 1]);
        }
        std::reverse(made.plates.begin(), made.plates.end());
        out.push_back(std::move(made));
    }
    return out;
}

} // namespace bw
