// SPDX-License-Identifier: GPL-3.0-or-later
// The section's time against its plan: large figures, a word, and a bar with the planned end
// marked. Running over shows as a triangle, a word and a hatched piece of bar, not as a colour.
#pragma once
#include "blockwright/model/quantity.hpp"
#include "sheets/page_pen.hpp"

#include <optional>

namespace bw {

struct BoardTime {
    std::optional<Millis> elapsed; // none: the section was not started
    bool paused = false;
};

struct ClockWords {
    QString figures; // "12:34"
    QString plan;    // "planned 24:00"; empty where nothing is planned
    QString state;   // "11:26 left"
    bool over = false;
};
// Seconds that have passed count.
[[nodiscard]] ClockWords clockWords(Millis planned, const BoardTime& time);

// `right` is the right end of the figures' baseline; what is written keeps within `room` to its
// left. Gives how much of that was used. `least` is the em of what is read from afar.
double putClock(PagePen& pen, const ClockWords& words, const BoardTime& time, QPointF right,
                double room, double least);
void putClockBar(PagePen& pen, Millis planned, const BoardTime& time, const QRectF& bar);

} // namespace bw
