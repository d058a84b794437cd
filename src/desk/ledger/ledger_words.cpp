// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ledger/ledger_words.hpp"

#include "blockwright/ledger/mass_text.hpp"
#include "blockwright/model/shorthand.hpp"
#include "desk/floor/floor_words.hpp"
#include "desk/frame/words.hpp"
#include "sheets/worded.hpp"

#include <QCoreApplication>
#include <QLocale>

namespace bw {

namespace {
QString tr(const char* text) { return QCoreApplication::translate("ledger", text); }

QString repsAndLeft(const PlanStep& plan) {
    if (!plan.dose) return {};
    QString text = QStringLiteral("×%1").arg(plan.dose->amount().hi());
    if (plan.rir) text += QLatin1Char(' ') + plain(rirText(plan.rir->reps()));
    return text;
}

QString withoutStop(QString sentence) {
    if (sentence.endsWith(QLatin1Char('.'))) sentence.chop(1);
    return sentence;
}

QString rangeWords(Range<int> range) {
    return range.lo() == range.hi() ? QString::number(range.lo())
                                    : QStringLiteral("%1–%2").arg(range.lo()).arg(range.hi());
}
} // namespace

QDate qDate(Date date) {
    const std::chrono::year_month_day ymd(date.days());
    return {static_cast<int>(ymd.year()), static_cast<int>(static_cast<unsigned>(ymd.month())),
            static_cast<int>(static_cast<unsigned>(ymd.day()))};
}
Date dateOf(QDate date) { return Date::of(date.year(), date.month(), date.day()).value(); }
QString dayText(Date date) {
    return QLocale().toString(qDate(date), QCoreApplication::translate("ledger", "ddd d MMM yyyy"));
}

QString setsWords(const std::vector<LiftedSet>& sets, MassUnit unit) {
    return plain(setsText(sets, unit));
}

QString aimWords(const WeekTarget& aim, MassUnit unit) {
    const Target& t = aim.target;
    switch (t.aim) {
    case Aim::Load: return plain(massNumber(t.loading->total, unit)) + repsAndLeft(aim.plan);
    case Aim::Find: return tr("find ") + repsAndLeft(aim.plan);
    case Aim::Follow: return tr("as found ") + repsAndLeft(aim.plan);
    case Aim::AsLast: return plain(massNumber(t.loading->total, unit)) + repsAndLeft(aim.plan);
    case Aim::Body:
        if (t.body) return rangeWords(t.body->aim);
        return aim.plan.dose ? plain(doseText(*aim.plan.dose, Sides::Both)) : QString();
    }
    return {};
}

QString demandName(Demand demand) { return vocabularyWord(wordOf(demand)); }
QString flagLevelName(FlagLevel level) { return vocabularyWord(wordOf(level)); }
QString flagWords(const Flag& flag) {
    return flagLevelName(flag.level) + QLatin1Char(' ') + demandName(flag.demand);
}

QString exerciseName(const Gym& gym, const ExerciseId& id) {
    const Exercise* e = gym.shelf.find(id);
    return plain(e ? e->name : id.text());
}

QString cellSentence(const ClassDay& day, const Member& member, const ClassColumn& column,
                     const ClassCell& cell) {
    const Gym& gym = day.gym();
    const MassUnit unit = gym.settings.massUnit;
    QStringList parts{plain(member.name), slotMark(*day.block(), column.place) + QLatin1Char(' ') +
                                              exerciseName(gym, cell.exercise)};
    if (cell.instead && (cell.ruledOut || cell.exercise != column.exercise))
        parts << withoutStop(say(cell.instead->text));
    if (!cell.sets.empty()) parts << tr("this day %1").arg(setsWords(cell.sets, unit));
    if (cell.lastOn)
        parts << tr("last %1 on %2").arg(setsWords(cell.last, unit), dayText(*cell.lastOn));
    if (cell.aim) {
        const Target& t = cell.aim->target;
        const QString load = t.loading && t.aim == Aim::Load
                                 ? say(loadingText(*t.loading, unit)) + QStringLiteral(". ")
                                 : QString();
        parts << tr("target: %1").arg(load + say(t.text));
    }
    return parts.join(QStringLiteral(" · "));
}

} // namespace bw
