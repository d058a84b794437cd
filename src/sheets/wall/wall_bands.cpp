// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/wall/wall_bands.hpp"
#include "sheets/sheet_words.hpp"

#include <algorithm>

namespace bw {

namespace {
constexpr double kStairShare = 0.53; // of the page's width
using Look = PagePen::Look;

Band nameBand(const WallContent& content, const WallType& type, double width,
              const TypeRuler& ruler) {
    Band band;
    BandColumn column(band, ruler, width);
    const QString title = content.title.isEmpty() ? content.month : content.title;
    if (!content.title.isEmpty())
        column.add(content.month, {{0.5 * type.title}, Ink::Accent, Rank::Head});
    column.addFitted(title, {{type.title, Weight::Bold}, Ink::Text, Rank::Title}, 1.2 * type.small);
    if (!content.format.isEmpty()) {
        column.add(content.format + QStringLiteral(": ") + content.formatSentence +
                       QLatin1Char('.'),
                   {{type.small}, Ink::Quiet, Rank::Small});
    }
    return band;
}
} // namespace

Band titleBand(const WallContent& content, const WallType& type, double width,
               const TypeRuler& ruler) {
    const double gap = 1.2 * type.title;
    const double beside = kStairShare * width;
    if (stairWidth(content.weeks, type, ruler) > beside) { // one below the other
        Band band = nameBand(content, type, width, ruler);
        const Band stair = stairBand(content.weeks, type, width, ruler);
        PagePen(ruler, band.items).put(stair.items, {0, band.height + 0.3 * type.title});
        band.height += stair.height + 0.65 * type.title;
        return band;
    }
    Band band = nameBand(content, type, width - beside - gap, ruler);
    const Band stair = stairBand(content.weeks, type, beside, ruler);
    const double height = std::max(band.height, stair.height);
    PagePen(ruler, band.items).put(stair.items, {width - beside, height - stair.height});
    band.height = height + 0.35 * type.title;
    return band;
}

Band runningBand(const WallContent& content, const WallType& type, double width,
                 const TypeRuler& ruler) {
    Band band;
    BandColumn(band, ruler, width)
        .add(content.running, {{1.2 * type.small}, Ink::Accent, Rank::Head});
    band.height += 0.4 * type.small;
    return band;
}

Band footBand(const WallContent& content, const WallType& type, double width, int page, int pages,
              const TypeRuler& ruler) {
    Band band;
    PagePen pen(ruler, band.items);
    const Look small{{type.foot}, Ink::Quiet, Rank::Small};
    band.height = 1.6 * type.foot;
    pen.line({0, band.height}, {width, band.height}, type.hair, Ink::Hair);
    band.height += 0.4 * type.foot;
    BandColumn column(band, ruler, width);
    column.add(content.legend.join(QLatin1Char(' ')), small);
    column.add(cautionText(), {{type.foot}, Ink::Text, Rank::Small});
    column.space(0.25 * type.foot);
    const QString number = pageText(page, pages);
    const double numberWidth = ruler.width(number, small.type);
    pen.right(number, {width, band.height + 0.95 * type.foot}, width, small);
    BandColumn(band, ruler, width - numberWidth - 2 * type.foot).add(content.whose, small);
    return band;
}

} // namespace bw
