// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/coach/kit_list.hpp"

#include <algorithm>

namespace bw {

namespace {
using Look = PagePen::Look;
constexpr double kNameEms = 5, kCountEms = 4.1; // where names begin and counts end
constexpr double kAfterRow = 0.25;

class List {
public:
    List(const SheetFlow& flow, const KitWords& words, double width)
        : flow_(flow), words_(words), em_(flow.type().body), width_(width) {}

    [[nodiscard]] Band label(const char* english) const {
        Band band;
        band.height = kAfterRow * em_;
        BandColumn(band, flow_.ruler(), width_)
            .add(sheetSay(english), {{flow_.type().small}, Ink::Quiet, Rank::Second});
        return band;
    }
    [[nodiscard]] Band away(const KitMove& move) const {
        Band band = counted(move.kit, move.cleared());
        tick(band);
        band.height += kAfterRow * em_;
        return band;
    }
    [[nodiscard]] Band row(const KitLine& line, const KitMove& move) const {
        Band band = counted(line.kit, line.units);
        if (move.comesOut()) tick(band);
        beside(band, words_.name(line.kit), words_.standing(move), Ink::Quiet);
        below(band, words_.shortage(line), Ink::Accent);
        band.height += kAfterRow * em_;
        return band;
    }
    [[nodiscard]] Band nothing() const {
        Band band;
        BandColumn(band, flow_.ruler(), width_)
            .add(sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Nothing to put out.")),
                 {{em_}, Ink::Quiet, Rank::Second});
        return band;
    }

private:
    void tick(Band& band) const {
        PagePen(flow_.ruler(), band.items)
            .stroke(QPolygonF(QRectF(0.1 * em_, 0.2 * em_, 0.9 * em_, 0.9 * em_)),
                    2 * flow_.type().hair, Ink::Text);
    }
    [[nodiscard]] Band counted(const KitId& kit, int units) const {
        Band band;
        PagePen(flow_.ruler(), band.items)
            .right(QString::number(units), {kCountEms * em_, 0.95 * em_}, 3 * em_,
                   {{em_, Weight::Bold}, Ink::Text, Rank::Key});
        names(band).add(words_.name(kit), {{em_}, Ink::Text, Rank::Second});
        return band;
    }
    [[nodiscard]] BandColumn names(Band& band) const {
        return {band, flow_.ruler(), width_ - kNameEms * em_, kNameEms * em_};
    }
    void below(Band& band, const QString& text, Ink ink) const {
        if (!text.isEmpty()) names(band).add(text, {{flow_.type().small}, ink, Rank::Second});
    }
    // On the line of the name where there is room for both, else below it.
    void beside(Band& band, const QString& name, const QString& text, Ink ink) const {
        const Type type{flow_.type().small};
        const double from = (kNameEms + 1) * em_ + flow_.ruler().width(name, {em_});
        if (from + flow_.ruler().width(text, type) > width_) return below(band, text, ink);
        PagePen(flow_.ruler(), band.items)
            .left(text, {from, 0.95 * em_}, width_ - from, {type, ink, Rank::Second});
    }

    const SheetFlow& flow_;
    const KitWords& words_;
    double em_, width_;
};
} // namespace

std::vector<Band> kitList(const SheetFlow& flow, const KitWords& words, const KitSection& section,
                          const std::vector<KitMove>& moves, double width) {
    const List list(flow, words, width);
    std::vector<Band> rows;
    for (const KitMove& move : moves)
        if (move.cleared() > 0) {
            if (rows.empty())
                rows.push_back(list.label(QT_TRANSLATE_NOOP("bw::sheets", "Clear away")));
            rows.push_back(list.away(move));
        }
    if (!rows.empty() && !section.kit.empty())
        rows.push_back(list.label(QT_TRANSLATE_NOOP("bw::sheets", "Put out")));
    for (const KitLine& line : section.kit)
        rows.push_back(list.row(line, *std::ranges::find(moves, line.kit, &KitMove::kit)));
    if (section.kit.empty()) rows.push_back(list.nothing());
    return rows;
}

} // namespace bw
