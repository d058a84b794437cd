// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as what a coach types into a cell: dose, rounds, rest, budget, effort, tempo, lifted
// sets. The first byte chooses what a bare number means. What is understood is written in one form,
// and that form is understood as the same.
#include "blockwright/ledger/set_shorthand.hpp"
#include "blockwright/model/shorthand.hpp"
#include "blockwright/model/tempo.hpp"
#include "law.hpp"

namespace bw::fuzz {

namespace {
constexpr Measure kMeasures[] = {Measure::Reps, Measure::Seconds, Measure::Metres, Measure::Kcal};

void dose(std::string_view text, Measure usual) {
    const auto read = parseDose(text, usual);
    if (!read) return;
    const Sides sides = read->perSide ? Sides::Each : Sides::Both;
    const auto again = parseDose(doseText(read->dose, sides, usual), usual);
    law(again && again->dose == read->dose && again->perSide == read->perSide,
        "a dose is understood as it is written");
}

template <class Parse, class Text>
void same(std::string_view typed, Parse parse, Text text, const char* sentence) {
    const auto read = parse(typed);
    if (!read) return;
    const auto again = parse(text(*read));
    law(again && *again == *read, sentence);
}

// Loads are written to two decimals, so only what is written twice is the same.
void sets(std::string_view typed, MassUnit unit) {
    const auto read = parseSets(typed, unit);
    if (!read) return;
    law(read->size() <= kMostSetsOfDay, "no more sets than are promised");
    const std::string written = setsText(*read, unit);
    const auto again = parseSets(written, unit);
    law(again && again->size() == read->size(), "sets are understood as they are written");
    law(setsText(*again, unit) == written, "sets are written the same again");
}
} // namespace

void readAny(std::string_view text, std::uint8_t choice) {
    dose(text, kMeasures[choice % std::size(kMeasures)]);
    same(text, parseRounds, roundsText, "rounds are understood as they are written");
    same(text, parseRest, restText, "a rest is understood as it is written");
    same(text, parseEffort, effortText, "an effort is understood as it is written");
    same(
        text, Tempo::parse, [](const Tempo& t) { return t.text(); }, "so is a tempo");
    if (const auto budget = parseBudget(text))
        law(budget->lo() >= Millis{0} && budget->hi() <= Millis{5 * 3'600'000}, "0 to 5 h");
    sets(text, choice % 2 == 0 ? MassUnit::Kg : MassUnit::Lb);
}

} // namespace bw::fuzz

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size > 0) bw::fuzz::readAny(bw::fuzz::textOf(data + 1, size - 1), data[0]);
    return 0;
}
