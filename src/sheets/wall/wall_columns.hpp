// SPDX-License-Identifier: GPL-3.0-or-later
// Where the columns of a wall sheet stand, from left to right: section names (when in the margin),
// labels, names, doses, tempo, effort, the bracket and what it says. The same on every page.
#pragma once
#include "sheets/wall/wall_content.hpp"
#include "sheets/wall/wall_type.hpp"

namespace bw {

struct WallColumns {
    double left = 0, right = 0; // of the page
    double headWidth = 0;       // section names; 0: above their rows
    double label = 0;           // left edge
    double labelWidth = 0;
    double name = 0, nameWidth = 0;
    double doseRight = 0, doseWidth = 0;
    double tempoRight = 0, tempoWidth = 0; // widths 0 when stacked or not used
    double effortRight = 0, effortWidth = 0;
    double rowsRight = 0; // end of the rules between rows
    double bracket = 0, hook = 0;
    double note = 0, noteWidth = 0; // rounds and rest
};

[[nodiscard]] WallColumns wallColumns(const WallContent& content, const SheetOptions& options,
                                      const WallStyle& style, const WallType& type,
                                      const TypeRuler& ruler);
// Tempo and effort in one line, for below a dose.
[[nodiscard]] QString stackedText(const WallRow& row);
[[nodiscard]] QString continuedText(); // beside a section name that stands again
[[nodiscard]] QString tempoHead();
[[nodiscard]] QString effortHead();

} // namespace bw
