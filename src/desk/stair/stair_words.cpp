// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/stair/stair_words.hpp"

#include "blockwright/ledger/mass_text.hpp"
#include "blockwright/model/shorthand.hpp"
#include "desk/frame/words.hpp"

#include <QCoreApplication>

namespace bw {

namespace {
constexpr int kMostTenths = 100; // RPE is 10 less the reserve

QString tr(const char* text) { return QCoreApplication::translate("Stair", text); }

QString doseOf(const PlanStep& step, const Exercise* e) {
    return plain(e ? doseText(*step.dose, e->sides, e->pace.usual())
                   : doseText(*step.dose, Sides::Both));
}

QString bodyCell(const BodyStep& step) {
    if (step.option) return step.move == BodyMove::Harder ? tr("harder") : tr("easier");
    return tr("aim at %1").arg(plain(roundsText(step.aim)));
}
} // namespace

QString roundsWord(RoundsMode mode) {
    switch (mode) {
    case RoundsMode::Low: return tr("low rounds");
    case RoundsMode::Open: return tr("open rounds");
    case RoundsMode::High: return tr("high rounds");
    }
    return {};
}

QString inReserve(Rir rir) { return tr("%1 in reserve").arg(plain(rirText(rir.reps()))); }

QString rpeText(Rir rir) {
    return tr("RPE %1").arg(plain(rirText((kMostTenths - rir.tenths()) / 10.0)));
}

QString stepSentence(const Block& block, Week week) {
    const StairStep& step = block.step(week);
    return tr("Week %1 of %2: %3, %4, %5, %6.")
        .arg(week.number())
        .arg(block.stair.size())
        .arg(weekIntent(step.intent), roundsWord(step.rounds), inReserve(step.rir),
             rpeText(step.rir));
}

QString stairSummary(const Block& block) {
    QStringList parts;
    for (int n = 1; n <= static_cast<int>(block.stair.size()); ++n)
        parts << stepSentence(block, Week::of(n).value());
    return parts.join(QLatin1Char(' '));
}

QString planCell(const PlanStep& step) {
    const QString rounds = plain(roundsText(step.rounds));
    if (!step.rir) return rounds;
    return tr("%1 · %2 left").arg(rounds, plain(rirText(step.rir->reps())));
}

QString planSentence(const PlanStep& step, const Exercise* exercise) {
    const QString rounds = step.rounds.single() && step.rounds.lo() == 1
                               ? tr("1 round")
                               : tr("%1 rounds").arg(plain(roundsText(step.rounds)));
    const QString of = step.dose ? tr("%1 of %2").arg(rounds, doseOf(step, exercise)) : rounds;
    return step.rir ? tr("%1 with %2").arg(of, inReserve(*step.rir)) : of;
}

QString targetCell(const Target& target, MassUnit unit) {
    if (target.loading) return plain(massText(target.loading->total, unit));
    switch (target.aim) {
    case Aim::Find: return tr("find it");
    case Aim::Follow: return tr("follow");
    default: return target.body ? bodyCell(*target.body) : QString();
    }
}

QString targetSentence(const Target& target, MassUnit unit) {
    if (!target.loading) return say(target.text);
    return tr("%1. %2").arg(say(loadingText(*target.loading, unit)), say(target.text));
}

} // namespace bw
