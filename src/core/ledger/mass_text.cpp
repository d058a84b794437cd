// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/mass_text.hpp"

#include "core/ledger/decimals.hpp"
#include "core/rules/wording.hpp"

namespace bw {

namespace {
double inUnit(double kg, MassUnit unit) {
    constexpr double kKgPerLb = 0.45359237;
    return unit == MassUnit::Kg ? kg : kg / kKgPerLb;
}

std::string withUnit(std::string number, MassUnit unit) {
    return std::move(number) + " " + std::string(wordOf(unit));
}
} // namespace

std::string massNumber(Mass mass, MassUnit unit) { return decimals(inUnit(mass.kg(), unit), 2); }
std::string massText(Mass mass, MassUnit unit) { return withUnit(massNumber(mass, unit), unit); }

std::string kgText(double kg, MassUnit unit) {
    const double value = inUnit(kg, unit);
    constexpr double kThreeFigures = 99.95;
    return withUnit(decimals(value, value < kThreeFigures ? 1 : 0), unit);
}

std::string rirText(double reps) { return numberText(reps); }

Message setText(const TopSet& set, MassUnit unit) {
    const std::string reps = std::to_string(set.reps);
    const std::string reserve = set.rir ? rirText(set.rir->reps()) : std::string{};
    if (!set.load && set.rir) return {"%1 repetitions with %2 in reserve", {reps, reserve}};
    if (!set.load) return {"%1 repetitions", {reps}};
    const std::string load = massText(*set.load, unit);
    if (set.rir) return {"%1 × %2 with %3 in reserve", {reps, load, reserve}};
    return {"%1 × %2", {reps, load}};
}

} // namespace bw
