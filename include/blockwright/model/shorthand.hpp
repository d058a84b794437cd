// SPDX-License-Identifier: GPL-3.0-or-later
// Doses, rounds, rests and efforts as coaches write them on a board.
//   dose    5   5-10   30 s   30-45 s   10/side   15 m   5 cal
//   rounds  3   2-3            rest  90 s   60-120 s   2 min   1:30-2:00            effort  2   1-3
// Reading is lenient (spaces, capitals, "to" or a dash, a decimal comma); writing has one form.
#pragma once
#include "blockwright/model/dose.hpp"
#include "blockwright/model/effort.hpp"
#include "blockwright/model/quantity.hpp"

#include <string>
#include <string_view>

namespace bw {

struct DoseText {
    Dose dose;
    bool perSide = false; // "/side" was written
};

// `usual` is what a bare number means for this exercise. Why() says what is understood.
[[nodiscard]] Result<DoseText> parseDose(std::string_view text, Measure usual);
[[nodiscard]] Result<Range<int>> parseRounds(std::string_view text);  // 1 to 20
[[nodiscard]] Result<Range<Millis>> parseRest(std::string_view text); // 0 to 30 min; bare: seconds
[[nodiscard]] Result<Range<Millis>> parseBudget(std::string_view text); // 0 to 5 h; bare: minutes
[[nodiscard]] Result<Range<Rir>> parseEffort(std::string_view text);    // 0 to 10

// "5–10", "10/side", "30–45 s", "15 m", "5 cal"; sides says whether "/side" is written. Where a
// bare number usually means something else, "5–10 reps"; so parseDose(doseText(d, s, u), u) gives d
// again.
[[nodiscard]] std::string doseText(const Dose& dose, Sides sides, Measure usual = Measure::Reps);
[[nodiscard]] std::string roundsText(Range<int> rounds); // "2–3"
[[nodiscard]] std::string restText(Range<Millis> rest);  // "60–120 s", "2–3 min"; 0: "no rest"
[[nodiscard]] std::string effortText(Range<Rir> effort); // "1–3"
[[nodiscard]] std::string clockText(Millis t);           // "26:10"; an hour and more "1:02:00"

} // namespace bw
