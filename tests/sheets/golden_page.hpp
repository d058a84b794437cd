// SPDX-License-Identifier: GPL-3.0-or-later
// Pages kept as small grey pictures, to see that nothing on them moves unasked. Rasterisers need
// not draw the same greys, so pages are compared as a reader would: greys averaged over 2 by 2
// dots, and within each patch of the page the share of those that differ clearly.
#pragma once
#include "sheets/page.hpp"

#include <QImage>

namespace bw::test {

inline constexpr double kGoldenDpi = 60;
// Largest share of a patch that may differ. Qt 6.4 and 6.8 make the same pages, dot by dot; a line
// of text that is gone makes more than twice as much.
inline constexpr double kMostAstray = 0.02;

// The page in 16 greys.
[[nodiscard]] QImage greyPage(const Layout& layout, int page);

struct PageDifference {
    double worst = 1; // share of the patch that differs most; 1 for pictures of unlike size
    QRect where;      // that patch, in dots of the page
    QImage picture;   // the kept page pale, what differs dark, a frame around the patch
};
[[nodiscard]] PageDifference comparePages(const QImage& kept, const QImage& now);

// Empty when the page looks as tests/sheets/golden/NAME.png. Else what differs, and where the
// page as it is now and a picture of the difference were written. With BLOCKWRIGHT_WRITE=1 the
// kept page is written anew instead.
[[nodiscard]] std::string checkedAgainstGolden(const std::string& name, const Layout& layout,
                                               int page);

} // namespace bw::test
