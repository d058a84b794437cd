// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/stair/stair_rows.hpp"

#include "blockwright/model/shorthand.hpp"
#include "desk/frame/words.hpp"
#include "desk/stair/stair_words.hpp"

#include <QCoreApplication>
#include <QLocale>

namespace bw {

namespace {
QString tr(const char* text) { return QCoreApplication::translate("Stair", text); }

QString nameAt(const Gym& gym, const Slot& slot) {
    if (!slot.exercise) return tr("open");
    const Exercise* e = gym.shelf.find(*slot.exercise);
    return e ? plain(e->name) : plain(slot.exercise->text());
}

QString doseOf(const Slot& slot, const Exercise* e) {
    if (!slot.dose) return {};
    return plain(e ? doseText(*slot.dose, e->sides, e->pace.usual())
                   : doseText(*slot.dose, Sides::Both));
}

StairCell cellOf(const StairRow& row, const PlanStep& step, const Exercise* exercise) {
    return {planCell(step),
            {},
            tr("Week %1, %2 %3: %4.")
                .arg(step.week.number())
                .arg(row.label, row.name, planSentence(step, exercise))};
}

void addTargets(StairRow& row, const SlotTargets& targets, const MemberStair& member) {
    const QString who = plain(member.member->name);
    row.ruled = targets.instead.has_value();
    if (row.ruled && targets.weeks.empty())
        for (StairCell& cell : row.weeks) {
            cell.target = tr("leave out");
            cell.spoken += QLatin1Char(' ') + say(targets.instead->text);
        }
    for (std::size_t w = 0; w < targets.weeks.size() && w < row.weeks.size(); ++w) {
        const Target& target = targets.weeks[w].target;
        row.weeks[w].target = targetCell(target, member.rules.unit);
        row.weeks[w].spoken +=
            QLatin1Char(' ') + tr("%1: %2").arg(who, targetSentence(target, member.rules.unit));
    }
}

StairRow rowAt(const Gym& gym, const Block& block, Place place, const MemberStair* member) {
    const Slot& slot = *slotAt(block, place);
    const SlotTargets* targets = member ? targetsAt(*member, place) : nullptr;
    const bool swapped = targets && targets->instead && targets->exercise;
    const Exercise* e = swapped         ? targets->exercise
                        : slot.exercise ? gym.shelf.find(*slot.exercise)
                                        : nullptr;
    StairRow row{.place = place,
                 .label = plain(groupLetter(block, place)) + QString::number(place.slot + 1),
                 .name = swapped ? plain(e->name) : nameAt(gym, slot),
                 .dose = doseOf(slot, e),
                 .section = {},
                 .startsGroup = place.group > 0 && place.slot == 0,
                 .main = slot.main,
                 .ruled = false,
                 .weeks = {}};
    if (place.group == 0 && place.slot == 0) row.section = kindName(sectionAt(block, place)->kind);
    for (const PlanStep& step : classPlan(block, place)) row.weeks.push_back(cellOf(row, step, e));
    if (targets) addTargets(row, *targets, *member);
    return row;
}

QString whole(double x) { return QLocale().toString(x, 'f', 0); }
QString one(double x) { return QLocale().toString(x, 'f', 1); }
QString two(const std::optional<double>& x) {
    return x ? QLocale().toString(*x, 'f', 2) : QStringLiteral("–");
}

template <class Cell> LoadRow figures(const std::vector<SessionWeek>& weeks, const QString& name,
                                      const QString& tip, Cell cell) {
    LoadRow row{name, tip, {}, false};
    for (const SessionWeek& w : weeks) row.weeks.push_back(cell(w));
    return row;
}

void addDone(std::vector<LoadRow>& rows, const MemberStair& member) {
    const QString who = plain(member.member->name);
    rows.push_back(figures(member.done, tr("done: visits"),
                           tr("Days of the week on which %1 has results").arg(who),
                           [](const SessionWeek& w) { return QString::number(w.visits); }));
    rows.push_back(figures(
        member.done, tr("done: load"),
        tr("From the reserve that %1’s sets tell; as planned where they tell none").arg(who),
        [](const SessionWeek& w) { return whole(w.load.total); }));
    for (auto row = rows.end() - 2; row != rows.end(); ++row) row->done = true;
}
} // namespace

std::vector<StairRow> stairRows(const Gym& gym, const Block& block, const MemberStair* member) {
    std::vector<StairRow> rows;
    Place at{0, 0, 0};
    for (at.section = 0; sectionAt(block, {at.section, -1, -1}); ++at.section)
        for (at.group = 0; groupAt(block, {at.section, at.group, -1}); ++at.group)
            for (at.slot = 0; slotAt(block, at); ++at.slot)
                rows.push_back(rowAt(gym, block, at, member));
    return rows;
}

std::vector<LoadRow> loadRows(const Gym& gym, const Block& block, const MemberStair* member) {
    const auto weeks = plannedLoads(gym, block);
    std::vector<LoadRow> rows{
        figures(weeks, tr("minutes"), tr("Of one session, as planned in that week"),
                [](const SessionWeek& w) { return whole(w.minutes); }),
        figures(weeks, tr("RPE"), tr("10 less the repetitions in reserve"),
                [](const SessionWeek& w) { return one(w.rpe); }),
        figures(weeks, tr("session-RPE load"), tr("Minutes × RPE, over the visits of the week"),
                [](const SessionWeek& w) { return whole(w.load.total); }),
        figures(weeks, tr("monotony"), tr("Mean of the days over their standard deviation"),
                [](const SessionWeek& w) { return two(w.load.monotony); }),
        figures(weeks, tr("strain"), tr("Load of the week × monotony"), [](const SessionWeek& w) {
            return w.load.strain ? whole(*w.load.strain) : QStringLiteral("–");
        })};
    if (member && anythingDone(*member)) addDone(rows, *member);
    return rows;
}

} // namespace bw
