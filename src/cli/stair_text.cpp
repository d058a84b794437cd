// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/mass_text.hpp"
#include "blockwright/model/shorthand.hpp"
#include "cli/heading.hpp"
#include "cli/ledger_json.hpp"
#include "cli/stair_report.hpp"
#include "cli/table.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace bw::cli {

namespace {
constexpr std::size_t kWidth = 88, kIndent = 8;

std::vector<Table::Align> columns(std::size_t left, std::size_t right) {
    std::vector<Table::Align> out(left, Table::Align::Left);
    out.insert(out.end(), right, Table::Align::Right);
    return out;
}

void addWeekNames(std::vector<std::string>& row, const Block& block) {
    for (std::size_t w = 1; w <= block.stair.size(); ++w) row.push_back(fmt::format("week {}", w));
}

// One line a figure, one column a week.
template <class Cell>
void addRow(Table& table, const std::vector<SessionWeek>& weeks, std::string name, Cell cell) {
    std::vector<std::string> row{std::move(name)};
    for (const SessionWeek& w : weeks) row.push_back(cell(w));
    table.add(std::move(row));
}

std::string whole(double x) { return fmt::format("{:.0f}", x); }
std::string ratio(const std::optional<double>& x) { return x ? fmt::format("{:.2f}", *x) : "–"; }

std::string loadRows(const Block& block, const std::vector<SessionWeek>& weeks, bool done) {
    Table table(columns(1, weeks.size()));
    std::vector<std::string> head{done ? "done" : ""};
    addWeekNames(head, block);
    table.add(std::move(head));
    const auto step = [&](const SessionWeek& w) -> const StairStep& { return block.step(w.week); };
    if (!done) {
        addRow(table, weeks, "intent",
               [&](const auto& w) { return std::string(wordOf(step(w).intent)); });
        addRow(table, weeks, "rounds",
               [&](const auto& w) { return std::string(wordOf(step(w).rounds)); });
        addRow(table, weeks, "in reserve",
               [&](const auto& w) { return rirText(step(w).rir.reps()); });
        addRow(table, weeks, "minutes", [](const auto& w) { return whole(w.minutes); });
    }
    addRow(table, weeks, "visits", [](const auto& w) { return std::to_string(w.visits); });
    addRow(table, weeks, "RPE",
           [](const auto& w) { return w.visits > 0 ? fmt::format("{:.1f}", w.rpe) : "–"; });
    addRow(table, weeks, "load", [](const auto& w) { return whole(w.load.total); });
    addRow(table, weeks, "monotony", [](const auto& w) { return ratio(w.load.monotony); });
    addRow(table, weeks, "strain",
           [](const auto& w) { return w.load.strain ? whole(*w.load.strain) : "–"; });
    return table.text();
}

bool anyVisit(const std::vector<SessionWeek>& weeks) {
    return std::any_of(weeks.begin(), weeks.end(), [](const auto& w) { return w.visits > 0; });
}

std::string caveats(const Block& block) {
    std::string text;
    for (const Message& m : loadCaveats(block)) text += wrapped(m.english(), kWidth, 0) + '\n';
    return text;
}

std::string doseCell(const PlanStep& step, const Exercise* e) {
    if (!step.dose) return {};
    return e ? doseText(*step.dose, e->sides, e->pace.usual()) : doseText(*step.dose, Sides::Both);
}

std::string classCell(const PlanStep& step) {
    const std::string rounds = roundsText(step.rounds);
    return step.rir ? rounds + " · " + rirText(step.rir->reps()) : rounds;
}

std::string classTable(const Gym& gym, const Block& block) {
    Table table(columns(3, block.stair.size()));
    std::vector<std::string> head{"rounds · in reserve", "", "dose"};
    addWeekNames(head, block);
    table.add(std::move(head));
    const History none(gym, block.month);
    for (const SlotFact& slot : Facts::of(gym, block, none, Week::first()).slots) {
        const auto plan = classPlan(block, slot.place);
        const std::string name = slot.exercise         ? slot.exercise->name
                                 : slot.slot->exercise ? slot.slot->exercise->text()
                                                       : "open";
        std::vector<std::string> row{placeText(block, slot.place), name,
                                     doseCell(plan.front(), slot.exercise)};
        for (const PlanStep& step : plan) row.push_back(classCell(step));
        table.add(std::move(row));
    }
    return table.text();
}

std::string targetTable(const Block& block, const MemberStair& member) {
    const MassUnit unit = member.ledger.rules().unit;
    Table table(columns(3, 2 + block.stair.size()));
    std::vector<std::string> head{"", "", "dose", "estimate", "8 times in 10"};
    addWeekNames(head, block);
    table.add(std::move(head));
    for (const SlotTargets& t : member.slots) {
        std::vector<std::string> row{placeText(block, t.place),
                                     t.exercise ? t.exercise->name : "leave it out"};
        row.push_back(t.weeks.empty() ? "" : doseCell(t.weeks.front().plan, t.exercise));
        row.push_back(estimateCell(t.estimate, unit));
        row.push_back(rangeCell(t.estimate, unit));
        for (const WeekTarget& w : t.weeks) row.push_back(targetCell(w.target, unit));
        table.add(std::move(row));
    }
    return table.text();
}

std::string line(const std::string& text) {
    return std::string(kIndent, ' ') + wrapped(text, kWidth, kIndent) + '\n';
}

// Week by week, where the sentence changes.
std::string reasons(const SlotTargets& t, MassUnit unit) {
    std::string text, before;
    for (const WeekTarget& w : t.weeks) {
        std::string say;
        if (w.target.loading) say = loadingText(*w.target.loading, unit).english() + ". ";
        say += w.target.text.english();
        if (say == before) continue;
        text += line(fmt::format("week {}  {}", w.plan.week.number(), say));
        before = std::move(say);
    }
    return text;
}

// Not where there is nothing to choose and nothing to say.
bool worthAWord(const SlotTargets& t) {
    if (t.instead || t.estimate) return true;
    return std::any_of(t.weeks.begin(), t.weeks.end(), [](const WeekTarget& w) {
        return w.target.aim != Aim::Body || w.target.body;
    });
}

std::string slotReasons(const Gym& gym, const Block& block, const SlotTargets& t,
                        const LedgerRules& rules) {
    std::string text = fmt::format("{}  {}\n", placeText(block, t.place),
                                   t.exercise ? t.exercise->name : "leave it out");
    if (t.instead) text += line(t.instead->text.english());
    if (t.estimate) {
        text += line(explain(*t.estimate, rules.unit, gym.shelf).english());
        for (const Message& m : remarks(*t.estimate, rules)) text += line(m.english());
    }
    return text + reasons(t, rules.unit);
}
} // namespace

std::string stairText(const Gym& gym, const Block& block, const MemberStair* member) {
    std::string text = headingOf(gym, block);
    if (member)
        text += fmt::format(" · {} · as of {}", member->member.name, member->ledger.on().text());
    text += "\n\n" + loadRows(block, plannedLoads(gym, block), false) + '\n';
    if (!member) return text + classTable(gym, block) + '\n' + caveats(block);
    if (anyVisit(member->weeks)) text += loadRows(block, member->weeks, true) + '\n';
    text += targetTable(block, *member) + '\n';
    for (const SlotTargets& t : member->slots)
        if (worthAWord(t)) text += slotReasons(gym, block, t, member->ledger.rules());
    return text + '\n' + caveats(block);
}

} // namespace bw::cli
