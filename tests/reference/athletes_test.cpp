// SPDX-License-Identifier: GPL-3.0-or-later
// Does an estimate's interval hold the truth as often as it says, and is it better than reckoning
// from the last set alone? Asked of made-up athletes, whose true strength is known.
#include "athletes.hpp"
#include "blockwright/ledger/ledger.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <algorithm>
#include <cmath>

using namespace bw;
using namespace bw::test;

namespace {
struct Score {
    int asked = 0, held = 0;
    std::vector<double> errors, lastSetErrors;

    [[nodiscard]] double share() const { return double{1} * held / asked; }
    static double median(std::vector<double> v) {
        std::nth_element(v.begin(), v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2), v.end());
        return v[v.size() / 2];
    }
};

double lastSetFigure(const LiftResult& r) {
    return oneRepMax(Formula::Epley, r.load->kg(), r.reps + (r.rir ? r.rir->reps() : 0));
}

Score scoreOf(std::uint32_t seed, int athletes) {
    Gym gym;
    gym.shelf.put(exercise("lift", Pattern::Squat));
    Score score;
    for (int a = 0; a < athletes; ++a) {
        const auto looks = athlete(seed, static_cast<std::uint32_t>(a));
        std::vector<LiftResult> results;
        std::map<Date, const Look*> trueOn;
        for (const Look& look : looks) {
            results.insert(results.end(), look.sets.begin(), look.sets.end());
            trueOn[look.date] = &look;
        }
        for (const LedgerDay& day : overTime(gym, results)) {
            if (!day.estimate || day.estimate->atLeast) continue;
            const Look& look = *trueOn.at(day.top.date);
            ++score.asked;
            score.held += look.truth >= day.estimate->lowKg && look.truth <= day.estimate->highKg;
            score.errors.push_back(std::abs(std::log(day.estimate->kg / look.truth)));
            score.lastSetErrors.push_back(
                std::abs(std::log(lastSetFigure(look.sets.back()) / look.truth)));
        }
    }
    return score;
}
} // namespace

TEST_CASE("four intervals in five hold the true strength of made-up athletes") {
    for (const std::uint32_t seed : {1U, 2U, 3U}) {
        const Score score = scoreOf(seed, 100);
        INFO("seed " << seed << ", " << score.asked << " days, held " << score.share()
                     << ", median error " << Score::median(score.errors) << " against "
                     << Score::median(score.lastSetErrors));
        CHECK(score.asked > 5000);
        CHECK(score.share() >= 0.75);
        CHECK(score.share() <= 0.85);
        CHECK(Score::median(score.errors) < 0.75 * Score::median(score.lastSetErrors));
    }
}
