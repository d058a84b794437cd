// SPDX-License-Identifier: GPL-3.0-or-later
// How long the Almanac of ten years takes: 120 months of 24 slots, 60 exercises new in each year.
// Prints the median; ends with 1 when it is more than five milliseconds.
#include "blockwright/almanac/almanac.hpp"
#include "support/fixtures.hpp"

#include <algorithm>
#include <chrono>
#include <cstdio>

using namespace bw;
using namespace bw::test;

namespace {
constexpr double kMostMilliseconds = 5.0;
constexpr int kYears = 10, kEachYear = 60, kGroups = 12, kRuns = 200;

std::string numbered(int n) { return "exercise-number-" + std::to_string(n); }

Gym tenYears() {
    Gym gym;
    for (int n = 0; n < kYears * kEachYear; ++n)
        gym.shelf.put(exercise(numbered(n), static_cast<Pattern>(n % 12)));
    for (int m = 0; m < kYears * 12; ++m) {
        std::vector<Group> groups;
        for (int g = 0; g < kGroups; ++g) {
            const int at = m / 12 * kEachYear + (m * 5 + 2 * g) % kEachYear;
            groups.push_back(group(
                rounds(2, 3), secondsRange(60, 90),
                {slot(numbered(at), reps(5, 5)), slot(numbered(at / 2 * 2 + 1), reps(12, 14))}));
            groups.back().slots[0].main = g < 3;
        }
        Block b = block(month("2017-01").plus(m).text(),
                        {section(SectionKind::Strength, std::move(groups))});
        b.format = static_cast<Format>(m % 5);
        gym.put(std::move(b));
    }
    return gym;
}
} // namespace

int main() {
    const Gym gym = tenYears();
    std::vector<double> took;
    std::size_t rows = 0;
    for (int i = 0; i < kRuns; ++i) {
        const auto start = std::chrono::steady_clock::now();
        rows = almanac(gym, {0, {}}).rows.size();
        took.push_back(
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start)
                .count());
    }
    std::nth_element(took.begin(), took.begin() + kRuns / 2, took.end());
    std::printf("120 months, %zu exercises: %.2f ms\n", rows, took[kRuns / 2]);
    return took[kRuns / 2] <= kMostMilliseconds ? 0 : 1;
}
