// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/wall/wall_content.hpp"
#include "blockwright/model/place.hpp"
#include "blockwright/model/shorthand.hpp"
#include "blockwright/time/timing.hpp"
#include "sheets/sheet_words.hpp"
#include "sheets/slot_words.hpp"

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
// The nearest neighbour only: a wall is no library.
QString neighbour(const Shelf& shelf, const std::vector<ExerciseId>& ids, const char* english) {
    for (const ExerciseId& id : ids)
        if (shelf.find(id)) return sheetSay(english).arg(nameOf(shelf, id));
    return {};
}

WallRow rowOf(const Shelf& shelf, const Slot& slot, const QString& label) {
    WallRow row;
    row.label = label;
    row.main = slot.main;
    const Exercise* exercise = slot.exercise ? shelf.find(*slot.exercise) : nullptr;
    if (slot.exercise) row.name = nameOf(shelf, *slot.exercise);
    if (slot.dose) row.dose = printedDose(*slot.dose, exercise ? exercise->sides : Sides::Both);
    if (slot.tempo) row.tempo = printed(slot.tempo->text());
    if (slot.effort) row.effort = printed(effortText(*slot.effort));
    if (exercise) {
        row.easier =
            neighbour(shelf, exercise->easier, QT_TRANSLATE_NOOP("bw::sheets", "easier: %1"));
        row.harder =
            neighbour(shelf, exercise->harder, QT_TRANSLATE_NOOP("bw::sheets", "harder: %1"));
    }
    return row;
}

WallGroup groupOf(const Shelf& shelf, const Block& block, Place place) {
    const Group& group = *groupAt(block, place);
    const QString letter = printed(groupLetter(block, place));
    WallGroup out;
    const bool one = group.rounds == Range<int>(1);
    out.rounds = sheetSay(one ? QT_TRANSLATE_NOOP("bw::sheets", "%1 round")
                              : QT_TRANSLATE_NOOP("bw::sheets", "%1 rounds"))
                     .arg(printed(roundsText(group.rounds)));
    const QString rest = printed(restText(group.rest));
    out.rest = group.rest.hi() > Millis{0}
                   ? sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "rest %1")).arg(rest)
                   : sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "no rest"));
    for (std::size_t i = 0; i < group.slots.size(); ++i)
        out.rows.push_back(rowOf(shelf, group.slots[i], letter + QString::number(i + 1)));
    return out;
}

// Whole minutes, from the shortest week to the longest.
std::vector<QString> minutesOf(const Gym& gym, const Block& block) {
    std::vector<Range<int>> spans;
    for (int n = 1; n <= static_cast<int>(block.stair.size()) && n <= Week::kMost; ++n) {
        const auto time = timeSession(gym.settings, gym.shelf, block, Week::of(n).value());
        for (std::size_t s = 0; s < time.sections.size(); ++s) {
            const int m =
                static_cast<int>(std::lround(seconds(time.sections[s].total.planned) / 60));
            if (n == 1)
                spans.emplace_back(m);
            else
                spans[s] =
                    Range<int>::between(std::min(spans[s].lo(), m), std::max(spans[s].hi(), m));
        }
    }
    std::vector<QString> texts(block.sections.size());
    for (std::size_t s = 0; s < spans.size(); ++s)
        if (spans[s].hi() > 0)
            texts[s] = sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "%1 min"))
                           .arg(printed(roundsText(spans[s])));
    return texts;
}

std::vector<WallWeek> weeksOf(const Block& block) {
    std::vector<Rir> levels;
    for (const StairStep& step : block.stair) levels.push_back(step.rir);
    std::sort(levels.begin(), levels.end(), std::greater<>());
    levels.erase(std::unique(levels.begin(), levels.end()), levels.end());
    std::vector<WallWeek> weeks;
    for (const StairStep& step : block.stair) {
        const auto level = std::find(levels.begin(), levels.end(), step.rir) - levels.begin();
        weeks.push_back({sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Week %1")).arg(weeks.size() + 1),
                         intentName(step.intent), printed(effortText(Range<Rir>(step.rir))),
                         roundsName(step.rounds), static_cast<int>(level)});
    }
    return weeks;
}

template <class Has> bool anyRow(const WallContent& content, Has has) {
    for (const WallSection& section : content.sections)
        for (const WallGroup& group : section.groups)
            if (std::any_of(group.rows.begin(), group.rows.end(), has)) return true;
    return false;
}

QStringList legendOf(const WallContent& content) {
    QStringList legend;
    if (anyRow(content, [](const WallRow& r) { return r.main; }))
        legend << sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Bold name: a main lift of the month."));
    if (anyRow(content, [](const WallRow& r) { return !r.tempo.isEmpty(); }))
        legend << sheetSay(QT_TRANSLATE_NOOP(
            "bw::sheets", "Tempo: seconds to lower, pause, lift, pause; X is as fast as "
                          "possible."));
    legend << sheetSay(
        QT_TRANSLATE_NOOP("bw::sheets", "RIR: repetitions that you could still have done."));
    return legend;
}

void nameBlock(WallContent& content, const Block& block) {
    content.month = printedMonth(block.month);
    content.title = printed(block.title);
    if (!block.format) return;
    content.format = printedFormat(*block.format);
    content.formatSentence = formatSentence(*block.format);
}
} // namespace

WallContent wallContent(const Gym& gym, const Block& block, const SheetOptions& options) {
    WallContent content;
    nameBlock(content, block);
    content.running = blockText(block);
    content.whose = footText(gym, block, options);
    content.weeks = weeksOf(block);
    const auto minutes = minutesOf(gym, block);
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s) {
        const Section& section = *sectionAt(block, {s});
        WallSection out{sectionName(section.kind), minutes[static_cast<std::size_t>(s)], {}};
        for (int g = 0; g < static_cast<int>(section.groups.size()); ++g)
            if (!section.groups[static_cast<std::size_t>(g)].slots.empty())
                out.groups.push_back(groupOf(gym.shelf, block, {s, g}));
        content.sections.push_back(std::move(out));
    }
    content.legend = legendOf(content);
    return content;
}

QString openSlotText() { return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "coach’s choice")); }

} // namespace bw
