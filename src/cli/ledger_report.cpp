// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/ledger_report.hpp"

#include "blockwright/ledger/mass_text.hpp"
#include "cli/ledger_json.hpp"
#include "cli/table.hpp"

#include <fmt/core.h>

namespace bw::cli {

namespace {
using enum Table::Align;
constexpr std::size_t kWidth = 88;

Json dayJson(const LedgerDay& d) {
    Json out = topSetJson(d.top);
    if (!d.estimate) return out;
    out["estimate_kg"] = thousandths(d.estimate->kg);
    out["low_kg"] = thousandths(d.estimate->lowKg);
    out["high_kg"] = thousandths(d.estimate->highKg);
    return out;
}

Json lineJson(const LedgerReport& report, const LedgerLine& line) {
    Json out{{"exercise", line.exercise.text()},
             {"estimate", estimateJson(line.estimate, report.rules, report.gym.shelf)},
             {"last", topSetJson(line.last)},
             {"next", line.next ? targetJson(*line.next, report.rules.unit) : Json(nullptr)}};
    if (!report.oneMember || !report.oneExercise) return out;
    out["days"] = Json::array();
    for (const LedgerDay& d : line.days) out["days"].push_back(dayJson(d));
    return out;
}

std::string nameOf(const LedgerReport& report, const ExerciseId& id) {
    const Exercise* e = report.gym.shelf.find(id);
    return e ? e->name : id.text();
}

std::string setCell(const std::optional<TopSet>& set, MassUnit unit) {
    if (!set) return {};
    std::string text = std::to_string(set->reps);
    if (set->load) text += " × " + massText(*set->load, unit);
    return set->rir ? text + fmt::format(", {} left", rirText(set->rir->reps())) : text;
}

std::vector<std::string> cells(const LedgerReport& report, std::string name,
                               const LedgerLine& line) {
    const MassUnit unit = report.rules.unit;
    return {std::move(name),
            estimateCell(line.estimate, unit),
            rangeCell(line.estimate, unit),
            line.estimate ? std::to_string(line.estimate->days) : "",
            setCell(line.last, unit),
            line.last ? line.last->date.text() : "",
            line.next ? targetCell(*line.next, unit) : ""};
}

Table lineTable(std::string first) {
    Table table({Left, Right, Right, Right, Left, Left, Right});
    table.add({std::move(first), "estimate", "8 times in 10", "days", "last set", "on", "next"});
    return table;
}

std::string memberText(const LedgerReport& report, const LedgerMember& m) {
    Table table = lineTable("exercise");
    for (const LedgerLine& line : m.lines)
        table.add(cells(report, nameOf(report, line.exercise), line));
    return table.text();
}

std::string exerciseText(const LedgerReport& report) {
    Table table = lineTable("member");
    for (const LedgerMember& m : report.members)
        for (const LedgerLine& line : m.lines) table.add(cells(report, m.member->name, line));
    return table.text();
}

std::string daysText(const LedgerReport& report, const LedgerLine& line) {
    const MassUnit unit = report.rules.unit;
    Table table({Left, Left, Right, Right});
    table.add({"day", "best set", "estimate", "8 times in 10"});
    for (const LedgerDay& d : line.days)
        table.add({d.top.date.text(), setCell(d.top, unit), estimateCell(d.estimate, unit),
                   rangeCell(d.estimate, unit)});
    std::string text = table.text() + '\n';
    const auto add = [&](const Message& m) { text += wrapped(m.english(), kWidth, 0) + '\n'; };
    if (line.estimate) {
        add(explain(*line.estimate, unit, report.gym.shelf));
        for (const Message& m : remarks(*line.estimate, report.rules)) add(m);
    }
    if (line.next) add({"Next: %1. %2", {targetCell(*line.next, unit), line.next->text.english()}});
    return text;
}

std::string gymText(const LedgerReport& report) {
    Table table({Left, Left, Right, Left});
    table.add({"member", "name", "exercises", "last set on"});
    for (const LedgerMember& m : report.members) {
        std::string last;
        for (const LedgerLine& line : m.lines)
            if (line.last) last = std::max(last, line.last->date.text());
        table.add({m.member->id.text(), m.member->name, std::to_string(m.lines.size()), last});
    }
    return table.text();
}
} // namespace

Json ledgerJson(const LedgerReport& report) {
    Json out{{"on", report.on.text()},
             {"formula", wordOf(report.rules.formula)},
             {"members", Json::array()}};
    for (const LedgerMember& m : report.members) {
        Json lines = Json::array();
        for (const LedgerLine& line : m.lines) lines.push_back(lineJson(report, line));
        out["members"].push_back({{"member", m.member->id.text()},
                                  {"name", m.member->name},
                                  {"exercises", std::move(lines)}});
    }
    return out;
}

std::string ledgerText(const LedgerReport& report) {
    std::string text = report.gym.settings.name.empty() ? "" : report.gym.settings.name + " · ";
    if (report.oneMember) text += report.members.front().member->name + " · ";
    if (report.oneExercise && !report.members.empty()) {
        for (const LedgerMember& m : report.members)
            if (!m.lines.empty()) {
                text += nameOf(report, m.lines.front().exercise) + " · ";
                break;
            }
    }
    text += fmt::format("as of {} · {}\n\n", report.on.text(), factsOf(report.rules.formula).name);
    if (!report.oneMember)
        return text + (report.oneExercise ? exerciseText(report) : gymText(report));
    const LedgerMember& m = report.members.front();
    if (m.lines.empty()) return text + "No results.\n";
    return text + (report.oneExercise ? daysText(report, m.lines.front()) : memberText(report, m));
}

} // namespace bw::cli
