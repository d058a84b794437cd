// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/pattern_kin.hpp"

#include <algorithm>
#include <array>

namespace bw::book {

namespace {
using enum Pattern;
using Pair = std::pair<Pattern, Pattern>;
constexpr std::array<Pair, 7> kNeighbours{{{Squat, Lunge},
                                           {Hinge, Lunge},
                                           {HorizontalPush, VerticalPush},
                                           {HorizontalPull, VerticalPull},
                                           {Carry, Locomotion},
                                           {Carry, TrunkStability},
                                           {Rotation, TrunkStability}}};
constexpr std::array<Pair, 6> kOpposites{{{HorizontalPush, HorizontalPull},
                                          {HorizontalPush, VerticalPull},
                                          {VerticalPush, HorizontalPull},
                                          {VerticalPush, VerticalPull},
                                          {Squat, Hinge},
                                          {Lunge, Hinge}}};

template <std::size_t N> bool listed(const std::array<Pair, N>& pairs, Pattern a, Pattern b) {
    return std::any_of(pairs.begin(), pairs.end(), [&](const Pair& p) {
        return p == Pair{a, b} || p == Pair{b, a};
    });
}

double oneWay(const Exercise& a, const Exercise& b, bool (*related)(Pattern, Pattern)) {
    constexpr std::int64_t kQuarter = Share::kWhole / 4;
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < kCount<Pattern>; ++i) {
        const auto q = static_cast<Pattern>(i);
        for (std::size_t j = 0; b.patterns.has(q) && j < kCount<Pattern>; ++j) {
            const auto p = static_cast<Pattern>(j);
            if (a.patterns[p].billionths() < kQuarter || !related(p, q)) continue;
            sum += b.patterns[q].billionths();
            break;
        }
    }
    return static_cast<double>(sum) / Share::kWhole;
}
} // namespace

bool neighbours(Pattern a, Pattern b) { return listed(kNeighbours, a, b); }
bool opposites(Pattern a, Pattern b) { return listed(kOpposites, a, b); }
bool sameOrNeighbours(Pattern a, Pattern b) { return a == b || neighbours(a, b); }

double relatedShare(const Exercise& a, const Exercise& b, bool (*related)(Pattern, Pattern)) {
    return std::max(oneWay(a, b, related), oneWay(b, a, related));
}

} // namespace bw::book
