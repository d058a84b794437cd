// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/almanac/talk_plan.hpp"
#include "blockwright/model/shorthand.hpp"
#include "blockwright/ramp/class_plan.hpp"
#include "sheets/coach_sheets.hpp"
#include "sheets/flow/sheet_flow.hpp"
#include "sheets/slot_words.hpp"

#include <algorithm>

namespace bw {

namespace {
using Look = PagePen::Look;
constexpr double kHeadEms = 1.15;
constexpr std::size_t kCues = 3; // of a new exercise, that the talk names

class Talk {
public:
    Talk(const SheetMatter& matter, SheetFlow& flow)
        : matter_(matter), flow_(flow), t_(flow.type()),
          indent_(flow.ruler().width(QStringLiteral("00:00"), {t_.body, Weight::Bold}) + t_.body) {}

    void item(const TalkItem& item) {
        switch (item.part) {
        case TalkPart::Month: return month(item);
        case TalkPart::New: return fresh(item);
        case TalkPart::Back: return back(item);
        case TalkPart::Stays: return stays(item);
        case TalkPart::Week: return week(item);
        case TalkPart::Care: return care(item);
        case TalkPart::Questions: break;
        }
        put(item, sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Questions")), {});
    }

private:
    // The minute at which it begins stands in the margin.
    void put(const TalkItem& item, const QString& head, const QStringList& points) {
        Band band;
        PagePen pen(flow_.ruler(), band.items);
        pen.left(printed(clockText(item.from)), {0, 0.95 * kHeadEms * t_.body}, indent_,
                 {{t_.body, Weight::Bold}, Ink::Accent, Rank::Second});
        BandColumn(band, flow_.ruler(), flow_.width() - indent_, indent_)
            .add(head, {{kHeadEms * t_.body, Weight::Bold}, Ink::Text, Rank::Second});
        band.height += 0.1 * t_.body;
        flow_.put(std::move(band), 0.9 * t_.body,
                  points.isEmpty() ? SheetFlow::Keep::Free : SheetFlow::Keep::WithNext);
        for (const QString& point : points)
            flow_.text(point, {{t_.body}, Ink::Text, Rank::Second}, 0.1 * t_.body,
                       &point == &points.back() ? SheetFlow::Keep::Free : SheetFlow::Keep::WithNext,
                       indent_);
    }
    void month(const TalkItem& item) {
        QStringList points;
        if (matter_.block.format)
            points << printedFormat(*matter_.block.format) + QStringLiteral(": ") +
                          formatSentence(*matter_.block.format) + QLatin1Char('.');
        for (const Section& section : matter_.block.sections)
            if (const QString line = sectionLine(section); !line.isEmpty()) points << line;
        put(item, sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "What this month is for")), points);
    }
    QString sectionLine(const Section& section) const {
        QStringList names;
        for (const Group& group : section.groups)
            for (const Slot& slot : group.slots)
                if (slot.exercise && (slot.main || section.kind != SectionKind::Strength))
                    names << nameOf(matter_.gym.shelf, *slot.exercise);
        if (names.isEmpty()) return {};
        return sectionName(section.kind) + QStringLiteral(": ") + names.join(QStringLiteral(", ")) +
               QLatin1Char('.');
    }
    void fresh(const TalkItem& item) {
        const NewsLine& line = item.lines.front();
        QStringList points;
        if (const Exercise* e = matter_.gym.shelf.find(line.exercise)) {
            for (std::size_t i = 0; i < std::min(kCues, e->cues.size()); ++i)
                points << QStringLiteral("– ") + printed(e->cues[i]);
            if (!e->cautions.empty())
                points << sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Take care: %1"))
                              .arg(printed(e->cautions.front()));
        }
        put(item, sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "New: %1")).arg(named(line)), points);
    }
    QString named(const NewsLine& line) const {
        return nameOf(matter_.gym.shelf, line.exercise) +
               QStringLiteral(" (%1)").arg(slotLabel(matter_.block, line.place));
    }
    void back(const TalkItem& item) {
        QStringList points;
        for (const NewsLine& line : item.lines) {
            const Exercise* e = matter_.gym.shelf.find(line.exercise);
            QString point = named(line);
            if (e && !e->cues.empty()) point += QStringLiteral(": ") + printed(e->cues.front());
            points << point;
        }
        put(item, sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Back again")), points);
    }
    void stays(const TalkItem& item) {
        QStringList points;
        for (const NewsLine& line : item.lines)
            points << staysText(nameOf(matter_.gym.shelf, line.exercise), line.mainStreak);
        put(item, sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "What stays")), points);
    }
    static QString staysText(const QString& name, int months) {
        if (months < 2)
            return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "%1 again: take up your last load."))
                .arg(name);
        return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "%1, month %2: take up your last load."))
            .arg(name)
            .arg(months);
    }
    void week(const TalkItem& item) {
        const StairStep& step = matter_.block.step(*item.week);
        const DaysOfWeek days = daysOf(matter_.block, *item.week);
        QString head = sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Week %1: %2"))
                           .arg(item.week->number())
                           .arg(intentName(step.intent));
        if (days.from < days.to)
            head += QStringLiteral(" (%1–%2)")
                        .arg(printedDate(days.from).section(QLatin1Char(' '), 0, 0),
                             printedDate(days.to.plusDays(-1)));
        put(item, head, {weekSentence(step)});
    }
    static QString weekSentence(const StairStep& step) {
        static constexpr const char* rounds[] = {
            QT_TRANSLATE_NOOP("bw::sheets", "The fewer rounds of each group."),
            QT_TRANSLATE_NOOP("bw::sheets", "As many rounds as there is time for."),
            QT_TRANSLATE_NOOP("bw::sheets", "All rounds of each group.")};
        static constexpr const char* aims[] = {
            QT_TRANSLATE_NOOP("bw::sheets", "Learn the movements and find your loads."),
            QT_TRANSLATE_NOOP("bw::sheets", "Build: a little more than last week, in good form."),
            QT_TRANSLATE_NOOP("bw::sheets", "Challenge: the heaviest week, in good form.")};
        return sheetSay(aims[static_cast<std::size_t>(step.intent)]) + QLatin1Char(' ') +
               sheetSay(rounds[static_cast<std::size_t>(step.rounds)]) + QLatin1Char(' ') +
               sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Leave %1."))
                   .arg(rirWords(step.rir.reps()));
    }
    void care(const TalkItem& item) {
        put(item, sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Before you start")), {cautionText()});
    }

    const SheetMatter& matter_;
    SheetFlow& flow_;
    const SheetType& t_;
    double indent_;
};
} // namespace

Layout layoutTalk(const SheetMatter& matter, const SheetOptions& options) {
    const auto plan = talkPlan(monthNews(matter.gym, matter.block), matter.block);
    SheetWords words = sheetWords(SheetKind::Talk, matter.gym, matter.block, options);
    const auto minutes = std::chrono::ceil<std::chrono::minutes>(talkLength(plan)).count();
    words.sentence =
        sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "About %1 minutes, questions included."))
            .arg(minutes);
    words.note = cautionText();
    return forStanding([&](SheetReader reader) {
        SheetFlow flow(SheetKind::Talk, matter.block, words, options, reader);
        Talk talk(matter, flow);
        for (const TalkItem& item : plan) talk.item(item);
        return flow.done();
    });
}

} // namespace bw
