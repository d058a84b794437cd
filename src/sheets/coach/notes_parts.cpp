// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/coach/notes_parts.hpp"
#include "blockwright/rules/member_substitute.hpp"
#include "sheets/slot_words.hpp"

#include <algorithm>

namespace bw {

namespace {
using Look = PagePen::Look;
using Keep = SheetFlow::Keep;

Look bodyLook(const SheetFlow& flow, Ink ink = Ink::Text) {
    return {{flow.type().body}, ink, Rank::Second};
}

QString newsText(const SheetMatter& matter, const NewsLine& line) {
    const QString where = slotLabel(matter.block, line.place) + QStringLiteral("  ") +
                          nameOf(matter.gym.shelf, line.exercise);
    if (line.fresh) return where + sheetSay(QT_TRANSLATE_NOOP("bw::sheets", ": new to this gym"));
    return where +
           sheetSay(QT_TRANSLATE_NOOP("bw::sheets", ": last in %1")).arg(printedMonth(*line.since));
}

QString mainsText(const SheetMatter& matter, const MonthNews& news) {
    QStringList mains;
    for (const NewsLine& line : news.lines)
        if (line.mainStreak > 1)
            mains << sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "%1 (month %2)"))
                         .arg(nameOf(matter.gym.shelf, line.exercise))
                         .arg(line.mainStreak);
    return mains.join(QStringLiteral(", "));
}

QString goneText(const SheetMatter& matter, const MonthNews& news) {
    QStringList gone;
    for (const ExerciseId& id : news.gone) gone << nameOf(matter.gym.shelf, id);
    return gone.join(QStringLiteral(", "));
}

QStringList nameWords(const Member& member) {
    return printed(member.name).split(QLatin1Char(' '), Qt::SkipEmptyParts);
}

QString shortName(const Member& member, bool firstWhole) {
    const QStringList words = nameWords(member);
    if (words.isEmpty()) return {};
    const auto initial = [](const QString& word) { return word.left(1) + QLatin1Char('.'); };
    const QString first = firstWhole ? words.front() : initial(words.front());
    return words.size() < 2 ? first : first + QLatin1Char(' ') + initial(words.back());
}
} // namespace

void putNews(SheetFlow& flow, const SheetMatter& matter, const MonthNews& news) {
    if (!news.previous) return;
    flow.heading(sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "New against %1"))
                     .arg(printedMonth(*news.previous)));
    bool any = false;
    for (const NewsLine& line : news.lines) {
        if (!line.changed) continue;
        flow.text(newsText(matter, line), bodyLook(flow), 0.1 * flow.type().body, Keep::WithNext);
        any = true;
    }
    if (!any)
        flow.text(sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "No exercise is new.")), bodyLook(flow),
                  0, Keep::WithNext);
    const double gap = 0.5 * flow.type().body;
    if (const QString mains = mainsText(matter, news); !mains.isEmpty())
        flow.text(
            sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Main lifts carried on: %1.")).arg(mains),
            bodyLook(flow), gap, Keep::WithNext);
    if (const QString gone = goneText(matter, news); !gone.isEmpty())
        flow.text(sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Not taken any more: %1.")).arg(gone),
                  bodyLook(flow, Ink::Quiet), gap);
}

void putFindings(SheetFlow& flow, const CheckResult& verdict, const Block& block) {
    const int stops = verdict.count(Level::Stop), looks = verdict.count(Level::Look);
    if (verdict.accepted.empty() && stops + looks == 0) return;
    flow.heading(sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Accepted findings")));
    for (const AcceptedFinding& a : verdict.accepted) {
        const QString place = printed(placeText(block, a.finding.place));
        flow.text(place + QStringLiteral(": ") + printed(a.finding.text), bodyLook(flow),
                  0.4 * flow.type().body, Keep::WithNext);
        flow.text(sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Accepted: %1")).arg(printed(a.reason)),
                  bodyLook(flow, Ink::Accent), 0, Keep::Free, 2 * flow.type().body);
    }
    if (verdict.accepted.empty())
        flow.text(sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "None.")), bodyLook(flow), 0,
                  Keep::WithNext);
    if (stops + looks > 0)
        flow.text(
            sheetSay(QT_TRANSLATE_NOOP("bw::sheets",
                                       "Still open on the day of printing: %1 stop, %2 look."))
                .arg(stops)
                .arg(looks),
            bodyLook(flow, Ink::Quiet), 0.4 * flow.type().body);
}

QString discreetName(const Gym& gym, const Member& member) {
    for (const bool whole : {false, true}) {
        const QString name = shortName(member, whole);
        const auto same = std::count_if(gym.members.begin(), gym.members.end(), [&](const auto& m) {
            return (m.active || m.id == member.id) && shortName(m, whole) == name;
        });
        if (same == 1) return name;
    }
    return printed(member.name);
}

namespace {
QString flagsText(const Member& member) {
    QStringList flags;
    for (const Flag& flag : member.flags)
        flags << sheetSay(flag.level == FlagLevel::Avoid
                              ? QT_TRANSLATE_NOOP("bw::sheets", "avoid %1")
                              : QT_TRANSLATE_NOOP("bw::sheets", "limit %1"))
                     .arg(printedDemand(flag.demand));
    return flags.join(QStringLiteral(", "));
}

QString insteadText(const SheetMatter& matter, const MemberSubstitute& s) {
    const QString label = slotLabel(matter.block, s.place);
    if (!s.substitute)
        return sheetSay(
                   QT_TRANSLATE_NOOP("bw::sheets", "%1: leave it out; nothing on the Shelf fits"))
            .arg(label);
    return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "%1: %2"))
        .arg(label, nameOf(matter.gym.shelf, s.substitute->id));
}
} // namespace

void putFlags(SheetFlow& flow, const SheetMatter& matter) {
    const History history(matter.gym, matter.block.month);
    const Facts facts = Facts::of(matter.gym, matter.block, history, Week::first());
    const auto cases = memberSubstitutes(facts);
    bool first = true;
    for (const Member& member : matter.gym.members) {
        if (!member.active || member.flags.empty()) continue;
        if (std::exchange(first, false)) {
            flow.turnPage();
            flow.heading(sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Flags")));
            flow.text(sheetSay(QT_TRANSLATE_NOOP(
                          "bw::sheets", "A flag only makes the program look for another exercise; "
                                        "a licensed professional decides what is right.")),
                      bodyLook(flow, Ink::Quiet), 0);
        }
        QStringList instead;
        for (const MemberSubstitute& s : cases)
            if (s.member == &member) instead << insteadText(matter, s);
        flow.text(discreetName(matter.gym, member) + QStringLiteral(" · ") + flagsText(member),
                  {{flow.type().body, Weight::Bold}, Ink::Text, Rank::Second},
                  0.6 * flow.type().body, Keep::WithNext);
        flow.text(instead.isEmpty()
                      ? sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Nothing in this month meets it."))
                      : instead.join(QStringLiteral("; ")) + QLatin1Char('.'),
                  bodyLook(flow), 0, Keep::Free, 2 * flow.type().body);
    }
}

} // namespace bw
