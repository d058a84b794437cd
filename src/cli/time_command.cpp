// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/time_command.hpp"

#include "blockwright/model/place.hpp"
#include "blockwright/model/shorthand.hpp"
#include "blockwright/time/timing.hpp"
#include "cli/heading.hpp"
#include "cli/json_text.hpp"
#include "cli/table.hpp"
#include "cli/terminal.hpp"

#include <CLI/CLI.hpp>
#include <fmt/core.h>

namespace bw::cli {

namespace {
void putFigures(Json& to, const Figures& figures) {
    to["short"] = number(seconds(figures.low));
    to["planned"] = number(seconds(figures.planned));
    to["long"] = number(seconds(figures.high));
}

Json sectionJson(const Section& section, const SectionTime& time) {
    Json out{{"kind", wordOf(section.kind)}};
    putFigures(out, time.total);
    out["groups"] = Json::array();
    for (const GroupTime& group : time.groups) {
        Json g = Json::object();
        putFigures(g, group.total);
        g["round_planned"] = number(seconds(group.roundPlanned));
        out["groups"].push_back(std::move(g));
    }
    return out;
}

Json timeJson(const Block& block, Week week, const SessionTime& time) {
    Json out{{"week", week.number()}, {"session", Json::object()}, {"sections", Json::array()}};
    putFigures(out["session"], time.total);
    for (std::size_t i = 0; i < time.sections.size(); ++i)
        out["sections"].push_back(sectionJson(block.sections[i], time.sections[i]));
    return out;
}

std::string clock(ExactTime t) { return clockText(roundHalvesUp(t)); }

std::vector<std::string> figureRow(std::string name, const Figures& figures, std::string budget) {
    return {std::move(name), clock(figures.low), clock(figures.planned), clock(figures.high),
            std::move(budget)};
}

std::string budgetText(const Section& section) {
    if (!section.budget) return {};
    return clockText(section.budget->lo()) + "–" + clockText(section.budget->hi());
}

void addSection(Table& table, const Block& block, int index, const SectionTime& time) {
    const Section& section = block.sections[static_cast<std::size_t>(index)];
    table.add(figureRow(std::string(wordOf(section.kind)), time.total, budgetText(section)));
    for (std::size_t g = 0; g < time.groups.size(); ++g) {
        const auto letter = groupLetter(block, {index, static_cast<int>(g), -1});
        table.add(figureRow("  " + letter, time.groups[g].total, {}));
    }
}

std::string timeText(const Gym& gym, const Block& block, Week week, const SessionTime& time) {
    using enum Table::Align;
    Table table({Left, Right, Right, Right, Right});
    table.add({"", "short", "planned", "long", "budget"});
    table.add(figureRow("opening",
                        {gym.settings.opening, gym.settings.opening, gym.settings.opening}, {}));
    for (std::size_t i = 0; i < time.sections.size(); ++i)
        addSection(table, block, static_cast<int>(i), time.sections[i]);
    table.add(figureRow("closing",
                        {gym.settings.closing, gym.settings.closing, gym.settings.closing}, {}));
    table.add(figureRow("session", time.total,
                        clockText(std::chrono::minutes{gym.settings.classMinutes})));
    std::string text =
        fmt::format("{} · week {}\n\n{}", headingOf(gym, block), week.number(), table.text());
    if (time.openSlots > 0)
        text += fmt::format("\n{} open {} not counted yet.\n", time.openSlots,
                            time.openSlots == 1 ? "slot is" : "slots are");
    return text;
}
} // namespace

CLI::App& TimeCommand::declare(CLI::App& program) {
    auto* part = program.add_subcommand("time", "How long the session takes: short, planned, long");
    source_.declare(*part);
    part->add_option("--week", week_, "Week of the month (standard: 1)")->type_name("W");
    part->add_flag("--json", json_, "One JSON object, in seconds");
    return *part;
}

Exit TimeCommand::run() {
    const Gym gym = source_.load().gym;
    const auto block = source_.block(gym);
    const Week week = weekOf(*block, week_);
    const auto time = timeSession(gym.settings, gym.shelf, *block, week);
    if (json_)
        sayJson(timeJson(*block, week, time));
    else
        say(timeText(gym, *block, week, time));
    return Exit::Done;
}

} // namespace bw::cli
