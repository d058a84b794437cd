// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/formula.hpp"

#include "core/floor/portable_math.hpp"

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
// Ranges as their authors or later comparisons recommend them.
constexpr std::array<FormulaFacts, kCount<Formula>> kFacts{{
    {"Epley", "Epley B. Poundage chart. Boyd Epley Workout. Lincoln: Body Enterprises; 1985", 10},
    {"Brzycki", "Brzycki M. J Phys Educ Recreat Dance 1993;64(1):88-90", 10},
    {"Lombardi", "Lombardi VP. Beginning Weight Training. Dubuque: W.C. Brown; 1989", 10},
    {"Lander", "Lander J. NSCA J 1985;6(6):60-61", 10},
    {"Mayhew", "Mayhew JL et al. J Appl Sport Sci Res 1992;6(4):200-206", 15},
    {"O'Conner", "O'Conner B, Simmons J, O'Shea P. Weight Training Today. St Paul: West; 1989", 10},
    {"Wathan", "Wathan D. In: Baechle TR (ed), Essentials of Strength Training. 1994:435-446", 15},
}};

double equation(Formula f, double n) {
    switch (f) {
    case Formula::Epley: return 1 + n / 30;
    case Formula::Brzycki: return 36 / (37 - n);
    case Formula::Lombardi: return portableExp(0.10 * portableLog(n));
    case Formula::Lander: return 100 / (101.3 - 2.67123 * n);
    case Formula::Mayhew: return 100 / (52.2 + 41.9 * portableExp(-0.055 * n));
    case Formula::OConner: return 1 + 0.025 * n;
    case Formula::Wathan: return 100 / (48.8 + 53.8 * portableExp(-0.075 * n));
    }
    return 1;
}

// portableLog of what is not above 0 would be nonsense: then no n is large enough.
double inverse(Formula f, double share) {
    const auto decay = [&](double floor, double height, double rate) {
        const double left = (100 * share - floor) / height;
        return left > 0 ? -portableLog(left) / rate : kMostReps + 1;
    };
    switch (f) {
    case Formula::Epley: return 30 * (1 / share - 1);
    case Formula::Brzycki: return 37 - 36 * share;
    case Formula::Lombardi: return portableExp(-10 * portableLog(share));
    case Formula::Lander: return (101.3 - 100 * share) / 2.67123;
    case Formula::Mayhew: return decay(52.2, 41.9, 0.055);
    case Formula::OConner: return (1 / share - 1) / 0.025;
    case Formula::Wathan: return decay(48.8, 53.8, 0.075);
    }
    return 1;
}

constexpr int kTenths = static_cast<int>(kMostReps) * 10;

double disagreementAt(double n) {
    if (n <= 1) return 0;
    double sum = 0, squares = 0;
    for (std::size_t i = 0; i < kCount<Formula>; ++i) {
        const double m = equation(static_cast<Formula>(i), n);
        sum += m;
        squares += m * m;
    }
    constexpr double kHowMany = kCount<Formula>;
    const double mean = sum / kHowMany;
    return std::sqrt((squares - sum * mean) / (kHowMany - 1)) / mean;
}
} // namespace

const FormulaFacts& factsOf(Formula formula) { return kFacts[static_cast<std::size_t>(formula)]; }

double multiplier(Formula formula, double n) {
    return n <= 1 ? 1 : equation(formula, std::min(n, kMostReps));
}

std::optional<double> repsAt(Formula formula, double share) {
    if (share >= 1) return 1;
    constexpr double kLeastShare = 0.001; // far below what any of them gives for kMostReps
    if (share < kLeastShare) return std::nullopt;
    const double n = std::max(1.0, inverse(formula, share));
    if (n > kMostReps) return std::nullopt;
    return n;
}

double disagreement(double n) {
    static const auto table = [] {
        std::array<double, kTenths + 1> at{};
        for (int i = 0; i <= kTenths; ++i)
            at[static_cast<std::size_t>(i)] = disagreementAt(i / 10.0);
        return at;
    }();
    return table[static_cast<std::size_t>(std::clamp(std::lround(n * 10), 0L, long{kTenths}))];
}

} // namespace bw
