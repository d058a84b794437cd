// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/cards/card_content.hpp"
#include "blockwright/ledger/mass_text.hpp"
#include "blockwright/model/shorthand.hpp"
#include "sheets/slot_words.hpp"

#include <algorithm>

namespace bw {

namespace {
QString plateList(const std::vector<Mass>& plates, MassUnit unit) {
    QStringList texts;
    for (const Mass m : plates) texts << printed(massNumber(m, unit));
    return texts.join(QLatin1Char('+'));
}

// What to put together, in as few words as a narrow column takes.
QString howText(const Loading& l, MassUnit unit) {
    if (l.pieces > 1) {
        const Mass one = Mass::fromMicrograms(l.total.micrograms() / l.pieces).value();
        return QString::number(l.pieces) + QStringLiteral(" × ") + printed(massText(one, unit));
    }
    if (!l.empty) return {};
    if (l.plates.empty())
        return sheetSay(l.perSide ? QT_TRANSLATE_NOOP("bw::sheets", "empty bar")
                                  : QT_TRANSLATE_NOOP("bw::sheets", "empty sled"));
    return sheetSay(l.perSide ? QT_TRANSLATE_NOOP("bw::sheets", "%1/side")
                              : QT_TRANSLATE_NOOP("bw::sheets", "plates %1"))
        .arg(plateList(l.plates, unit));
}

QString bodyText(const BodyStep& step) {
    return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "%1 reps")).arg(printed(roundsText(step.aim)));
}

CardCell aimCell(const Target& target, bool firstWeek, MassUnit unit) {
    if (target.loading)
        return {printed(massText(target.loading->total, unit)), {}, howText(*target.loading, unit)};
    switch (target.aim) {
    case Aim::Find:
        if (firstWeek) return {{}, sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "find it")), {}};
        [[fallthrough]];
    case Aim::Follow: return {{}, sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "from week 1")), {}};
    case Aim::AsLast: return {{}, sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "by feel")), {}};
    default: break;
    }
    if (!target.body) return {};
    const Exercise* option = target.body->option;
    return {{}, bodyText(*target.body), option ? printed(option->name) : QString()};
}

class CardWriter {
public:
    CardWriter(const SheetMatter& matter, const std::vector<SlotTargets>& targets, MassUnit unit)
        : matter_(matter), targets_(targets), unit_(unit) {}

