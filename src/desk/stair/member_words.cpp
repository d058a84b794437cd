// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/stair/member_words.hpp"

#include "blockwright/ledger/mass_text.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"
#include "desk/stair/stair_words.hpp"
#include "sheets/worded.hpp"

#include <QCoreApplication>

namespace bw {

namespace {
QString tr(const char* text) { return QCoreApplication::translate("Stair", text); }

QString paragraph(const QString& text, const QColor& ink) {
    return QStringLiteral("<p style=\"color:%1; margin:0 0 6px 0\">%2</p>")
        .arg(ink.name(), text.toHtmlEscaped());
}

QString heading(const QString& text) {
    return QStringLiteral("<p style=\"color:%1; margin:0 0 6px 0\"><b>%2</b></p>")
        .arg(inks().ink.name(), text.toHtmlEscaped());
}

QString nameAt(const Gym& gym, const Block& block, Place place) {
    const Slot* slot = slotAt(block, place);
    const Exercise* e = slot && slot->exercise ? gym.shelf.find(*slot->exercise) : nullptr;
    if (e) return plain(e->name);
    return slot && slot->exercise ? plain(slot->exercise->text()) : tr("open slot");
}

QString labelAt(const Block& block, Place place) {
    return plain(groupLetter(block, place)) + QString::number(place.slot + 1);
}

// The weeks that say the same stand together.
struct Lines {
    QString weeks, lead, why;
};
std::vector<Lines> weekLines(const SlotTargets& targets, MassUnit unit) {
    std::vector<Lines> out;
    int from = 0;
    for (const WeekTarget& w : targets.weeks) {
        const QString lead =
            w.target.loading ? say(loadingText(*w.target.loading, unit)) : QString();
        const QString why = say(w.target.text);
        const int n = w.plan.week.number();
        if (!out.empty() && out.back().lead == lead && out.back().why == why) {
            out.back().weeks = tr("Weeks %1–%2").arg(from).arg(n);
            continue;
        }
        from = n;
        out.push_back({tr("Week %1").arg(n), lead, why});
    }
    return out;
}

QString weeksOf(const SlotTargets& targets, MassUnit unit) {
    QString text;
    for (const Lines& line : weekLines(targets, unit)) {
        QString head = line.weeks;
        if (!line.lead.isEmpty()) head += QStringLiteral(" · ") + line.lead;
        text += QStringLiteral("<p style=\"margin:0 0 5px 0; color:%1\"><b>%2</b><br>"
                               "<span style=\"color:%3\">%4</span></p>")
                    .arg(inks().ink.name(), head.toHtmlEscaped(), inks().quiet.name(),
                         line.why.toHtmlEscaped());
    }
    return text;
}

// What a flag changes elsewhere in the session.
QString otherSwaps(const Gym& gym, const Block& block, Place here, const MemberStair& member) {
    QString text;
    for (const SlotTargets& t : member.slots) {
        if (!t.instead || t.place == here) continue;
        const QString to =
            t.exercise && !t.weeks.empty() ? plain(t.exercise->name) : tr("leave it out");
        text += paragraph(
            tr("%1 %2 → %3").arg(labelAt(block, t.place), nameAt(gym, block, t.place), to),
            inks().ink);
    }
    return text.isEmpty() ? text : heading(tr("Instead, in other slots")) + text;
}
} // namespace

QString slotPage(const Gym& gym, const Block& block, Place place, const MemberStair& member) {
    const SlotTargets* t = targetsAt(member, place);
    const Inks& k = inks();
    QString page = heading(labelAt(block, place) + QLatin1Char(' ') + nameAt(gym, block, place));
    if (!t) {
        page += paragraph(tr("Nothing is drafted here that the Shelf knows."), k.quiet);
        return page + otherSwaps(gym, block, place, member);
    }
    if (t->instead) {
        if (t->exercise && !t->weeks.empty())
            page += heading(tr("Instead: %1").arg(plain(t->exercise->name)));
        page += paragraph(say(t->instead->text), k.ink);
        page += paragraph(tr("A licensed professional decides what is right."), k.quiet);
    }
    if (t->estimate) {
        page += paragraph(say(explain(*t->estimate, member.rules.unit, gym.shelf)), k.ink);
        for (const Message& m : remarks(*t->estimate, member.rules))
            page += paragraph(say(m), k.ink);
    }
    return page + weeksOf(*t, member.rules.unit) + otherSwaps(gym, block, place, member);
}

QString flagsOf(const Member& member) {
    QStringList flags;
    for (const Flag& flag : member.flags) {
        const QString what = vocabularyWord(wordOf(flag.demand)) + QStringLiteral(": ") +
                             vocabularyWord(wordOf(flag.level));
        flags << (flag.note.empty() ? what : tr("%1 (%2)").arg(what, plain(flag.note)));
    }
    return flags.isEmpty() ? QString() : tr("Flags: %1.").arg(flags.join(QLatin1String("; ")));
}

} // namespace bw
