// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shorthand.hpp"
#include "core/rules/book/book.hpp"
#include "core/rules/book/floor_facts.hpp"

namespace bw::book {

namespace {
Message runsOver(const Facts& facts, const FloorAnswer& answer) {
    return {"%1 of %2 simulated classes run over the %3 of the class; they end at %4 on average.",
            {percentText(answer.overrunChance), std::to_string(answer.runs),
             clockText(std::chrono::minutes{facts.gym.settings.classMinutes}),
             clockOf(answer.finish.mean)}};
}

void judge(const Facts& facts, Verdict& verdict) {
    if (!facts.floor) return;
    constexpr MeanTime kSooner{15'000};
    const FloorAnswer& answer = *facts.floor->answer;
    const bool stop = answer.overrunChance > verdict.limit("stop_share").hi;
    if (!stop && answer.overrunChance <= verdict.limit("look_share").hi) return;
    Finding& f = verdict.add(stop ? Level::Stop : Level::Look, {}, answer.overrunChance,
                             stop ? "stop_share" : "look_share", runsOver(facts, answer));
    f.remedies = provenRemedies(
        *facts.floor, [&](const ProvenChange& change) { return change.saves >= kSooner; });
}
} // namespace

Rule overrunChance() {
    return {"overrun-chance",
            {"The simulated class, with its queues, ends in time.", {}},
            {{"look_share",
              atMost(0.1),
              "share",
              thisGymsSetting(),
              {"How many of the simulated classes may run over before a coach should look.", {}}},
             {"stop_share",
              atMost(0.5),
              "share",
              thisGymsSetting(),
              {"When more of them run over, the draft is stopped.", {}}}},
            judge};
}

} // namespace bw::book
