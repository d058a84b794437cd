// SPDX-License-Identifier: GPL-3.0-or-later
// Proposals against a general solver, which is given the rules as a model written apart from the
// search (proposals/model.mzn). Where it is missing, the test says so and compares nothing.
#include "blockwright/propose/propose.hpp"
#include "core/propose/random_draft.hpp"
#include "reference/proposals/tables.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <algorithm>

using namespace bw;
using namespace bw::test;

TEST_CASE("a general solver finds no better proposal, and the same penalty") {
    if (!hasMiniZinc()) {
        WARN("MiniZinc with Gecode is not installed (Debian: minizinc, flatzinc); nothing was "
             "compared.");
        return;
    }
    constexpr int kDrafts = 50, kMostSeconds = 60;
    const TempFolder folder;
    int compared = 0, cost = 0;
    for (std::uint64_t seed = 5000; compared < kDrafts; ++seed) {
        RandomDraft draft = randomDraft(seed, 20, 2 + static_cast<int>(seed % 3));
        draft.gym = comparable(std::move(draft.gym));
        const Seating seating = seatingOf(draft.gym, draft.block);
        if (std::any_of(seating.fits.begin(), seating.fits.end(),
                        [](const auto& fits) { return fits.empty(); }))
            continue;
        INFO("seed " << seed);
        const auto proposal = propose(draft.gym, draft.block, {.answers = 1});
        const auto solved = solve(folder.path(), "draft" + std::to_string(seed), seating,
                                  dataOf(draft.gym, draft.block, seating), kMostSeconds);
        REQUIRE(solved);
        ++compared;
        REQUIRE(solved->solvable == proposal.ok());
        if (!proposal) continue;
        REQUIRE(solved->proved);
        CHECK(proposal->provedBest());
        CHECK(proposal->answers.front().penalty == Approx(solved->penalty));
        const Block theirs =
            withExercises(draft.gym, draft.block, seating.places, solved->exercises);
        CHECK(check(draft.gym, theirs).penalty == Approx(solved->penalty));
        cost += solved->penalty > 0 ? 1 : 0;
    }
    CHECK(cost > kDrafts / 2);
}
