// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/check_command.hpp"

#include "blockwright/rules/check.hpp"
#include "blockwright/rules/floor_search.hpp"
#include "cli/floor_play.hpp"
#include "cli/heading.hpp"
#include "cli/json_text.hpp"
#include "cli/table.hpp"
#include "cli/terminal.hpp"

#include <CLI/CLI.hpp>
#include <fmt/core.h>

namespace bw::cli {

namespace {
Json limitJson(const LimitValue& limit) {
    if (!limit.band) return number(limit.lo);
    return Json::array({number(limit.lo), number(limit.hi)});
}

Json findingJson(const Block& block, const Finding& finding) {
    Json tries = Json::array();
    for (const Remedy& remedy : finding.remedies) tries.push_back(remedy.label.english());
    return {{"rule", finding.rule},
            {"level", wordOf(finding.level)},
            {"place", placeText(block, finding.place)},
            {"measured", number(finding.measured)},
            {"limit", limitJson(finding.limit)},
            {"unit", finding.unit},
            {"basis", finding.basis.english()},
            {"text", finding.text.english()},
            {"try", std::move(tries)}};
}

Json checkJson(const Block& block, const CheckResult& result) {
    Json findings = Json::array();
    for (const Finding& f : result.findings) findings.push_back(findingJson(block, f));
    Json accepted = Json::array();
    for (const AcceptedFinding& a : result.accepted) {
        accepted.push_back(findingJson(block, a.finding));
        accepted.back()["reason"] = a.reason;
    }
    return {{"penalty", number(result.penalty)},
            {"findings", std::move(findings)},
            {"accepted", std::move(accepted)}};
}

std::string_view shapeOf(Level level) {
    switch (level) {
    case Level::Stop: return "■";
    case Level::Look: return "▲";
    case Level::Note: return "●";
    }
    return "";
}

std::string limitText(const Finding& f) {
    const std::string unit = f.unit.empty() ? "" : " " + f.unit;
    const std::string limit = f.limit.band ? fmt::format("{:.4g} to {:.4g}", f.limit.lo, f.limit.hi)
                                           : fmt::format("{:.4g}", f.limit.lo);
    return fmt::format("measured {:.4g}{}, limit {}{}: {}", f.measured, unit, limit, unit,
                       f.basis.english());
}

std::string weeksText(const Block& block, const Finding& f) {
    if (f.weeks.empty() || f.weeks.size() == block.stair.size()) return {};
    std::string text = f.weeks.size() == 1 ? " · week" : " · weeks";
    for (const int w : f.weeks) text += ' ' + std::to_string(w);
    return text;
}

// An accepted one comes with its reason, and nothing to try.
std::string findingText(const Block& block, const Finding& f, const std::string& reason = {}) {
    constexpr std::size_t kWidth = 88, kIndent = 8;
    const std::string blanks(kIndent, ' ');
    const auto line = [&](const std::string& text) {
        return blanks + wrapped(text, kWidth, kIndent) + '\n';
    };
    std::string text = fmt::format("{} {}  {}{} · {}\n", shapeOf(f.level), wordOf(f.level),
                                   placeText(block, f.place), weeksText(block, f), f.rule);
    text += line(f.text.english()) + line(limitText(f));
    if (!reason.empty()) return text + line("accepted: " + reason) + '\n';
    for (const Remedy& remedy : f.remedies) text += line("try: " + remedy.label.english());
    return text + '\n';
}

std::string checkText(const Gym& gym, const Block& block, const CheckResult& result) {
    std::string text = headingOf(gym, block) + "\n\n";
    for (const Finding& f : result.findings) text += findingText(block, f);
    if (!result.accepted.empty()) text += "Accepted, and not counted:\n\n";
    for (const AcceptedFinding& a : result.accepted)
        text += findingText(block, a.finding, a.reason);
    return text + fmt::format("■ {} stop  ▲ {} look  ● {} note   penalty {:g}\n",
                              result.count(Level::Stop), result.count(Level::Look),
                              result.count(Level::Note), result.penalty);
}

// None where the class can't be simulated; that is told on standard error.
std::optional<FloorStudy> studied(const Gym& gym, const Block& block, std::optional<Week> week,
                                  int runs) {
    FloorOptions o;
    o.runs = runs;
    o.threads = coresHere();
    const FloorSearch search = floorSearch(gym, block);
    const auto study = [&] {
        Progress progress("Playing");
        return studyFloor(gym, block, o, week, {}, telling(progress), &search);
    }();
    if (study) return *study;
    complain("The class was not simulated. " + study.why().english());
    return std::nullopt;
}
} // namespace

CLI::App& CheckCommand::declare(CLI::App& program) {
    auto* part = program.add_subcommand("check", "What the rule book says of the month");
    source_.declare(*part);
    part->add_option("--week", week_, "One week (standard: all)")->type_name("W");
    part->add_option("--floor-runs", runs_,
                     "Classes simulated for the rules of the floor, with seed 1 (standard: 1000; "
                     "0: none, and those rules are silent)")
        ->type_name("R")
        ->check(CLI::Range(0, FloorOptions::kMostRuns));
    part->add_flag("--json", json_, "One JSON object");
    return *part;
}

Exit CheckCommand::run() {
    const Gym gym = source_.load().gym;
    const auto block = source_.block(gym);
    std::optional<Week> week;
    if (week_ != 0) week = weekOf(*block, week_);
    std::optional<FloorStudy> study;
    // What was accepted was accepted of the month: a single week is held to that.
    const auto studiedWeek = block->accepted.empty() ? week : std::nullopt;
    if (runs_ > 0) study = studied(gym, *block, studiedWeek, runs_);
    const CheckResult result = check(gym, *block, week, study ? &*study : nullptr);
    if (json_)
        sayJson(checkJson(*block, result));
    else
        say(checkText(gym, *block, result));
    return result.count(Level::Stop) > 0 ? Exit::Stops : Exit::Done;
}

} // namespace bw::cli
