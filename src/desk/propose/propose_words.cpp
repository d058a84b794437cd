// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/propose/propose_words.hpp"

#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"

#include <QCoreApplication>
#include <QStringList>

namespace bw {

namespace {
struct Proposing {
    Q_DECLARE_TR_FUNCTIONS(Proposing)
};
QString tr(const char* text) { return Proposing::tr(text); }
QString number(double n) { return QString::number(n, 'g', 6); }

QString proofWords(const Proposal& proposal, std::size_t answer) {
    if (answer == 0 && proposal.provedBest()) return tr("proved best");
    if (answer == 0)
        return tr("not proved best: another filling could have %1 less")
            .arg(number(proposal.gap()));
    const double more = proposal.answers[answer].penalty - proposal.answers.front().penalty;
    return more > 0 ? tr("%1 more than answer 1").arg(number(more)) : tr("as good as answer 1");
}

QString found(const QString& what, const Finding& finding) {
    return what.arg(levelShape(finding.level) + QLatin1Char(' ') + say(finding.text));
}
} // namespace

QString answerWords(const Proposal& proposal, std::size_t answer, bool playing) {
    const QString words =
        tr("Answer %1 of %2 · penalty %3 → %4 %5 · %6")
            .arg(QString::number(answer + 1), QString::number(proposal.answers.size()),
                 number(proposal.penaltyNow), number(proposal.answers[answer].penalty),
                 proposal.onFloor ? tr("with the class played") : tr("on paper"),
                 proofWords(proposal, answer));
    if (playing) return words + tr(" · playing the classes…");
    return proposal.reordered ? words + tr(" · the class changed the order") : words;
}

QString lookingWords(double best, double bound) {
    return tr("Looking for the best… so far penalty %1, none can be below %2")
        .arg(number(best), number(bound));
}

QString chosenWords(const ProposedMonth& answer) {
    QStringList lines;
    for (const ProposedSlot& slot : answer.slots) lines << say(slot.why);
    return lines.join(QLatin1Char('\n'));
}

QString shiftWords(const ProposedMonth& answer) {
    QStringList lines;
    for (const Finding& f : answer.shift.go) lines << found(tr("Settles %1"), f);
    for (const auto& [level, f] : answer.shift.turn)
        lines << found(tr("Was a %1, is %2").arg(levelWord(level), QStringLiteral("%1")), f);
    for (const Finding& f : answer.shift.appear) lines << found(tr("Brings %1"), f);
    return lines.isEmpty() ? tr("Settles nothing, brings nothing.") : lines.join(QLatin1Char('\n'));
}

} // namespace bw
