// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/sheet_cells.hpp"

#include "blockwright/model/fitting.hpp"
#include "blockwright/model/shorthand.hpp"
#include "desk/frame/words.hpp"
#include "sheets/worded.hpp"

#include <QCoreApplication>

namespace bw {

namespace {
struct Sheet {
    Q_DECLARE_TR_FUNCTIONS(Sheet)
};
QString tr(const char* text) { return Sheet::tr(text); }

const Exercise* exerciseOf(const SheetCell& c) {
    const Slot* slot = slotAt(c.block, c.row.place);
    return slot && slot->exercise ? c.gym.shelf.find(*slot->exercise) : nullptr;
}

// The first way of kitting it out that this gym has, else the preferred one.
QString kitText(const Gym& gym, const Exercise& e) {
    if (e.needs.empty()) return {};
    const auto* chosen = kitAtHand(gym, e);
    if (!chosen) chosen = &e.needs.front();
    QStringList parts;
    for (const KitNeed& n : *chosen) {
        const KitItem* item = gym.findKit(n.kit);
        const QString name = plain(item ? item->name : n.kit.text()).toLower();
        parts << (n.count > 1 ? QStringLiteral("%1 × %2").arg(n.count).arg(name) : name);
    }
    return parts.join(QStringLiteral(" + "));
}

QString optionsText(const Gym& gym, const Exercise& e) {
    const auto first = [&](const std::vector<ExerciseId>& ids) {
        for (const auto& id : ids)
            if (const Exercise* other = gym.shelf.find(id); other && !other->retired)
                return plain(other->name);
        return QStringLiteral("–");
    };
    return first(e.easier) + QStringLiteral("  ‹ ›  ") + first(e.harder);
}

QString openText(const Slot& slot) {
    QStringList wants;
    for (const Pattern p : slot.patterns) wants << patternName(p);
    if (slot.role) wants << vocabularyWord(slot.role->text());
    return wants.isEmpty() ? tr("open") : tr("open: %1").arg(wants.join(QStringLiteral(", ")));
}

QString startText(const Start& start) {
    if (std::holds_alternative<StartTogether>(start)) return tr("together");
    if (std::holds_alternative<StartSpread>(start)) return tr("spread");
    QStringList heads;
    for (const int n : std::get<StartCounts>(start).heads) heads << QString::number(n);
    return heads.join(QStringLiteral(" + "));
}

QString minutesText(Range<Millis> r) {
    const auto minute = [](Millis m) {
        return m.count() % 60'000 == 0 ? QString::number(m.count() / 60'000) : plain(clockText(m));
    };
    return r.single() ? minute(r.lo()) : minute(r.lo()) + QStringLiteral("–") + minute(r.hi());
}

QString sectionText(const SheetCell& c, const SessionTime& time) {
    const Section& s = *sectionAt(c.block, c.row.place);
    const auto index = static_cast<std::size_t>(c.row.place.section);
    switch (c.column) {
    case SheetColumn::Exercise: return kindName(s.kind);
    case SheetColumn::Dose: return tr("talk %1").arg(plain(clockText(s.talk)));
    case SheetColumn::Tempo:
        return s.budget ? tr("%1 min").arg(minutesText(*s.budget)) : tr("no budget");
    case SheetColumn::Kit: return startText(s.start);
    case SheetColumn::Options:
        if (index >= time.sections.size()) return {};
        return plain(clockText(roundHalvesUp(time.sections[index].total.planned)));
    default: return {};
    }
}

QString slotText(const SheetCell& c) {
    const Slot& slot = *slotAt(c.block, c.row.place);
    const Exercise* e = exerciseOf(c);
    switch (c.column) {
    case SheetColumn::Mark:
        return plain(groupLetter(c.block, c.row.place)) + QString::number(c.row.place.slot + 1);
    case SheetColumn::Exercise:
        if (slot.open()) return openText(slot);
        return e ? plain(e->name) : plain(slot.exercise->text());
    case SheetColumn::Dose:
        return slot.dose ? plain(doseText(*slot.dose, e ? e->sides : Sides::Both,
                                          e ? e->pace.usual() : Measure::Reps))
                         : QString();
    case SheetColumn::Tempo: return slot.tempo ? plain(slot.tempo->text()) : QString();
    case SheetColumn::Effort: return slot.effort ? plain(effortText(*slot.effort)) : QString();
    case SheetColumn::Kit: return e ? kitText(c.gym, *e) : QString();
    case SheetColumn::Options: return e ? optionsText(c.gym, *e) : QString();
    case SheetColumn::Findings: break;
    }
    return {};
}

QString footText(const SheetCell& c) {
    const Group& g = *groupAt(c.block, c.row.place);
    if (c.column == SheetColumn::Exercise)
        return (g.rounds == Range<int>(1) ? tr("%1 round") : tr("%1 rounds"))
            .arg(plain(roundsText(g.rounds)));
    if (c.column == SheetColumn::Dose)
        return g.rest.hi() == Millis{0} ? tr("no rest")
                                        : tr("rest %1").arg(plain(restText(g.rest)));
    return {};
}
} // namespace

