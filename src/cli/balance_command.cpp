// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/balance_command.hpp"

#include "blockwright/balance/balance.hpp"
#include "cli/heading.hpp"
#include "cli/json_text.hpp"
#include "cli/table.hpp"
#include "cli/terminal.hpp"

#include <CLI/CLI.hpp>
#include <fmt/core.h>

#include <array>
#include <set>

namespace bw::cli {

namespace {
struct Named {
    const char* key;
    const char* name;
    Ratio (*of)(const Balance&);
    bool share;
};
constexpr std::array<Named, 4> kRatios{{
    {"push-pull", "push : pull", [](const Balance& b) { return b.pushPull(); }, false},
    {"knee-hip", "knee : hip", [](const Balance& b) { return b.kneeHip(); }, false},
    {"horizontal-vertical", "horizontal : vertical",
     [](const Balance& b) { return b.horizontalVertical(); }, false},
    {"one-sided", "one side at a time", [](const Balance& b) { return b.oneSidedShare(); }, true},
}};

Json ratioJson(const Ratio& ratio) {
    const auto value = ratio.value();
    return value ? number(*value) : Json(nullptr);
}

Json balanceJson(const Balance& balance) {
    Json out{{"patterns", Json::object()},
             {"ratios", Json::object()},
             {"planes", Json::object()},
             {"muscles", Json::object()}};
    for (std::size_t i = 0; i < kCount<Pattern>; ++i)
        out["patterns"][std::string(wordOf(static_cast<Pattern>(i)))] = number(balance.patterns[i]);
    for (const Named& r : kRatios) out["ratios"][r.key] = ratioJson(r.of(balance));
    for (std::size_t i = 0; i < kCount<Plane>; ++i) {
        const auto plane = static_cast<Plane>(i);
        out["planes"][std::string(wordOf(plane))] = ratioJson(balance.planeShare(plane));
    }
    for (const auto& [muscle, sets] : balance.muscles) out["muscles"][muscle.text()] = number(sets);
    return out;
}

std::string sets(double n) { return n > 0 ? fmt::format("{:.1f}", n) : "–"; }
std::string ratio(const Ratio& r) { return r.value() ? fmt::format("{:.2f}", *r.value()) : "–"; }
std::string share(const Ratio& r) {
    return r.value() ? fmt::format("{:.0f} %", 100 * *r.value()) : "–";
}

void addTallies(Table& table, const Balances& both) {
    table.add({"sets in a session"});
    for (std::size_t i = 0; i < kCount<Pattern>; ++i)
        table.add({"  " + std::string(wordOf(static_cast<Pattern>(i))),
                   sets(both.block.patterns[i]), sets(both.window.patterns[i])});
    table.add({"ratios"});
    for (const Named& r : kRatios) {
        const auto text = r.share ? share : ratio;
        table.add({std::string("  ") + r.name, text(r.of(both.block)), text(r.of(both.window))});
    }
    table.add({"planes"});
    for (std::size_t i = 0; i < kCount<Plane>; ++i) {
        const auto plane = static_cast<Plane>(i);
        table.add({"  " + std::string(wordOf(plane)), share(both.block.planeShare(plane)),
                   share(both.window.planeShare(plane))});
    }
}

void addMuscles(Table& table, const Balances& both) {
    std::set<MuscleId> names;
    for (const Balance* b : {&both.block, &both.window})
        for (const auto& [muscle, ignored] : b->muscles) names.insert(muscle);
    if (!names.empty()) table.add({"hard sets in a week"});
    for (const MuscleId& m : names)
        table.add({"  " + m.text(), sets(both.block.hardSets(m)), sets(both.window.hardSets(m))});
}

std::string balanceText(const Gym& gym, const Block& block, int week, const Balances& both) {
    using enum Table::Align;
    Table table({Left, Right, Right});
    const auto months = windowOf(gym, block).size();
    table.add({"", week == 0 ? "month" : fmt::format("week {}", week),
               months == 1 ? "1 month" : fmt::format("{} months", months)});
    addTallies(table, both);
    addMuscles(table, both);
    return headingOf(gym, block) + "\n\n" + table.text();
}
} // namespace

CLI::App& BalanceCommand::declare(CLI::App& program) {
    auto* part = program.add_subcommand("balance", "What the month trains, beside the last months");
    source_.declare(*part);
    part->add_option("--week", week_, "The month's figures for one week (standard: its average)")
        ->type_name("W");
    part->add_flag("--json", json_, "One JSON object");
    return *part;
}

Exit BalanceCommand::run() {
    const Gym gym = source_.load().gym;
    const auto block = source_.block(gym);
    std::optional<Week> week;
    if (week_ != 0) week = weekOf(*block, week_);
    const Balances both = balancesOf(gym, *block, week);
    if (json_)
        sayJson({{"block", balanceJson(both.block)}, {"window", balanceJson(both.window)}});
    else
        say(balanceText(gym, *block, week_, both));
    return Exit::Done;
}

} // namespace bw::cli
