// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/coach/kit_boxes.hpp"
#include "sheets/slot_words.hpp"

#include <algorithm>

namespace bw {

namespace {
using Look = PagePen::Look;
constexpr double kTallest = 70; // mm
constexpr std::size_t kMostAcross = 4;

QString startWords(const KitSection& section, std::size_t station) {
    const KitStation& here = section.stations[station];
    if (section.together && section.stations.size() > 1)
        return station == 0 ? sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "all start here"))
                            : sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "then all here"));
    return sheetSay(here.heads == 1 ? QT_TRANSLATE_NOOP("bw::sheets", "%1 starts here")
                                    : QT_TRANSLATE_NOOP("bw::sheets", "%1 start here"))
        .arg(here.heads);
}

QStringList kitWords(const SheetMatter& matter, const KitStation& station) {
    QStringList lines;
    for (const KitLine& line : station.kit) {
        const KitItem* item = matter.gym.findKit(line.kit);
        lines << QString::number(line.units) + QStringLiteral(" × ") +
                     printed(item ? item->name : line.kit.text());
    }
    if (lines.isEmpty()) lines << sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "free floor"));
    return lines;
}

class Sketch {
public:
    Sketch(SheetFlow& flow, const SheetMatter& matter, const KitSection& section)
        : flow_(flow), matter_(matter), section_(section), t_(flow.type()) {}

    // So many boxes side by side from `first`.
    Band row(std::size_t first, std::size_t count, std::size_t across) const {
        const double gap = 1.5 * t_.body, n = static_cast<double>(across);
        const double width = (flow_.width() - gap * (n - 1)) / n;
        Band band;
        for (std::size_t i = 0; i < count; ++i) {
            const Band inside = box(first + i, width, (width + gap) * static_cast<double>(i));
            PagePen(flow_.ruler(), band.items).put(inside.items, {});
            band.height = std::max(band.height, inside.height);
        }
        for (std::size_t i = 0; i < count; ++i) {
            const QRectF frame((width + gap) * static_cast<double>(i), 0, width, band.height);
            PagePen(flow_.ruler(), band.items).stroke(QPolygonF(frame), 2 * t_.hair, Ink::Hair);
        }
        return band;
    }
    void lines(std::size_t station) const {
        const QString text =
            letter(station) + QStringLiteral(": ") + startWords(section_, station) +
            QStringLiteral("; ") +
            kitWords(matter_, section_.stations[station]).join(QStringLiteral(", ")) +
            QLatin1Char('.');
        flow_.text(text, {{t_.body}, Ink::Text, Rank::Second}, 0.4 * t_.body);
    }

private:
    QString letter(std::size_t station) const {
        return printed(groupLetter(matter_.block, section_.stations[station].group));
    }
    Band box(std::size_t station, double width, double left) const {
        const double pad = 0.6 * t_.body, room = width - 2 * pad;
        Band band;
        band.height = pad;
        BandColumn column(band, flow_.ruler(), room, left + pad);
        column.add(letter(station), {{1.5 * t_.body, Weight::Bold}, Ink::Accent, Rank::Key});
        column.add(startWords(section_, station), {{t_.small}, Ink::Quiet, Rank::Small});
        column.space(0.2 * t_.body);
        for (const QString& line : kitWords(matter_, section_.stations[station]))
            column.add(line, {{t_.body}, Ink::Text, Rank::Second});
        column.space(pad);
        return band;
    }

    SheetFlow& flow_;
    const SheetMatter& matter_;
    const KitSection& section_;
    const SheetType& t_;
};
} // namespace

void putStations(SheetFlow& flow, const SheetMatter& matter, const KitSection& section) {
    const Sketch sketch(flow, matter, section);
    const std::size_t all = section.stations.size();
    if (all < 2) return;
    const std::size_t rows = (all + kMostAcross - 1) / kMostAcross;
    const std::size_t across = (all + rows - 1) / rows; // rows as even as can be
    for (std::size_t first = 0; first < all; first += across) {
        const std::size_t count = std::min(across, all - first);
        Band band = sketch.row(first, count, std::max<std::size_t>(across, 2));
        if (band.height <= kTallest)
            flow.put(std::move(band), 0.9 * flow.type().body);
        else
            for (std::size_t i = 0; i < count; ++i) sketch.lines(first + i);
    }
}

} // namespace bw
