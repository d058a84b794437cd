// SPDX-License-Identifier: GPL-3.0-or-later
// The months side by side: which exercise was used when, as a main lift or not, and for how many
// months in a row; the formats in their turn; what was new.
//
// In a row means calendar months: one without a block, or without the exercise, starts the count
// again. The count looks back past the first month shown, to the gym's first. New is what no
// earlier month used; in the gym's first month nothing is.
#pragma once
#include "blockwright/balance/balance.hpp"

#include <optional>
#include <vector>

namespace bw {

struct AlmanacOptions {
    // At most so many, none before the gym's first; 0: all of them, up to 1 200.
    int months = 12;
    std::optional<Month> until; // the last one; none: the latest that the gym has
};

struct AlmanacCell {
    bool main = false;  // a main lift in at least one slot
    bool fresh = false; // new to this gym
    int streak = 0;     // months in a row it was used, this one included; 0: not used
    int mainStreak = 0; // months in a row it was a main lift; 0: it is none

    [[nodiscard]] bool used() const { return streak > 0; }
    bool operator==(const AlmanacCell&) const = default;
};

struct AlmanacRow {
    ExerciseId exercise;
    Shelf::Entry entry;             // null when the Shelf does not have it
    Month first, last;              // used; of all months up to the last one shown
    std::vector<AlmanacCell> cells; // one a month shown

    [[nodiscard]] std::optional<Pattern> pattern() const; // its largest share; none without any
    [[nodiscard]] const std::string& name() const;        // the id when the Shelf has no name
    [[nodiscard]] bool usedInView() const;
};

struct AlmanacMonth {
    Month month;
    Gym::BlockPtr block;           // null: the gym has no block then
    std::vector<ExerciseId> fresh; // new to this gym, by id
    Balance balance;               // of the block; all 0 without one
};

struct AlmanacFormat {
    Format format;
    std::optional<Month> last; // of all months up to the last one shown
    std::vector<int> streaks;  // one a month shown: in a row, 0 when the month took another
};

struct Almanac {
    std::vector<AlmanacMonth> months;   // oldest first, those without a block included
    std::vector<AlmanacFormat> formats; // all, in the order of the vocabulary
    // Every exercise used up to the last month, also when not in the months shown; by pattern (in
    // the order of the vocabulary, none last), then name.
    std::vector<AlmanacRow> rows;
    Balance window; // of the last months that the gym looks at together, ending with the last shown
};

// Empty for a gym without months. Open slots are no use of anything.
[[nodiscard]] Almanac almanac(const Gym& gym, const AlmanacOptions& options = {});

} // namespace bw
