// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/propose_command.hpp"

#include "blockwright/model/shorthand.hpp"
#include "cli/floor_play.hpp"
#include "cli/heading.hpp"
#include "cli/interrupt.hpp"
#include "cli/json_text.hpp"
#include "cli/table.hpp"
#include "cli/terminal.hpp"

#include <CLI/CLI.hpp>
#include <fmt/core.h>

#include <algorithm>
#include <chrono>
#include <thread>

namespace bw::cli {

namespace {
// Asks for an end when the time is over, or the coach has pressed Ctrl-C.
class Watch {
public:
    explicit Watch(double seconds)
        : until_(std::chrono::steady_clock::now() +
                 std::chrono::duration_cast<std::chrono::steady_clock::duration>(
                     std::chrono::duration<double>(seconds))),
          thread_([this](const std::stop_token& done) {
              constexpr std::chrono::milliseconds kOften{5};
              while (!done.stop_requested()) {
                  if (Interrupt::asked() || std::chrono::steady_clock::now() >= until_) {
                      end_.request_stop();
                      return;
                  }
                  std::this_thread::sleep_for(kOften);
              }
          }) {}
    [[nodiscard]] std::stop_token token() const { return end_.get_token(); }

private:
    std::stop_source end_;
    std::chrono::steady_clock::time_point until_;
    std::jthread thread_; // last: it uses the others
};

// More than are asked for, as the simulated class may like another better.
constexpr int kPlayed = 12;

Proposal searched(const Gym& gym, const Block& block, const ProposeOptions& options,
                  const Watch& watch) {
    Progress progress("Looking for the best:");
    auto found = propose(gym, block, options, watch.token(), [&](double best, double bound) {
        progress.at(fmt::format("penalty {:g}, none below {:g}", best, bound));
    });
    if (!found) throw Ending(Exit::BadInput, found.why().english());
    return std::move(found).value();
}

Proposal played(const Gym& gym, const Block& block, const ProposeOptions& options,
                Proposal proposal, int keep, const Watch& watch) {
    FloorPlay play;
    play.options = *options.floor;
    play.keep = keep;
    play.enough = watch.token();
    Progress progress("Playing the classes of the best:");
    auto on = onFloor(gym, block, options, std::move(proposal), play,
                      [&](FloorStage, int done, int total) {
                          progress.at(fmt::format("{} of {}", done, total));
                      });
    if (!on.onFloor) complain("The class can't be simulated: the rules of the floor are left out.");
    return on;
}

Json proposalJson(const Block& block, const Proposal& proposal) {
    Json answers = Json::array();
    for (const ProposedMonth& answer : proposal.answers) {
        Json slots = Json::array();
        for (const ProposedSlot& slot : answer.slots)
            slots.push_back(
                {{"place", placeText(block, slot.place)}, {"exercise", slot.exercise.text()}});
        Json why = Json::array();
        for (const Message& m : whyOf(answer)) why.push_back(m.english());
        answers.push_back({{"penalty", number(answer.penalty)},
                           {"slots", std::move(slots)},
                           {"why", std::move(why)}});
    }
    return {{"proved_best", proposal.provedBest()},
            {"gap", number(proposal.gap())},
            {"penalty_now", number(proposal.penaltyNow)},
            {"answers", std::move(answers)}};
}

std::string verdictOf(const Proposal& proposal) {
    std::string text =
        proposal.provedBest()
            ? "Proved: no other filling of these slots has a lower penalty."
            : fmt::format("Not proved best: another filling could have {:g} less.", proposal.gap());
    if (proposal.reordered) text += " The simulated class has changed the order.";
    return text;
}

std::string proposalText(const Gym& gym, const Block& block, const Proposal& proposal) {
    constexpr std::size_t kWidth = 90, kIndent = 4;
    std::string text = headingOf(gym, block) + "\n\n";
    int n = 0;
    for (const ProposedMonth& answer : proposal.answers) {
        text +=
            fmt::format("{}  penalty {:g}, now {:g}\n", ++n, answer.penalty, proposal.penaltyNow);
        for (const Message& m : whyOf(answer))
            text += std::string(kIndent, ' ') + wrapped(m.english(), kWidth, kIndent) + '\n';
        text += '\n';
    }
    return text + wrapped(verdictOf(proposal), kWidth, 0) + '\n';
}

Place placeIn(const Block& block, const std::string& text) {
    if (const auto place = placeFrom(block, text)) return *place;
    throw Ending(Exit::BadInput, "--slot: the month has no place “" + text +
                                     "”. Places are kind/group/slot: strength/1/2.");
}
} // namespace

CLI::App& ProposeCommand::declare(CLI::App& program) {
    auto* part = program.add_subcommand("propose", "What could stand in the open slots");
    source_.declare(*part);
    part->add_option("--top", options_.answers, "How many answers (standard: 3)")
        ->type_name("K")
        ->check(CLI::Range(1, ProposeOptions::kMostAnswers));
    part->add_option("--seconds", seconds_, "How long to look for a proof (standard: 10)")
        ->type_name("T")
        ->check(CLI::Range(0.0, 86400.0));
    part->add_option("--slot", slots_,
                     "This slot alone, open or to be exchanged; may be said several times")
        ->type_name("PLACE");
    part->add_option("--section", sections_, "The open slots of these sections alone")
        ->type_name("KIND");
    part->add_flag("--anew", options_.anew,
                   "Filled slots too, all but the locked ones and the main lifts that may stay");
    part->add_option("--member", member_, "Nothing that a flag of this member rules out")
        ->type_name("ID");
    part->add_option("--seed", options_.seed, "Of the draws to begin with (standard: 1)")
        ->type_name("S");
    part->add_option("--floor-runs", runs_,
                     "Classes simulated of each answer, with seed 1 (standard: 1000; 0: none)")
        ->type_name("R")
        ->check(CLI::Range(0, FloorOptions::kMostRuns));
    part->add_flag("--json", json_, "One JSON object");
    return *part;
}

ProposeOptions ProposeCommand::asked(const Gym& gym, const Block& block) const {
    ProposeOptions options = options_;
    options.threads = coresHere();
    for (const std::string& text : slots_) options.places.push_back(placeIn(block, text));
    for (const std::string& word : sections_) {
        const auto kind = fromWord<SectionKind>(word);
        const std::size_t before = options.places.size();
        for (int s = 0; s < static_cast<int>(block.sections.size()); ++s)
            if (kind && block.sections[static_cast<std::size_t>(s)].kind == kind)
                options.places.push_back({s});
        if (options.places.size() == before)
            throw Ending(Exit::BadInput, "--section: the month has no section “" + word + "”.");
    }
    if (member_.empty()) return options;
    const auto id = MemberId::parse(member_);
    if (!id || !gym.findMember(*id))
        throw Ending(Exit::BadInput, "--member: the gym has no member “" + member_ + "”.");
    options.member = *id;
    return options;
}

Exit ProposeCommand::run() {
    const Gym gym = source_.load().gym;
    const auto block = source_.block(gym);
    ProposeOptions options = asked(gym, *block);
    const int keep = options.answers;
    if (runs_ > 0) {
        options.answers = std::max(keep, kPlayed);
        options.floor.emplace();
        options.floor->runs = runs_;
        options.floor->threads = options.threads;
    }
    const Watch watch(seconds_);
    Proposal proposal = searched(gym, *block, options, watch);
    if (runs_ > 0) proposal = played(gym, *block, options, std::move(proposal), keep, watch);
    if (json_)
        sayJson(proposalJson(*block, proposal));
    else
        say(proposalText(gym, *block, proposal));
    return Exit::Done;
}

} // namespace bw::cli
