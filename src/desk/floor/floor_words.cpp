// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/floor_words.hpp"

#include "desk/bench/minute_rail_words.hpp"
#include "desk/frame/words.hpp"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include <cmath>

namespace bw {

namespace {
struct Floor {
    Q_DECLARE_TR_FUNCTIONS(Floor)
};
QString tr(const char* text, int n = -1) { return Floor::tr(text, nullptr, n); }

QString span(Millis from, Millis to) { return floorClock(from) + QChar(u'–') + floorClock(to); }

QString membersText(int n) { return n == 1 ? tr("1 member") : tr("%1 members").arg(n); }

QString startWords(const FloorView& view) {
    if (std::holds_alternative<StartTogether>(view.asked.start)) return tr("starting together");
    if (std::holds_alternative<StartSpread>(view.asked.start)) return tr("starting spread");
    if (const auto* best = std::get_if<StartBest>(&view.asked.start); best && view.answer->best)
        return tr("starting with %1").arg(headsWords(*view.block, *view.answer->best));
    if (std::holds_alternative<StartCounts>(view.asked.start)) return tr("starting by head count");
    return tr("starting as drafted");
}

// "16 of 100", "none", "all"
QString ofHundred(double share) {
    if (share <= 0) return tr("none");
    if (share >= 1) return tr("all");
    if (share < 0.005) return tr("under 1 of 100");
    if (share >= 0.995) return tr("over 99 of 100");
    return tr("%1 of 100").arg(std::lround(share * 100));
}

QString endsWords(const FloorView& view) {
    const FloorAnswer& a = *view.answer;
    const Millis wall = std::chrono::minutes(view.gym->settings.classMinutes);
    if (a.runs == 1)
        return tr("The class ends at %1 of %2").arg(floorClock(a.finish.p50), floorClock(wall));
    return tr("Half of %1 classes end by %2, 8 in 10 between %3 and %4, %5 after %6")
        .arg(QLocale().toString(a.runs), floorClock(a.finish.p50), floorClock(a.finish.p10),
             floorClock(a.finish.p90), ofHundred(a.overrunChance), floorClock(wall));
}

QString budgetWords(const FloorView& view) {
    QStringList over;
    const auto& sections = view.answer->sections;
    for (std::size_t s = 0; s < sections.size(); ++s) {
        if (sections[s].overBudget < 0.005) continue;
        const QString name = sectionName(*view.block, static_cast<int>(s));
        over << (view.answer->runs == 1
                     ? name
                     : tr("%1 in %2").arg(name, ofHundred(sections[s].overBudget)));
    }
    return over.isEmpty() ? tr("Every section keeps to its budget")
                          : tr("Longer than its budget is %1").arg(over.join(QStringLiteral(", ")));
}

QString waitWords(const FloorView& view) {
    const FloorAnswer& a = *view.answer;
    if (a.wait.mean < MeanTime(500)) return tr("Nobody waits for kit");
    auto kit = a.kit;
    std::ranges::stable_sort(kit, std::greater{}, [](const auto& use) { return use.wait.mean; });
    QStringList most;
    for (const FloorKitUse& use : kit)
        if (most.size() < 3 && use.wait.mean >= MeanTime(1000))
            most << tr("%1 for %2").arg(floorClock(use.wait.mean), kitName(*view.gym, use.kit));
    const QString all = tr("A member waits %1 for kit").arg(floorClock(a.wait.mean));
    return most.isEmpty() ? all : tr("%1: %2").arg(all, most.join(QStringLiteral(", ")));
}

QString roundsWords(const FloorView& view) {
    std::vector<std::pair<double, QString>> few;
    const auto& sections = view.answer->sections;
    for (std::size_t s = 0; s < sections.size(); ++s)
        for (std::size_t g = 0; g < sections[s].groups.size(); ++g) {
            const double reached = sections[s].groups[g].reachedHigh;
            const Place place{static_cast<int>(s), static_cast<int>(g), -1};
            if (reached < 0.995) few.emplace_back(reached, slotMark(*view.block, place));
        }
    if (few.empty()) return tr("Everybody gets to the last round of every group");
    std::ranges::stable_sort(few, {}, [](const auto& one) { return one.first; });
    QStringList each;
    for (const auto& [reached, mark] : few)
        each << tr("%1 by %2").arg(mark, reached > 0 ? percent(reached) : tr("nobody"));
    return tr("The last round is reached in %1, elsewhere by all")
        .arg(each.join(QStringLiteral(", ")));
}

QString laneWords(const FloorView& view, const Lane& lane) {
    if (lane.member >= 0) return tr("Member %1").arg(lane.member + 1);
    const QString kit = kitName(*view.gym, *lane.kit);
    const KitItem* item = view.gym->findKit(*lane.kit);
    if (lane.unit < 0 || !item) return kit;
    return tr("%1, %2 of %3").arg(kit).arg(lane.unit + 1).arg(item->units);
}

QString exerciseAt(const FloorView& view, Place place) {
    const Slot* slot = slotAt(*view.block, place);
    if (!slot || !slot->exercise) return tr("open slot");
    const Exercise* e = view.gym->shelf.find(*slot->exercise);
    return plain(e ? e->name : slot->exercise->text());
}

QString doing(const FloorView& view, const LanePiece& piece) {
    const QString mark = piece.place.group < 0 ? QString() : slotMark(*view.block, piece.place);
    switch (piece.kind) {
    case LanePiece::Kind::Talk: return tr("the coach talks");
    case LanePiece::Kind::Rest:
        return tr("rests after round %1 of %2").arg(piece.round + 1).arg(mark);
    case LanePiece::Kind::Through: return tr("is through with the section, waits for the others");
    case LanePiece::Kind::Wait:
        return piece.lacked ? tr("waits for %1, to do %2 %3")
                                  .arg(kitName(*view.gym, *piece.lacked), mark,
                                       exerciseAt(view, piece.place))
                            : tr("waits to do %1 %2").arg(mark, exerciseAt(view, piece.place));
    case LanePiece::Kind::Line:
        return piece.count == 1 ? tr("1 member waits") : tr("%1 members wait").arg(piece.count);
    case LanePiece::Kind::Hold:
        return mark.isEmpty() ? tr("member %1").arg(piece.member + 1)
                              : tr("member %1, %2").arg(piece.member + 1).arg(mark);
    case LanePiece::Kind::Set: break;
    }
    return tr("%1 %2, round %3").arg(mark, exerciseAt(view, piece.place)).arg(piece.round + 1);
}
} // namespace

QString floorClock(MeanTime time) { return railClock(Millis{std::llround(time.count())}); }

QString percent(double share) {
    if (share > 0 && share < 0.005) return tr("under 1 %");
    if (share < 1 && share >= 0.995) return tr("over 99 %");
    return tr("%1 %").arg(std::lround(share * 100));
}

QString kitName(const Gym& gym, const KitId& id) {
    const KitItem* item = gym.findKit(id);
    return plain(item ? item->name : id.text());
}

QString slotMark(const Block& block, Place place) {
    const QString letter = plain(groupLetter(block, place));
    return place.isSlot() ? letter + QString::number(place.slot + 1) : letter;
}

QString sectionName(const Block& block, int section) {
    const Section& here = block.sections[static_cast<std::size_t>(section)];
    const QString name = kindName(here.kind);
    const auto alike = std::ranges::count(block.sections, here.kind, &Section::kind);
    if (alike < 2 || here.groups.empty()) return name;
    const QString first = slotMark(block, {section, 0, -1});
    const QString last = slotMark(block, {section, static_cast<int>(here.groups.size()) - 1, -1});
    return name + QLatin1Char(' ') + (first == last ? first : first + QChar(u'–') + last);
}

QString floorLead(const FloorView& view) {
    if (view.why) return say(*view.why);
    if (!view.answer) return {};
    return tr("%1 in week %2, %3. %4.")
        .arg(membersText(view.answer->members))
        .arg(view.asked.week.number())
        .arg(startWords(view), endsWords(view));
}

QString floorDetails(const FloorView& view) {
    if (!view.answer) return {};
    return tr("%1. %2. %3.").arg(waitWords(view), budgetWords(view), roundsWords(view));
}

QString floorSummary(const FloorView& view) {
    const QString details = floorDetails(view);
    return details.isEmpty() ? floorLead(view) : floorLead(view) + QLatin1Char(' ') + details;
}

QString floorInShort(const FloorView& view) {
    if (view.why) return tr("can't be played on this floor");
    if (!view.answer) return {};
    const FloorAnswer& a = *view.answer;
    const QString ends = tr("floor %1").arg(span(a.finish.p10, a.finish.p90));
    return a.overrunChance > 0
               ? tr("%1, %2 of classes too late").arg(ends, percent(a.overrunChance))
               : ends;
}

QString finishSentence(const FloorView& view) {
    if (!view.answer) return {};
    return endsWords(view) + QLatin1Char('.');
}

QString sectionEndSentence(const QString& section, const FloorTimes& end, Millis planned) {
    return tr("%1 ends at %2 in half of the simulated classes, between %3 and %4 in 8 of 10; "
              "planned %5.")
        .arg(section, floorClock(end.p50), floorClock(end.p10), floorClock(end.p90),
             floorClock(planned));
}

QString pieceWords(const FloorView& view, const Lane& lane, const LanePiece& piece) {
    return QStringLiteral("%1 · %2 (%3) · %4")
        .arg(laneWords(view, lane), span(piece.from, piece.to), floorClock(piece.to - piece.from),
             doing(view, piece));
}

QString headsWords(const Block& block, const FloorHeads& heads) {
    QStringList sections;
    for (std::size_t s = 0; s < heads.counts.size(); ++s) {
        QStringList groups;
        for (std::size_t g = 0; g < heads.counts[s].size(); ++g)
            groups << QStringLiteral("%1 %2")
                          .arg(slotMark(block, {static_cast<int>(s), static_cast<int>(g), -1}))
                          .arg(heads.counts[s][g]);
        if (!groups.isEmpty()) sections << groups.join(QStringLiteral(", "));
    }
    return sections.join(QStringLiteral("; "));
}

} // namespace bw
