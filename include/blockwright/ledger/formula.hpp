// SPDX-License-Identifier: GPL-3.0-or-later
// The seven published equations from a load and the repetitions it can be lifted for to the load
// that can be lifted once. n is repetitions done plus repetitions in reserve, so it may be
// fractional. Up to n = 1 the load itself is the answer, whatever the equation says there.
//   oneRepMax(Formula::Epley, 100, 5) == 116.67    loadFor(Formula::Epley, 116.67, 5) == 100
#pragma once
#include "blockwright/model/vocabulary.hpp"

#include <optional>

namespace bw {

enum class Formula { Epley, Brzycki, Lombardi, Lander, Mayhew, OConner, Wathan };
template <> struct Spelling<Formula> {
    static constexpr std::array<std::string_view, 7> words{
        "epley", "brzycki", "lombardi", "lander", "mayhew", "oconner", "wathan"};
};

struct FormulaFacts {
    std::string_view name;   // "O'Conner"
    std::string_view source; // where it was published
    double mostReps;         // beyond this n it is outside its range
};
[[nodiscard]] const FormulaFacts& factsOf(Formula formula);

// Above this n there is no answer: two of the equations have a pole near 37.
inline constexpr double kMostReps = 30;

// How many times the load the one that can be lifted once is. n at most kMostReps.
[[nodiscard]] double multiplier(Formula formula, double n);
[[nodiscard]] inline double oneRepMax(Formula f, double load, double n) {
    return load * multiplier(f, n);
}
[[nodiscard]] inline double loadFor(Formula f, double oneRepMax, double n) {
    return oneRepMax / multiplier(f, n);
}
// How often a share of the one that can be lifted once can be lifted: 1 or more. None above
// kMostReps.
[[nodiscard]] std::optional<double> repsAt(Formula formula, double share);

// How far the seven disagree at n: the standard deviation of their answers over the mean. 0 up to
// n = 1, about 0.02 to 0.03 from 2 to 10, then growing fast. To the nearest tenth of n.
[[nodiscard]] double disagreement(double n);

} // namespace bw
