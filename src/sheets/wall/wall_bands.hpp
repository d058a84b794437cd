// SPDX-License-Identifier: GPL-3.0-or-later
// The strips above and below the rows of a wall sheet. Items stand relative to the strip's top and
// the left edge of the page's margin.
#pragma once
#include "sheets/band.hpp"
#include "sheets/wall/wall_content.hpp"
#include "sheets/wall/wall_type.hpp"

namespace bw {

// Month, title and format on the left, the stair on the right.
[[nodiscard]] Band titleBand(const WallContent& content, const WallType& type, double width,
                             const TypeRuler& ruler);
// One line for the second page and later ones.
[[nodiscard]] Band runningBand(const WallContent& content, const WallType& type, double width,
                               const TypeRuler& ruler);
// What the marks mean, the caution, and whose page this is; page from 1.
[[nodiscard]] Band footBand(const WallContent& content, const WallType& type, double width,
                            int page, int pages, const TypeRuler& ruler);
// The width below which the stair would need smaller type than the foot has.
[[nodiscard]] double stairWidth(const std::vector<WallWeek>& weeks, const WallType& type,
                                const TypeRuler& ruler);
// The weeks as treads, with their aim, reps in reserve and rounds below.
[[nodiscard]] Band stairBand(const std::vector<WallWeek>& weeks, const WallType& type, double width,
                             const TypeRuler& ruler);

} // namespace bw
