// SPDX-License-Identifier: GPL-3.0-or-later
// One line of the Almanac's tables: what stands at its left, and one cell a month.
#pragma once
#include "blockwright/almanac/almanac.hpp"
#include "blockwright/rules/finding.hpp"

#include <QString>

namespace bw {

struct AlmanacFilter;

// What the rule book says of the line in the month on show.
struct AlmanacMark {
    Level level;
    QString text;
};

struct AlmanacLine {
    enum class Kind { Heading, Format, Figures, Exercise, Ratio };
    Kind kind = Kind::Exercise;
    QString name;
    std::optional<Month> last;                 // used; formats and exercises
    std::optional<ExerciseId> exercise;        // of an exercise
    std::vector<AlmanacCell> cells;            // formats and exercises
    std::vector<QString> figures;              // headings and figures; may be empty
    std::vector<std::optional<double>> ratios; // of a ratio; none: nothing to divide by
    LimitValue band;                           // of a ratio; not a band: the gym has none
    std::string rule;                          // of a ratio: the rule that holds it in its band
    std::optional<AlmanacMark> mark;
};

// Formats in their turn, then how many exercises were new.
[[nodiscard]] std::vector<AlmanacLine> turnLines(const Almanac& almanac);
// push : pull and knee : hip, with the gym's bands.
[[nodiscard]] std::vector<AlmanacLine> ratioLines(const Almanac& almanac, const GymSettings& gym);
// Those that fit, each pattern under its heading with its sets.
[[nodiscard]] std::vector<AlmanacLine> exerciseLines(const Almanac& almanac,
                                                     const AlmanacFilter& filter);
// How many of the lines are exercises.
[[nodiscard]] int countExercises(const std::vector<AlmanacLine>& lines);

} // namespace bw
