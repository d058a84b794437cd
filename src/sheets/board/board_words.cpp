// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/board/board_words.hpp"
#include "blockwright/ledger/mass_text.hpp"
#include "blockwright/time/timing.hpp"
#include "sheets/cards/card_content.hpp"
#include "sheets/slot_words.hpp"

#include <algorithm>
#include <map>

namespace bw {

namespace {
const QString& none() {
    static const QString dash = QStringLiteral("–");
    return dash;
}

// "3 in reserve" where the slots agree, else "B1 2, B2 3 in reserve".
QString reserveOf(const Group& group, const Block& block, Place place, Week week) {
    QStringList each, values;
    for (int i = 0; i < static_cast<int>(group.slots.size()); ++i) {
        const Place slot{place.section, place.group, i};
        const PlanStep step = planStep(block, slot, week);
        if (!step.rir) continue;
        values << printed(rirText(step.rir->reps()));
        each << slotLabel(block, slot) + QLatin1Char(' ') + values.back();
    }
    if (values.isEmpty()) return {};
    const bool agree = values.count(values.front()) == values.size();
    return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "%1 in reserve"))
        .arg(agree ? values.front() : each.join(QStringLiteral(", ")));
}

QString headOf(const Group& group, const Block& block, Place place, Week week) {
    Group thisWeek = group;
    thisWeek.rounds = planStep(block, {place.section, place.group, 0}, week).rounds;
    QStringList parts{roundsAndRest(thisWeek), reserveOf(group, block, place, week)};
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

BoardRow rowOf(const Gym& gym, const Block& block, Place place) {
    const Slot& slot = *slotAt(block, place);
    return {slotLabel(block, place),
            slot.exercise ? nameOf(gym.shelf, *slot.exercise)
                          : sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "coach’s choice")),
            slotDose(gym.shelf, slot), slot.tempo ? printed(slot.tempo->text()) : QString(),
            slot.main};
}

Millis wholeSeconds(ExactTime t) {
    const auto whole = std::chrono::round<std::chrono::seconds>(roundHalvesUp(t));
    return whole;
}

// What a member takes in each slot, by its label.
std::map<QString, QString> loadsOf(const SheetMatter& matter, const Member& member,
                                   const std::vector<SlotTargets>& targets, Week week,
                                   MassUnit unit) {
    std::map<QString, QString> loads;
    for (const CardPart& part : cardOf(matter, member, targets, unit).parts)
        for (const CardRow& row : part.rows) {
            if (!row.instead.isEmpty()) {
                loads[row.label] = sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "see card"));
            } else if (!row.cells.empty()) {
                const auto w = static_cast<std::size_t>(week.index());
                const CardCell& cell = row.cells[std::min(w, row.cells.size() - 1)];
                loads[row.label] = cell.load.isEmpty() ? cell.word : cell.load;
            }
        }
    return loads;
}

// Leaves out the slots in which nobody has anything to take.
void dropEmpty(BoardLoads& loads) {
    for (qsizetype i = loads.labels.size() - 1; i >= 0; --i) {
        const bool empty = std::ranges::all_of(
            loads.lines, [&](const BoardLoads::Line& l) { return l.cells[i] == none(); });
        if (!empty) continue;
        loads.labels.removeAt(i);
        for (BoardLoads::Line& line : loads.lines) line.cells.removeAt(i);
    }
}
} // namespace

std::vector<BoardPart> boardParts(const Gym& gym, const Block& block, Week week) {
    const SessionTime time = timeSession(gym.settings, gym.shelf, block, week);
    std::vector<BoardPart> parts;
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s) {
        const auto at = static_cast<std::size_t>(s);
        BoardPart part{s,
                       sectionName(block.sections[at].kind),
                       wholeSeconds(time.sections[at].total.planned),
                       {}};
        eachGroup(block, s, [&](const Group& group, Place place) {
            BoardGroup made{headOf(group, block, place, week), {}};
            for (int i = 0; i < static_cast<int>(group.slots.size()); ++i)
                made.rows.push_back(rowOf(gym, block, {place.section, place.group, i}));
            part.groups.push_back(std::move(made));
        });
        if (!part.groups.empty()) parts.push_back(std::move(part));
    }
    return parts;
}

std::vector<BoardLoads> boardLoads(const SheetMatter& matter, Week week, MassUnit unit,
                                   const std::vector<BoardPart>& parts) {
    std::vector<BoardLoads> all(parts.size());
    for (std::size_t p = 0; p < parts.size(); ++p)
        for (const BoardGroup& group : parts[p].groups)
            for (const BoardRow& row : group.rows) all[p].labels << row.label;
    const Ledger empty(matter.gym,
                       Date::of(matter.block.month.year(), matter.block.month.month(), 1).value());
    MonthTargets targets(matter.gym, matter.block);
    for (const Member& member : matter.gym.members) {
        if (!member.active) continue;
        const auto taken = loadsOf(
            matter, member, targets.of(matter.ledger ? *matter.ledger : empty, member), week, unit);
        for (BoardLoads& loads : all) {
            BoardLoads::Line line{printed(member.name), {}};
            for (const QString& label : loads.labels) {
                const auto found = taken.find(label);
                const bool some = found != taken.end() && !found->second.isEmpty();
                line.cells << (some ? found->second : none());
            }
            loads.lines.push_back(std::move(line));
        }
    }
    for (BoardLoads& loads : all) dropEmpty(loads);
    return all;
}

QString readOut(const BoardPart& part) {
    QString text = part.name + QLatin1Char('.');
    for (const BoardGroup& group : part.groups) {
        for (const BoardRow& row : group.rows) {
            QStringList words{row.label + QLatin1Char(' ') + row.name, row.dose, row.tempo};
            words.removeAll(QString());
            text += QLatin1Char(' ') + words.join(QStringLiteral(", ")) + QLatin1Char('.');
        }
        text += QLatin1Char(' ') + group.head + QLatin1Char('.');
    }
    return text;
}

} // namespace bw