QString cellText(const SheetCell& c, const SessionTime& time) {
    switch (c.row.kind) {
    case SheetRow::Kind::Section: return sectionText(c, time);
    case SheetRow::Kind::Slot: return slotText(c);
    case SheetRow::Kind::Foot: return footText(c);
    case SheetRow::Kind::Empty:
        return c.column == SheetColumn::Exercise ? tr("nothing here yet: Ctrl+G adds a pair")
                                                 : QString();
    }
    return {};
}

std::optional<QString> editText(const SheetCell& c) {
    if (c.row.kind == SheetRow::Kind::Slot) {
        const Slot& slot = *slotAt(c.block, c.row.place);
        if (c.column == SheetColumn::Exercise && slot.open()) return QString();
        if (c.column >= SheetColumn::Exercise && c.column <= SheetColumn::Effort)
            return slotText(c);
    } else if (c.row.kind == SheetRow::Kind::Foot) {
        const Group& g = *groupAt(c.block, c.row.place);
        if (c.column == SheetColumn::Exercise) return plain(roundsText(g.rounds));
        if (c.column == SheetColumn::Dose)
            return g.rest.hi() == Millis{0} ? tr("no rest") : plain(restText(g.rest));
    } else if (c.row.kind == SheetRow::Kind::Section) {
        const Section& s = *sectionAt(c.block, c.row.place);
        if (c.column == SheetColumn::Dose) return plain(clockText(s.talk));
        if (c.column == SheetColumn::Tempo) return s.budget ? minutesText(*s.budget) : QString();
        if (c.column == SheetColumn::Kit) return startText(s.start);
    }
    return std::nullopt;
}

QString cellName(const SheetCell& c) {
    static const char* const names[] = {QT_TRANSLATE_NOOP("Sheet", "place"),
                                        QT_TRANSLATE_NOOP("Sheet", "exercise"),
                                        QT_TRANSLATE_NOOP("Sheet", "dose"),
                                        QT_TRANSLATE_NOOP("Sheet", "tempo"),
                                        QT_TRANSLATE_NOOP("Sheet", "effort, reps in reserve"),
                                        QT_TRANSLATE_NOOP("Sheet", "kit"),
                                        QT_TRANSLATE_NOOP("Sheet", "easier and harder"),
                                        QT_TRANSLATE_NOOP("Sheet", "findings")};
    static const char* const section[] = {"",
                                          QT_TRANSLATE_NOOP("Sheet", "section"),
                                          QT_TRANSLATE_NOOP("Sheet", "talk"),
                                          QT_TRANSLATE_NOOP("Sheet", "budget in minutes"),
                                          "",
                                          QT_TRANSLATE_NOOP("Sheet", "start"),
                                          QT_TRANSLATE_NOOP("Sheet", "planned time"),
                                          ""};
    const auto column = static_cast<std::size_t>(c.column);
    const QString where = plain(placeText(c.block, c.row.place));
    if (c.row.kind == SheetRow::Kind::Section)
        return where + QStringLiteral(", ") + tr(section[column]);
    if (c.row.kind == SheetRow::Kind::Foot)
        return where + QStringLiteral(", ") +
               (c.column == SheetColumn::Exercise ? tr("rounds") : tr("rest"));
    return where + QStringLiteral(", ") + tr(names[column]);
}

} // namespace bw
