// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/flow/sheet_type.hpp"

#include <algorithm>

namespace bw {

SheetType sheetType(SheetReader reader, const SheetOptions& options) {
    const bool standing = reader == SheetReader::Standing;
    constexpr double kPointMm = 25.4 / 72, kLargest = 12.0;
    const double scale = paperScale(options);
    const auto points = [&](double usual, double large) {
        return kPointMm * scale * (options.largePrint ? std::max(large, kLargest) : usual);
    };
    return {points(22, 26),  points(13, 17),  points(standing ? 11 : 9.5, 13),
            points(8.5, 12), points(7.7, 12), 0.16 * scale};
}

} // namespace bw
