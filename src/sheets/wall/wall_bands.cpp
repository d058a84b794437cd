// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/wall/wall_bands.hpp"
#include "sheets/sheet_words.hpp"

#include <algorithm>

namespace bw {

namespace {
constexpr double kStairShare = 0.53; // of the page's width
using Look = PagePen::Look;

// Writes lines one below the other; y is the top of the next one.
class Column {
public:
    Column(Band& band, const TypeRuler& ruler, double width)
        : band_(band), pen_(ruler, band.items), width_(width) {}
    void add(const QString& text, const Look& look) {
        for (const QString& line : lines(text, look.type)) {
            pen_.left(line, {0, band_.height + 0.95 * look.type.em}, width_, look);
            band_.height += kPitch * look.type.em;
        }
    }
    // On two lines at most: as large as `largest`, not below `least`.
    void addFitted(const QString& text, Look look, double least) {
        const auto lines = [&] { return pen_.ruler().wrap(text, look.type, width_).size(); };
        while (lines() > 2 && look.type.em > least)
            look.type.em = std::max(least, 0.94 * look.type.em);
        add(text, look);
    }
    // Full lines, but no last line of a word or two.
    [[nodiscard]] QStringList lines(const QString& text, Type type) const {
        const auto full = TypeRuler::Lines::Full;
        const QStringList widest = pen_.ruler().wrap(text, type, width_, full);
        for (double room = width_; room > 0.5 * width_; room -= 0.05 * width_) {
            const QStringList tried = pen_.ruler().wrap(text, type, room, full);
            if (tried.size() > widest.size()) break;
            if (tried.size() < 2 || pen_.ruler().width(tried.back(), type) > 0.25 * width_)
                return tried;
        }
        return widest;
    }
    void space(double mm) { band_.height += mm; }

private:
    Band& band_;
    PagePen pen_;
    double width_;
};

Band nameBand(const WallContent& content, const WallType& type, double width,
              const TypeRuler& ruler) {
    Band band;
    Column column(band, ruler, width);
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
    Column(band, ruler, width).add(content.running, {{1.2 * type.small}, Ink::Accent, Rank::Head});
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
    Column column(band, ruler, width);
    column.add(content.legend.join(QLatin1Char(' ')), small);
    column.add(cautionText(), {{type.foot}, Ink::Text, Rank::Small});
    column.space(0.25 * type.foot);
    const QString number = pageText(page, pages);
    const double numberWidth = ruler.width(number, small.type);
    pen.right(number, {width, band.height + 0.95 * type.foot}, width, small);
    const QString whose = content.gym.isEmpty()
                              ? content.running
                              : content.gym + QStringLiteral(" · ") + content.running;
    Column(band, ruler, width - numberWidth - 2 * type.foot).add(whose, small);
    return band;
}

} // namespace bw
