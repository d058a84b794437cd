// SPDX-License-Identifier: GPL-3.0-or-later
// Typed text of a cell into a change of the draft.
#include "blockwright/model/fitting.hpp"
#include "blockwright/model/shelf_search.hpp"
#include "blockwright/model/shorthand.hpp"
#include "desk/bench/sheet_cells.hpp"

#include <QCoreApplication>

namespace bw {

namespace {
using Reading = Result<CellEdit>;

// The same value in the preview and through the verb.
template <class T, class F, class V, class Find>
CellEdit field(Place place, Find find, F T::*member, V value, Did (*verb)(OpenGym&, Spot, V)) {
    return {[=](Block& b) {
                if (T* thing = find(b, place)) thing->*member = value;
            },
            [=](OpenGym& gym, Spot spot) { return verb(gym, spot, value); }};
}
// As the cell shows it, or in English.
bool isWord(std::string_view text, const char* word) {
    return text == word || text == QCoreApplication::translate("Sheet", word).toStdString();
}
Slot* slotIn(Block& b, Place p) { return slotAt(b, p); }
Group* groupIn(Block& b, Place p) { return groupAt(b, p); }
Section* sectionIn(Block& b, Place p) { return sectionAt(b, p); }

Reading readExercise(const SheetCell& c, std::string_view text) {
    if (text.empty())
        return CellEdit{[p = c.row.place](Block& b) { slotAt(b, p)->exercise.reset(); },
                        [](OpenGym& gym, Spot spot) { return openSlot(gym, spot); }};
    if (const Exercise* e = exerciseNamed(c.gym.shelf, text)) return chooseExercise(c, *e);
    return Message{"“%1” is not on the Shelf yet. Choose one of the list, or add it.",
                   {std::string(text)}};
}

Reading readDose(const SheetCell& c, std::string_view text) {
    const Slot& slot = *slotAt(c.block, c.row.place);
    const Exercise* e = slot.exercise ? c.gym.shelf.find(*slot.exercise) : nullptr;
    if (text.empty() && slot.open())
        return CellEdit{[p = c.row.place](Block& b) { slotAt(b, p)->dose.reset(); },
                        [p = c.row.place](OpenGym& gym, Spot spot) {
                            return editBlock(gym, spot, {"dose", {}},
                                             [p](Block& b) { slotAt(b, p)->dose.reset(); });
                        }};
    if (text.empty()) return Message{"A slot with an exercise needs a dose.", {}};
    const auto read = parseDose(text, e ? e->pace.usual() : Measure::Reps);
    if (!read) return read.why();
    if (e && read->perSide && e->sides != Sides::Each)
        return Message{"%1 is not done one side at a time on the Shelf: write the dose without "
                       "“/side”.",
                       {e->name}};
    const Measure m = read->dose.measure();
    if (e && !canTime(slot, *e, read->dose))
        return Message{"%1 has no pace in %2: dose it in %3.",
                       {e->name, std::string(wordOf(m)), std::string(wordOf(e->pace.usual()))}};
    const Dose dose = read->dose;
    return CellEdit{[dose, p = c.row.place](Block& b) { slotAt(b, p)->dose = dose; },
                    [dose](OpenGym& gym, Spot spot) { return setDose(gym, spot, dose); }};
}

Reading readTempo(const SheetCell& c, std::string_view text) {
    std::optional<Tempo> tempo;
    if (!text.empty()) {
        auto read = Tempo::parse(text);
        if (!read) return read.why();
        tempo = *read;
    }
    return field(c.row.place, slotIn, &Slot::tempo, tempo, setTempo);
}

Reading readEffort(const SheetCell& c, std::string_view text) {
    std::optional<Range<Rir>> effort;
    if (!text.empty()) {
        auto read = parseEffort(text);
        if (!read) return read.why();
        effort = *read;
    }
    return field(c.row.place, slotIn, &Slot::effort, effort, setEffort);
}

Reading readRounds(const SheetCell& c, std::string_view text) {
    const auto read = parseRounds(text);
    if (!read) return read.why();
    return field(c.row.place, groupIn, &Group::rounds, *read, setRounds);
}

Reading readRest(const SheetCell& c, std::string_view text) {
    const auto read = parseRest(isWord(text, "no rest") ? "no rest" : text);
    if (!read) return read.why();
    return field(c.row.place, groupIn, &Group::rest, *read, setRest);
}

Reading readBudget(const SheetCell& c, std::string_view text) {
    std::optional<Range<Millis>> budget;
    if (!text.empty() && text != "no budget") {
        auto read = parseBudget(text);
        if (!read) return read.why();
        budget = *read;
    }
    return field(c.row.place, sectionIn, &Section::budget, budget, setBudget);
}

Reading readTalk(const SheetCell& c, std::string_view text) {
    const auto read = parseBudget(text);
    if (!read) return read.why();
    if (!read->single())
        return Message{"The talk is one length of time, such as 1:00 or 45 s.", {}};
    return field(c.row.place, sectionIn, &Section::talk, read->lo(), setTalk);
}

Result<Start> startFrom(std::string_view text, std::size_t groups) {
    if (isWord(text, "together")) return Start{StartTogether{}};
    if (isWord(text, "spread")) return Start{StartSpread{}};
    StartCounts counts;
    int n = -1;
    for (const char c : std::string(text) + "+") {
        if (c >= '0' && c <= '9')
            n = std::min((n < 0 ? 0 : n) * 10 + (c - '0'), 401);
        else if (n >= 0 && (c == '+' || c == ',' || c == ' '))
            counts.heads.push_back(std::exchange(n, -1));
        else if (c != '+' && c != ',' && c != ' ')
            return Message{"“%1” is not a start. Understood: together, spread, or heads per group "
                           "such as 6 + 6.",
                           {std::string(text)}};
    }
    if (counts.heads.size() != groups)
        return Message{"This section has %1 groups: give as many head counts, such as 6 + 6.",
                       {std::to_string(groups)}};
    for (const int heads : counts.heads)
        if (heads > 400) return Message{"At most 400 members start at one group.", {}};
    return Start{counts};
}

Reading readStart(const SheetCell& c, std::string_view text) {
    const auto start = startFrom(text, sectionAt(c.block, c.row.place)->groups.size());
    if (!start) return start.why();
    return field(c.row.place, sectionIn, &Section::start, *start, setStart);
}

Reading readSlot(const SheetCell& c, std::string_view text) {
    switch (c.column) {
    case SheetColumn::Exercise: return readExercise(c, text);
    case SheetColumn::Dose: return readDose(c, text);
    case SheetColumn::Tempo: return readTempo(c, text);
    case SheetColumn::Effort: return readEffort(c, text);
    default: return Message{"There is nothing to type here.", {}};
    }
}
} // namespace

CellEdit chooseExercise(const SheetCell& c, const Exercise& e) {
    const Slot& slot = *slotAt(c.block, c.row.place);
    const Dose dose = fittingDose(slot, e, sectionAt(c.block, c.row.place)->kind);
    return {[id = e.id, dose, p = c.row.place](Block& b) {
                Slot* s = slotAt(b, p);
                s->exercise = id;
                s->dose = dose;
            },
            [id = e.id](OpenGym& gym, Spot spot) { return setExercise(gym, spot, id); }};
}

Result<CellEdit> readCell(const SheetCell& c, const QString& typed) {
    const std::string text = typed.trimmed().toStdString();
    if (c.row.kind == SheetRow::Kind::Slot) return readSlot(c, text);
    if (c.row.kind == SheetRow::Kind::Foot)
        return c.column == SheetColumn::Exercise ? readRounds(c, text) : readRest(c, text);
    switch (c.column) {
    case SheetColumn::Dose: return readTalk(c, text);
    case SheetColumn::Tempo: return readBudget(c, text);
    case SheetColumn::Kit: return readStart(c, typed.trimmed().toLower().toStdString());
    default: return Message{"There is nothing to type here.", {}};
    }
}

} // namespace bw
