// SPDX-License-Identifier: GPL-3.0-or-later
// A ratio over the months as a line, painted cell by cell: 1 in the middle, twice as much as far
// above as half as much is below.
#pragma once
#include "desk/almanac/almanac_line.hpp"
#include "desk/frame/theme.hpp"

#include <QFont>
#include <QRect>

class QPainter;

namespace bw {

// Height of a ratio in a cell: 0 at the top (2.5 and more), 1 at the bottom (0.4 and less).
[[nodiscard]] double ratioHeight(double ratio);

// Where cells are narrow, the figure stands only beside what lies outside its band or is `marked`.
void paintRatio(QPainter& painter, const QRect& cell, const QFont& font, const AlmanacLine& line,
                std::size_t column, bool marked, const Inks& inks);

} // namespace bw
