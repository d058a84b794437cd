// SPDX-License-Identifier: GPL-3.0-or-later
// What the rules on balance share: a ratio of two tallies, or a share of all sets, that is held in
// one band for the month and in another for the window. Rules that use it have the limits "block"
// and "window".
#pragma once
#include "blockwright/rules/rule.hpp"

namespace bw::book {

struct Scale {
    Ratio (*of)(const Balance&);
    Ratio (*by)(const Exercise&); // what one set of an exercise puts over and under the line
    bool share = false;           // what is over the line is part of what is under it
    Level level = Level::Look;    // of the month; the window is only noted
};

// Sentences; %1 is the measured figure, %2 the end of the band that is missed, %3 the months of the
// window. A sentence that is null is not said: another rule says it.
struct ScaleWords {
    const char *low, *high;
    const char *windowLow, *windowHigh;
    const char *nothingOver, *nothingUnder; // in the month, instead of the figure
    const char *more, *fewer;               // advice when the program knows nothing to do
};

// The month first; only when it keeps to its band, the window with at least one month before.
// `about` tells apart several scales of one rule.
void judgeScale(const Facts& facts, Verdict& verdict, const Scale& scale, const ScaleWords& words,
                std::string_view about = {});

// Ways to bring a scale to its band, best first, at most two: an open slot filled, a round more or
// less, an exercise exchanged. Each is known to help.
struct Leaning {
    const Scale& scale;
    Ratio now;        // of the month, or of the window
    double part = 1;  // of the averaged weeks that are this month's
    LimitValue band;  // of the ratio
    bool more = true; // over the line
};
[[nodiscard]] std::vector<Remedy> straighten(const Facts& facts, const Leaning& leaning);

// Can an open slot take what is missing?
[[nodiscard]] bool openSlotCould(const Facts& facts, const Leaning& leaning);

// "1.25", "12.5 %".
[[nodiscard]] std::string scaleText(double value, bool share);

} // namespace bw::book
