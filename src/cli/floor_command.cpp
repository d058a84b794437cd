// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/floor_command.hpp"

#include "cli/floor_play.hpp"
#include "cli/floor_words.hpp"
#include "cli/terminal.hpp"

#include <CLI/CLI.hpp>

#include <charconv>

namespace bw::cli {

namespace {
// "6,6": how many start at each group.
std::optional<StartCounts> countsFrom(std::string_view text) {
    StartCounts counts;
    while (true) {
        const auto comma = text.find(',');
        const auto word = text.substr(0, comma);
        int n = 0;
        const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), n);
        if (error != std::errc{} || end != word.data() + word.size()) return std::nullopt;
        counts.heads.push_back(n);
        if (comma == std::string_view::npos) return counts;
        text.remove_prefix(comma + 1);
    }
}

FloorStart startFrom(const std::string& text) {
    if (text.empty()) return StartAsDrafted{};
    if (text == "together") return StartTogether{};
    if (text == "spread") return StartSpread{};
    if (text == "best") return StartBest{};
    if (auto counts = countsFrom(text)) return std::move(*counts);
    throw Ending(Exit::BadInput, "“" + text +
                                     "” is no way to start: say together, spread, best, or how "
                                     "many start at each group, such as 6,6.");
}
} // namespace

CLI::App& FloorCommand::declare(CLI::App& program) {
    auto* part = program.add_subcommand("floor", "The simulated class: who waits where, how long");
    source_.declare(*part);
    asked_.threads = coresHere();
    part->add_option("--members", asked_.members, "How many take part (standard: the places)")
        ->type_name("N")
        ->check(CLI::Range(1, FloorOptions::kMostMembers));
    part->add_option("--week", week_, "Week of the month (standard: 1)")->type_name("W");
    part->add_option("--runs", asked_.runs, "Classes played (standard: 1000)")->type_name("R");
    part->add_option("--seed", asked_.seed, "The same seed, the same classes (standard: 1)")
        ->type_name("S");
    part->add_flag("--steady", asked_.steady, "One class without chance, everybody at pace 1");
    part->add_option("--pace-sigma", asked_.paceSigma, "How much members differ (standard: 0.15)")
        ->type_name("X");
    part->add_option("--set-sigma", asked_.setSigma, "How much sets differ (standard: 0.10)")
        ->type_name("Y");
    part->add_option("--spread", spread_, "together, spread, best, or heads by group: 6,6")
        ->type_name("START");
    part->add_flag("--loads", asked_.loadAware,
                   "Take kit by the load: each member as in their latest result");
    part->add_option("--threads", asked_.threads, "Threads (standard: one a core)")->type_name("T");
    part->add_flag("--timeline", asked_.timeline, "Who does what when in the median run");
    part->add_flag("--no-buys", leaveBuys_, "Leave out what buys the most, which takes longest");
    part->add_flag("--json", json_, "One JSON object, in seconds");
    return *part;
}

FloorOptions FloorCommand::options(const Block& block) const {
    FloorOptions o = asked_;
    o.week = weekOf(block, week_);
    o.start = startFrom(spread_);
    o.buys = !leaveBuys_;
    return o;
}

Exit FloorCommand::run() {
    using Results = GymSource::Results;
    const LoadedGym loaded = source_.load(asked_.loadAware ? Results::Take : Results::Leave);
    const Gym& gym = loaded.gym;
    const auto block = source_.block(gym);
    FloorOptions o = options(*block);
    if (o.loadAware) o.targets = latestLoads(gym, loaded.results);
    const auto answer = [&] {
        Progress progress("Playing");
        return simulateFloor(gym, *block, o, {}, telling(progress));
    }();
    if (!answer) throw Ending(Exit::BadInput, answer.why().english());
    if (json_)
        sayJson(floorJson(o, *answer));
    else
        say(floorText(gym, *block, o, *answer));
    return Exit::Done;
}

} // namespace bw::cli
