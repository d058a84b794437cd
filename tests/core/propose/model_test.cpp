// SPDX-License-Identifier: GPL-3.0-or-later
// What the search adds up by itself must be what the check says, for any filling of any draft.
#include "blockwright/rules/check.hpp"
#include "core/propose/random_draft.hpp"
#include "core/propose/search.hpp"
#include "support/catch.hpp"

#include <map>
#include <random>

using namespace bw;
using namespace bw::proposing;

namespace {
std::string findings(const CheckResult& result) {
    std::string text;
    for (const Finding& f : result.findings)
        text += f.rule + "/" + std::string(wordOf(f.level)) + "/" + f.about + " ";
    return text;
}
} // namespace

TEST_CASE("The search's own sum of a filled month is the penalty of its check") {
    int compared = 0, unsure = 0;
    std::map<std::string, int> rules; // that differ between fillings of one draft
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        const auto draft = test::randomDraft(seed, 24, 1 + static_cast<int>(seed % 5));
        const auto task = taskOf(draft.gym, draft.block, {});
        if (!task) continue;
        const Model model(*task);
        std::mt19937_64 draw(seed);
        Sums room;
        const double bound = Search(model).bound();
        for (int i = 0; i < 6; ++i) {
            Picks picks;
            for (const Seat& seat : model.seats())
                picks.push_back(static_cast<int>(draw() % seat.choices.size()));
            const auto cast = castOf(model, picks, {});
            if (!cast) continue;
            const CheckResult result = check(draft.gym, model.filled(*cast));
            INFO("seed " << seed << ": " << findings(result));
            for (const Finding& f : result.findings) ++rules[f.rule];
            if (model.unsure()) {
                ++unsure;
                CHECK(model.penalty(picks, room) <= result.penalty + 1e-9);
            } else {
                CHECK(model.penalty(picks, room) == Approx(result.penalty));
            }
            CHECK(bound <= result.penalty + 1e-9);
            ++compared;
        }
    }
    CHECK(compared > 1000);
    CHECK(compared - unsure > 500);
    // Every rule that can hang on what stands in a slot was at work.
    for (const char* rule :
         {"session-length",  "section-length", "superset-work",   "power-dose",
          "power-first",     "heavy-first",    "pairing",         "overlap",
          "pattern-missing", "push-pull",      "knee-hip",        "horizontal-vertical",
          "one-sided",       "planes",         "muscle-dose",     "novelty",
          "staleness",       "carry-over",     "stair-jump",      "options",
          "member-flag",     "cue-missing",    "caution-missing", "finisher-dose"})
        CHECK((std::string(rule) + (rules[rule] > 0 ? "" : " never fired")) == rule);
}
