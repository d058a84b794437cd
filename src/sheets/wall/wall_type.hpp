// SPDX-License-Identifier: GPL-3.0-or-later
// The type scale of a wall sheet and how its pages may be arranged. All in millimetres; an em is
// the size of the type, its capitals are about 0.73 of it.
#pragma once
#include "sheets/band.hpp"
#include "sheets/sheet_options.hpp"

namespace bw {

// Bounds of the size of names and doses.
struct WallBounds {
    double floor = 0;   // below it a page more is taken
    double ceiling = 0; // above it the sheet shouts
};
[[nodiscard]] WallBounds wallBounds(const SheetOptions& options, const TypeRuler& ruler);

struct WallStyle {
    double em = 0;            // of names and doses
    bool stacked = false;     // tempo and effort below the dose, else in columns of their own
    bool marginHeads = false; // section names in the margin beside their rows, else above them
    bool hints = false;       // easier and harder below the name
    bool plain = false; // dose on a line of its own: for names and doses that leave no other way
};

struct WallType {
    double floor = 0;   // ems from here; the least for a name too long for two lines
    double key = 0;     // names and doses
    double second = 0;  // rounds, rest, tempo, effort, section names
    double hint = 0;    // easier and harder
    double small = 0;   // stair, column heads
    double minutes = 0; // of a section
    double foot = 0;
    double title = 0;
    double hair = 0; // width of a thin line

    [[nodiscard]] double rowPad() const { return 0.08 * key; } // above and below the text of a row
    [[nodiscard]] double groupGap() const { return 0.5 * key; }
    [[nodiscard]] double sectionGap() const { return 0.6 * key; }
};
[[nodiscard]] WallType wallType(const SheetOptions& options, const WallStyle& style,
                                const TypeRuler& ruler);

} // namespace bw
