// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>
#include <cmath>

namespace bw::book {

namespace {
std::string reserve(const StairStep& step) { return numberText(step.rir.reps()); }

// The usual stair over as many weeks: low rounds and 4 in reserve to learn, then down to 1.
Remedy usualStair() {
    return {{"Take the usual stair: learn with low rounds and 4 in reserve, then down to 1", {}},
            [](Block& b) {
                const std::size_t weeks = b.stair.size();
                for (std::size_t w = 0; w < weeks; ++w) {
                    StairStep& step = b.stair[w];
                    const double down =
                        weeks < 2 ? 0
                                  : 30.0 * static_cast<double>(w) / static_cast<double>(weeks - 1);
                    step.rir = Rir::fromTenths(40 - static_cast<int>(std::lround(down))).value();
                    step.rounds = w == 0 ? RoundsMode::Low : RoundsMode::Open;
                    step.intent = w == 0           ? Intent::Learn
                                  : w + 1 == weeks ? Intent::Challenge
                                                   : Intent::Build;
                }
            }};
}

Remedy inOrder() {
    return {{"Put the weeks in order of effort", {}}, [](Block& b) {
                std::vector<Rir> rirs;
                for (const StairStep& step : b.stair) rirs.push_back(step.rir);
                std::sort(rirs.rbegin(), rirs.rend());
                for (std::size_t w = 0; w < rirs.size(); ++w) b.stair[w].rir = rirs[w];
            }};
}

// Returns the number of falls that are there.
double judgeFalls(const Facts& facts, Verdict& verdict) {
    const auto& stair = facts.block.stair;
    std::vector<std::size_t> falls; // the easier week of each
    for (std::size_t w = 1; w < stair.size(); ++w)
        if (stair[w].rir > stair[w - 1].rir) falls.push_back(w);
    const auto count = static_cast<double>(falls.size());
    if (count <= verdict.limit("falls").hi) return count;
    const std::size_t w = falls.front();
    Finding& f = verdict.add(
        Level::Look, {}, count, "falls",
        {"Week %1 is easier than week %2: it leaves %3 in reserve after %4.",
         {std::to_string(w + 1), std::to_string(w), reserve(stair[w]), reserve(stair[w - 1])}});
    f.about = "falls";
    f.remedies = {inOrder(), usualStair()};
    return count;
}

void judgeRise(const Facts& facts, Verdict& verdict) {
    const auto& stair = facts.block.stair;
    const double rise = stair.front().rir.reps() - stair.back().rir.reps();
    if (rise >= verdict.limit("rise").lo) return;
    Finding& f = verdict.add(
        Level::Look, {}, rise, "rise",
        {"Week %1 asks for no more effort than week 1: %2 in reserve then, %3 at the start.",
         {std::to_string(stair.size()), reserve(stair.back()), reserve(stair.front())}});
    f.about = "rise";
    f.remedies = {usualStair()};
}

void judgeRounds(const Facts& facts, Verdict& verdict) {
    const auto& stair = facts.block.stair;
    if (stair.front().rounds <= stair.back().rounds) return;
    Finding& f =
        verdict.add(Level::Look, {}, 1, "more_rounds",
                    {"Week 1 asks for more rounds than week %1: the first week is not the one to "
                     "learn in.",
                     {std::to_string(stair.size())}});
    f.about = "rounds";
    f.remedies = {{{"Take the low rounds in week 1", {}},
                   [](Block& b) {
                       if (!b.stair.empty()) b.stair.front().rounds = RoundsMode::Low;
                   }},
                  usualStair()};
}

void judge(const Facts& facts, Verdict& verdict) {
    if (facts.block.stair.size() < 2) return;
    // A stair that falls on its way is told so once.
    if (judgeFalls(facts, verdict) <= verdict.limit("falls").hi) judgeRise(facts, verdict);
    if (verdict.limit("more_rounds").hi < 1) judgeRounds(facts, verdict);
}
} // namespace

Rule stairShape() {
    return {"stair-shape",
            {"The stair begins easy, never gets easier, and ends with its hardest week.", {}},
            {{"falls",
              atMost(0),
              "weeks",
              commonPractice(),
              {"How many weeks may leave more in reserve than the week before.", {}}},
             {"rise",
              atMost(1),
              "reps",
              commonPractice(),
              {"How many repetitions fewer in reserve the last week leaves than the first, at "
               "least.",
               {}}},
             {"more_rounds",
              atMost(0),
              "",
              commonPractice(),
              {"1 when week 1 may ask for more rounds than the last week.", {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
