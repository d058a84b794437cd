// SPDX-License-Identifier: GPL-3.0-or-later
// What may be chosen before a sheet is laid out. The same choices serve preview, printer, PDF and
// terminal.
#pragma once
#include "blockwright/model/gym.hpp"

#include <QSizeF>
#include <QString>

#include <optional>

namespace bw {

enum class SheetKind { Wall, Cards, Notes, Kit, Talk };
enum class Orientation { Portrait, Landscape };

struct SheetOptions {
    Paper paper = Paper::A4;
    Orientation orientation = Orientation::Portrait;
    bool blackAndWhite = false; // one ink, no greys, no tints
    bool largePrint = false;    // nothing below 12 pt, what is read from afar larger still
    MassUnit massUnit = MassUnit::Kg;
    int cardsPerPage = 2;                           // 2 or 4; fewer where a card would not fit
    std::optional<Date> printedOn;                  // in the foot; none: not said
    QString family = QStringLiteral("DejaVu Sans"); // the system's sans when it is not installed
};

// Paper and mass unit as the gym has them; cards on their side, where two have the most room.
[[nodiscard]] SheetOptions usualOptions(const GymSettings& gym, SheetKind kind);
// Width and height in millimetres, turned as asked.
[[nodiscard]] QSizeF paperSize(const SheetOptions& options);
// White border in millimetres; printers reach within 5 mm of the edge (common practice, no source).
[[nodiscard]] double paperMargin(const SheetOptions& options);
// 1 on A4 and Letter, the root of 2 on A3: what fills a page there fills it here.
[[nodiscard]] double paperScale(const SheetOptions& options);

} // namespace bw
