// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/sheet_options.hpp"

#include <numbers>

namespace bw {

SheetOptions usualOptions(const GymSettings& gym, SheetKind kind) {
    SheetOptions options;
    options.paper = gym.paper;
    options.massUnit = gym.massUnit;
    if (kind == SheetKind::Cards) options.orientation = Orientation::Landscape;
    return options;
}

namespace {
QSizeF upright(Paper paper) {
    switch (paper) {
    case Paper::A4: return {210.0, 297.0}; // ISO 216
    case Paper::A3: return {297.0, 420.0};
    case Paper::Letter: break;
    }
    return {215.9, 279.4}; // 8.5 by 11 in
}
} // namespace

QSizeF paperSize(const SheetOptions& options) {
    const QSizeF size = upright(options.paper);
    return options.orientation == Orientation::Portrait ? size : size.transposed();
}

double paperMargin(const SheetOptions& options) { return 12.0 * paperScale(options); }

double paperScale(const SheetOptions& options) {
    return options.paper == Paper::A3 ? std::numbers::sqrt2 : 1.0;
}

} // namespace bw
