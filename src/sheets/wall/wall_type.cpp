// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/wall/wall_type.hpp"
#include "sheets/legibility.hpp"

#include <algorithm>

namespace bw {

namespace {
constexpr double kWallMetres = 3.0; // from the wall to the member
constexpr double kA3Cap = 9.0;      // mm, what the larger paper is hung up for
constexpr double kPointMm = 25.4 / 72;
constexpr double kFootPoints = 7.7, kSmallPoints = 9.5, kLargePoints = 12.0;

double bareCap() { return thresholdHeight(kWallMetres) * kBareReading; }
} // namespace

WallBounds wallBounds(const SheetOptions& options, const TypeRuler& ruler) {
    double cap = options.paper == Paper::A3 ? kA3Cap : bareCap();
    if (options.largePrint) cap *= 1.4;
    return {ruler.emOfCap(cap), ruler.emOfCap(2.2 * cap)};
}

WallType wallType(const SheetOptions& options, const WallStyle& style, const TypeRuler& ruler) {
    const double scale = paperScale(options);
    const auto points = [&](double usual) {
        return kPointMm *
               (options.largePrint ? std::max(kLargePoints, usual * scale) : usual * scale);
    };
    WallType type;
    type.floor = ruler.emOfCap(bareCap());
    type.key = style.em;
    type.second = std::max(0.6 * style.em, ruler.emOfCap(thresholdHeight(kWallMetres)));
    type.small = points(kSmallPoints);
    type.foot = points(kFootPoints);
    type.minutes = std::max(type.small, 0.7 * type.second);
    type.hint = std::max(type.small, 0.4 * style.em);
    type.title = 9.0 * scale;
    type.hair = 0.16 * scale;
    return type;
}

} // namespace bw
