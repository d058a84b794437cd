// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/almanac_command.hpp"

#include "blockwright/almanac/almanac.hpp"
#include "cli/json_text.hpp"
#include "cli/table.hpp"
#include "cli/terminal.hpp"

#include <CLI/CLI.hpp>
#include <fmt/core.h>

#include <algorithm>

namespace bw::cli {

namespace {
Json ratioJson(const Ratio& ratio) {
    const auto value = ratio.value();
    return value ? number(*value) : Json(nullptr);
}

Json balanceJson(const Balance& balance) {
    Json patterns = Json::object();
    for (std::size_t p = 0; p < kCount<Pattern>; ++p)
        patterns[std::string(Spelling<Pattern>::words[p])] = number(balance.patterns[p]);
    return {{"push_pull", ratioJson(balance.pushPull())},
            {"knee_hip", ratioJson(balance.kneeHip())},
            {"patterns", std::move(patterns)}};
}

Json monthJson(const AlmanacMonth& m) {
    Json fresh = Json::array();
    for (const ExerciseId& id : m.fresh) fresh.push_back(id.text());
    Json out{{"month", m.month.text()}, {"drafted", m.block != nullptr}};
    if (m.block) {
        out["title"] = m.block->title;
        out["format"] = m.block->format ? Json(wordOf(*m.block->format)) : Json(nullptr);
    }
    out["new"] = std::move(fresh);
    if (m.block) out["balance"] = balanceJson(m.balance);
    return out;
}

Json formatJson(const Almanac& a, const AlmanacFormat& f) {
    Json months = Json::array();
    for (std::size_t c = 0; c < f.streaks.size(); ++c)
        if (f.streaks[c] > 0)
            months.push_back({{"month", a.months[c].month.text()}, {"streak", f.streaks[c]}});
    return {{"format", wordOf(f.format)},
            {"last_used", f.last ? Json(f.last->text()) : Json(nullptr)},
            {"months", std::move(months)}};
}

Json rowJson(const Almanac& a, const AlmanacRow& row) {
    Json months = Json::array();
    for (std::size_t c = 0; c < row.cells.size(); ++c) {
        const AlmanacCell& cell = row.cells[c];
        if (!cell.used()) continue;
        months.push_back({{"month", a.months[c].month.text()},
                          {"streak", cell.streak},
                          {"main", cell.main},
                          {"main_streak", cell.mainStreak}});
    }
    const auto pattern = row.pattern();
    return {{"exercise", row.exercise.text()},
            {"name", row.name()},
            {"pattern", pattern ? Json(wordOf(*pattern)) : Json(nullptr)},
            {"first_used", row.first.text()},
            {"last_used", row.last.text()},
            {"months", std::move(months)}};
}

Json almanacJson(const Almanac& a) {
    Json out{{"from", a.months.front().month.text()},
             {"until", a.months.back().month.text()},
             {"months", Json::array()},
             {"formats", Json::array()},
             {"exercises", Json::array()}};
    for (const AlmanacMonth& m : a.months) out["months"].push_back(monthJson(m));
    for (const AlmanacFormat& f : a.formats) out["formats"].push_back(formatJson(a, f));
    for (const AlmanacRow& row : a.rows)
        if (row.usedInView()) out["exercises"].push_back(rowJson(a, row));
    out["window"] = balanceJson(a.window);
    out["window"]["weeks"] = a.window.weeks;
    return out;
}

std::string ratioText(const Ratio& ratio) {
    const auto value = ratio.value();
    return value ? fmt::format("{:.2f}", *value) : "–";
}

std::string monthsText(const Almanac& a) {
    using enum Table::Align;
    Table table({Left, Left, Left, Right, Right, Right});
    table.add({"month", "title", "format", "new", "push:pull", "knee:hip"});
    for (const AlmanacMonth& m : a.months) {
        if (!m.block) {
            table.add({m.month.text(), "no block"});
            continue;
        }
        const auto format = m.block->format ? wordOf(*m.block->format) : std::string_view();
        table.add({m.month.text(), m.block->title, std::string(format),
                   m.fresh.empty() ? "" : std::to_string(m.fresh.size()),
                   ratioText(m.balance.pushPull()), ratioText(m.balance.kneeHip())});
    }
    table.add(
        {"window", "", "", "", ratioText(a.window.pushPull()), ratioText(a.window.kneeHip())});
    return table.text();
}

std::string formatsText(const Almanac& a) {
    using enum Table::Align;
    Table table({Left, Right, Left});
    table.add({"format", "months", "last used"});
    for (const AlmanacFormat& f : a.formats) {
        const auto times = std::count_if(f.streaks.begin(), f.streaks.end(),
                                         [](int streak) { return streak > 0; });
        table.add({std::string(wordOf(f.format)), std::to_string(times),
                   f.last ? f.last->text() : "never"});
    }
    return table.text();
}

// "2 " used, second month in a row; "2*" as a main lift.
std::string cellText(const AlmanacCell& cell) {
    if (!cell.used()) return {};
    return std::to_string(cell.streak) + (cell.main ? '*' : ' ');
}

// Years and months above the columns; a year only where it begins.
void addHeads(Table& table, const Almanac& a) {
    std::vector<std::string> years{""}, months{""};
    for (const AlmanacMonth& m : a.months) {
        const bool begins = &m == &a.months.front() || m.month.month() == 1;
        years.push_back(begins ? fmt::format("{:02} ", m.month.year() % 100) : "");
        months.push_back(fmt::format("{:02} ", m.month.month()));
    }
    months.emplace_back("last used");
    table.add(std::move(years));
    table.add(std::move(months));
}

std::string rotationText(const Almanac& a) {
    std::vector<Table::Align> columns(a.months.size() + 2, Table::Align::Right);
    columns.front() = columns.back() = Table::Align::Left;
    Table table(std::move(columns));
    addHeads(table, a);
    std::optional<std::string> heading;
    for (const AlmanacRow& row : a.rows) {
        if (!row.usedInView()) continue;
        const auto pattern = row.pattern();
        const std::string under(pattern ? wordOf(*pattern) : "no pattern");
        if (heading != under) table.add({under});
        heading = under;
        std::vector<std::string> cells{"  " + row.name()};
        for (const AlmanacCell& cell : row.cells) cells.push_back(cellText(cell));
        cells.push_back(row.last.text());
        table.add(std::move(cells));
    }
    return table.text();
}

std::string almanacText(const Gym& gym, const Almanac& a) {
    const std::string name = gym.settings.name.empty() ? "" : gym.settings.name + " · ";
    return fmt::format("{}{} to {}\n\n{}\n{}\n{}\nA number: months in a row; *: a main lift.\n",
                       name, a.months.front().month.text(), a.months.back().month.text(),
                       monthsText(a), formatsText(a), rotationText(a));
}
} // namespace

CLI::App& AlmanacCommand::declare(CLI::App& program) {
    auto* part = program.add_subcommand("almanac", "The months side by side: what was used when");
    source_.declare(*part);
    part->add_option("--months", months_, "How many, up to --month (standard: 12; 0: all)")
        ->type_name("N")
        ->check(CLI::Range(0, 1200));
    part->add_flag("--json", json_, "One JSON object");
    return *part;
}

Exit AlmanacCommand::run() {
    const Gym gym = source_.load().gym;
    const Almanac a = almanac(gym, {months_, source_.block(gym)->month});
    if (json_)
        sayJson(almanacJson(a));
    else
        say(almanacText(gym, a));
    return Exit::Done;
}

} // namespace bw::cli