    CardPart part(const Group& group, Place place) const {
        CardPart out;
        const SectionKind kind = sectionAt(matter_.block, place)->kind;
        out.brief = kind == SectionKind::WarmUp;
        out.head = sectionName(kind);
        if (group.rest.hi() > Millis{0} && !out.brief)
            out.head += sheetSay(QT_TRANSLATE_NOOP("bw::sheets", ", rest %1"))
                            .arg(printed(restText(group.rest)));
        for (int i = 0; i < static_cast<int>(group.slots.size()); ++i)
            out.rows.push_back(
                row(group.slots[static_cast<std::size_t>(i)], {place.section, place.group, i}));
        out.rows.front().opens = true;
        Place top = place;
        top.slot = 0;
        for (const PlanStep& step : classPlan(matter_.block, top)) out.rounds << roundsIn(step);
        return out;
    }

private:
    static QString roundsIn(const PlanStep& step) {
        return sheetSay(step.rounds == Range<int>(1) ? QT_TRANSLATE_NOOP("bw::sheets", "%1 round")
                                                     : QT_TRANSLATE_NOOP("bw::sheets", "%1 rounds"))
            .arg(printed(roundsText(step.rounds)));
    }
    const SlotTargets* targetsOf(Place place) const {
        const auto it = std::find_if(targets_.begin(), targets_.end(),
                                     [&](const SlotTargets& t) { return t.place == place; });
        return it == targets_.end() ? nullptr : &*it;
    }
    CardRow row(const Slot& slot, Place place) const {
        CardRow out;
        out.label = slotLabel(matter_.block, place);
        out.main = slot.main;
        const SlotTargets* t = targetsOf(place);
        out.name = slot.exercise ? nameOf(matter_.gym.shelf, *slot.exercise)
                                 : sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "coach’s choice"));
        out.dose = doseOf(slot, t);
        if (t && t->instead) substitute(out, *t);
        if (t && !t->exercise) return out;
        const std::size_t weeks = matter_.block.stair.size();
        if (t)
            for (const WeekTarget& week : t->weeks) out.cells.push_back(cell(week));
        out.cells.resize(weeks);
        return out;
    }
    static void substitute(CardRow& out, const SlotTargets& t) {
        if (!t.exercise) {
            out.instead = sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "leave it out; ask your coach"));
            return;
        }
        out.instead = sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "instead of %1")).arg(out.name);
        out.name = printed(t.exercise->name);
    }
    QString doseOf(const Slot& slot, const SlotTargets* t) const {
        QString dose = slotDose(matter_.gym.shelf, slot);
        if (t && t->exercise && !t->weeks.empty() && t->weeks.front().plan.dose)
            dose = printedDose(*t->weeks.front().plan.dose, t->exercise->sides);
        if (slot.tempo && !(t && t->instead))
            dose += QStringLiteral(" · ") + printed(slot.tempo->text());
        return dose;
    }
    CardCell cell(const WeekTarget& week) const {
        CardCell out = aimCell(week.target, week.plan.week == Week::first(), unit_);
        const Rir usual = matter_.block.step(week.plan.week).rir;
        if (week.plan.rir && *week.plan.rir != usual) {
            const QString reserve = rirWords(week.plan.rir->reps());
            out.how = out.how.isEmpty() ? reserve : out.how + QStringLiteral(", ") + reserve;
        }
        return out;
    }

    const SheetMatter& matter_;
    const std::vector<SlotTargets>& targets_;
    MassUnit unit_;
};

CardWeek weekOf(const Block& block, const StairStep& step, int number) {
    CardWeek out;
    out.name = sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Week %1")).arg(number);
    out.aim = rirWords(step.rir.reps());
    const auto dayOf = [](Date date) {
        return static_cast<unsigned>(std::chrono::year_month_day(date.days()).day());
    };
    out.days = intentName(step.intent);
    if (number > Week::kMost) return out;
    const DaysOfWeek days = daysOf(block, Week::of(number).value());
    if (days.from < days.to)
        out.days = QStringLiteral("%1–%2, %3")
                       .arg(dayOf(days.from))
                       .arg(dayOf(days.to.plusDays(-1)))
                       .arg(out.days);
    return out;
}
} // namespace

CardFrame cardFrame(const SheetMatter& matter, const SheetOptions& options) {
    CardFrame frame;
    frame.block = blockText(matter.block);
    frame.whose = footText(matter.gym, matter.block, options);
    for (const StairStep& step : matter.block.stair)
        frame.weeks.push_back(weekOf(matter.block, step, static_cast<int>(frame.weeks.size()) + 1));
    return frame;
}

Card cardOf(const SheetMatter& matter, const Member& member,
            const std::vector<SlotTargets>& targets, MassUnit unit) {
    const CardWriter writer(matter, targets, unit);
    Card card;
    card.member = printed(member.name);
    for (int s = 0; s < static_cast<int>(matter.block.sections.size()); ++s) {
        const std::size_t before = card.parts.size();
        eachGroup(matter.block, s, [&](const Group& group, Place place) {
            CardPart part = writer.part(group, place);
            CardPart* last = card.parts.size() > before ? &card.parts.back() : nullptr;
            if (last && last->head == part.head && last->rounds == part.rounds)
                last->rows.insert(last->rows.end(), part.rows.begin(), part.rows.end());
            else
                card.parts.push_back(std::move(part));
        });
    }
    return card;
}

} // namespace bw
