// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/floor/kit_plan.hpp"
#include "blockwright/ledger/mass_text.hpp"
#include "sheets/coach/kit_boxes.hpp"
#include "sheets/coach_sheets.hpp"
#include "sheets/flow/sheet_flow.hpp"
#include "sheets/slot_words.hpp"

#include <algorithm>

namespace bw {

namespace {
using Look = PagePen::Look;

QString massList(const std::set<Mass>& masses, MassUnit unit) {
    QStringList texts;
    for (const Mass m : masses) texts << printed(massNumber(m, unit));
    return texts.join(QStringLiteral(", ")) + QLatin1Char(' ') + printed(std::string(wordOf(unit)));
}

QString loadsText(const KitLine& line, MassUnit unit) {
    QStringList parts;
    if (!line.loads.empty()) parts << massList(line.loads, unit);
    if (line.total) {
        const QString lo = printed(massText(line.total->lo(), unit)),
                      hi = printed(massText(line.total->hi(), unit));
        parts << (line.total->single()
                      ? lo
                      : sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "%1 to %2")).arg(lo, hi));
    }
    if (!line.plates.empty())
        parts << sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "plates %1"))
                     .arg(massList(line.plates, unit));
    return parts.join(QStringLiteral("; "));
}

class KitRows {
public:
    KitRows(const SheetMatter& matter, SheetFlow& flow, MassUnit unit)
        : matter_(matter), flow_(flow), t_(flow.type()), unit_(unit) {}

    void section(const KitSection& section) {
        const int people = matter_.gym.settings.places;
        const char* how =
            section.together ? QT_TRANSLATE_NOOP("bw::sheets", "%1 people, all at the same station")
                             : QT_TRANSLATE_NOOP("bw::sheets", "%1 people, over the stations");
        flow_.heading(sectionName(sectionAt(matter_.block, section.section)->kind),
                      section.stations.size() > 1
                          ? sheetSay(how).arg(people)
                          : sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "%1 people")).arg(people));
        if (section.kit.empty())
            flow_.text(sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Nothing to put out.")),
                       {{t_.body}, Ink::Quiet, Rank::Second}, 0, SheetFlow::Keep::WithNext);
        for (const KitLine& line : section.kit) row(line);
        putStations(flow_, matter_, section);
    }

private:
    void row(const KitLine& line) {
        Band band;
        PagePen pen(flow_.ruler(), band.items);
        const double em = t_.body, tick = 0.9 * em, name = 5 * em;
        const double middle = 0.45 * flow_.width();
        const QRectF box(0.1 * em, 0.2 * em, tick, tick);
        pen.stroke(QPolygonF(box), 2 * t_.hair, Ink::Text);
        const Look bold{{em, Weight::Bold}, Ink::Text, Rank::Key},
            book{{em}, Ink::Text, Rank::Second};
        pen.right(QString::number(line.units), {name - em, 0.95 * em}, name - 2 * em, bold);
        BandColumn(band, flow_.ruler(), middle - name - em, name).add(nameOfKit(line.kit), book);
        Band right;
        BandColumn loads(right, flow_.ruler(), flow_.width() - middle, middle);
        loads.add(loadsOf(line), book);
        if (line.shared()) loads.add(sharedText(line), {{em}, Ink::Accent, Rank::Second});
        pen.put(right.items, {});
        band.height = std::max({band.height, right.height, kPitch * em}) + 0.25 * em;
        flow_.put(std::move(band), 0, SheetFlow::Keep::WithNext);
    }
    QString loadsOf(const KitLine& line) const {
        const KitItem* item = matter_.gym.findKit(line.kit);
        const bool known = !line.loads.empty() || line.total;
        if (known || !item || (item->loads.empty() && !item->bar)) return loadsText(line, unit_);
        return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "loads are still to be found"));
    }
    QString nameOfKit(const KitId& id) const {
        const KitItem* item = matter_.gym.findKit(id);
        return printed(item ? item->name : id.text());
    }
    static QString sharedText(const KitLine& line) {
        if (line.units == 0)
            return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "the gym has none; %1 would be wanted"))
                .arg(line.wanted);
        return sheetSay(
                   QT_TRANSLATE_NOOP("bw::sheets", "all there are, in turns; %1 would be wanted"))
            .arg(line.wanted);
    }

    const SheetMatter& matter_;
    SheetFlow& flow_;
    const SheetType& t_;
    MassUnit unit_;
};
} // namespace

Layout layoutKit(const SheetMatter& matter, const SheetOptions& options) {
    SheetWords words = sheetWords(SheetKind::Kit, matter.gym, matter.block, options);
    words.sentence = sheetSay(QT_TRANSLATE_NOOP(
        "bw::sheets", "What stands where before each section, for a full class; loads are those on "
                      "the members’ cards."));
    words.note = sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "For the coach."));
    const auto plan = kitPlan(matter.gym, matter.block, matter.ledger);
    return forStanding([&](SheetReader reader) {
        SheetFlow flow(SheetKind::Kit, matter.block, words, options, reader);
        KitRows rows(matter, flow, options.massUnit);
        for (const KitSection& section : plan)
            if (!section.stations.empty()) rows.section(section);
        return flow.done();
    });
}

} // namespace bw
