// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/minute_rail_words.hpp"

#include "desk/frame/words.hpp"

#include <QCoreApplication>

namespace bw {

namespace {
QString tr(const char* source) { return QCoreApplication::translate("MinuteRail", source); }

std::chrono::seconds wholeSeconds(Millis time) {
    return std::chrono::floor<std::chrono::seconds>(time + Millis(500));
}

QString clock(Millis time) {
    const auto whole = wholeSeconds(time).count();
    return QStringLiteral("%1:%2").arg(whole / 60).arg(whole % 60, 2, 10, QLatin1Char('0'));
}

QString open(int slots) {
    return slots == 1 ? tr("1 open slot takes no time yet")
                      : tr("%1 open slots take no time yet").arg(slots);
}

QString against(const RailPlan& plan) {
    // From the figures as they are shown, so that they add up.
    const ExactTime left = plan.wall - wholeSeconds(roundHalvesUp(plan.total.planned));
    if (left == ExactTime{}) return tr("exactly full");
    return left > ExactTime{} ? tr("%1 to spare").arg(railClock(left))
                              : tr("%1 over").arg(railClock(-left));
}

QString figures(const Figures& time) {
    return tr("planned %1; short %2, long %3")
        .arg(railClock(time.planned), railClock(time.low), railClock(time.high));
}

QString pieceInSummary(const RailPiece& piece) {
    const QString took = pieceName(piece) + QLatin1Char(' ') + railClock(piece.time.planned);
    return piece.budget ? tr("%1 in %2").arg(took, railBudget(*piece.budget)) : took;
}
} // namespace

QString railClock(ExactTime time) { return clock(roundHalvesUp(time)); }

QString railBudget(const Range<Millis>& budget) {
    const auto whole = [](Millis t) { return t % std::chrono::minutes(1) == Millis{0}; };
    const bool minutes = whole(budget.lo()) && whole(budget.hi());
    const auto text = [&](Millis t) {
        return minutes ? QString::number(t / std::chrono::minutes(1)) : clock(t);
    };
    const QString span =
        budget.single() ? text(budget.lo()) : text(budget.lo()) + QChar(u'–') + text(budget.hi());
    return minutes ? tr("%1 min").arg(span) : span;
}

QString pieceName(const RailPiece& piece) {
    switch (piece.kind) {
    case RailPiece::Kind::Opening: return tr("Opening");
    case RailPiece::Kind::Closing: return tr("Closing");
    case RailPiece::Kind::Section: break;
    }
    return kindName(piece.section);
}

QStringList railHeadline(const RailPlan& plan) {
    if (plan.pieces.empty()) return {tr("no month yet: start one to see its hour")};
    QStringList parts{
        tr("planned %1 of %2").arg(railClock(plan.total.planned), railClock(plan.wall)),
        against(plan)};
    if (plan.openSlots > 0) parts << open(plan.openSlots);
    parts << tr("short %1, long %2").arg(railClock(plan.total.low), railClock(plan.total.high));
    return parts;
}

QString railSummary(const RailPlan& plan) {
    if (plan.pieces.empty()) return tr("There is no month yet: start one to see its hour.");
    QStringList sentences{
        tr("Planned %1 of %2, %3")
            .arg(railClock(plan.total.planned), railClock(plan.wall), against(plan)),
        tr("Short %1, long %2").arg(railClock(plan.total.low), railClock(plan.total.high))};
    for (const RailPiece& piece : plan.pieces) sentences << pieceInSummary(piece);
    if (plan.openSlots > 0) sentences << open(plan.openSlots);
    return sentences.join(QStringLiteral(". ")) + QLatin1Char('.');
}

QString pieceSentence(const RailPiece& piece) {
    if (piece.kind != RailPiece::Kind::Section)
        return tr("%1: %2.").arg(pieceName(piece), railClock(piece.time.planned));
    QString text = tr("%1: %2").arg(pieceName(piece), figures(piece.time));
    if (piece.budget) text += tr("; budget %1").arg(railBudget(*piece.budget));
    if (piece.openSlots > 0) text += QStringLiteral("; ") + open(piece.openSlots);
    return text + QLatin1Char('.');
}

QString groupSentence(const RailPiece& piece, const RailGroup& group) {
    QString text =
        tr("%1, group %2: %3").arg(pieceName(piece), plain(group.letter), figures(group.time));
    if (group.openSlots > 0) text += QStringLiteral("; ") + open(group.openSlots);
    return text + QLatin1Char('.');
}

} // namespace bw
