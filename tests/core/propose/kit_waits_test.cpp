// SPDX-License-Identifier: GPL-3.0-or-later
// The bound of the queueing at kit against the simulated class itself.
#include "blockwright/floor/study.hpp"
#include "blockwright/rules/check.hpp"
#include "core/floor/floor_gym.hpp"
#include "core/propose/random_draft.hpp"
#include "core/propose/search.hpp"
#include "support/catch.hpp"
#include "support/draws.hpp"

#include <map>
#include <random>

using namespace bw;
using namespace bw::proposing;
using namespace bw::test;

namespace {
// Kit of either claim, enough or not, and often something else to take.
RandomDraft crowdedDraft(std::uint64_t seed, int open) {
    RandomDraft out = randomDraft(seed, 30, open);
    std::mt19937_64 draw(seed);
    out.gym.settings.places = 2 + static_cast<int>(draw() % 13);
    out.gym.settings.classMinutes = 60;
    for (KitItem& item : out.gym.kit) {
        item.units = 1 + static_cast<int>(draw() % (seed % 3 == 0 ? 30 : 5));
        item.claim = draw() % 2 == 0 ? Claim::Set : Claim::Group;
    }
    const auto all = out.gym.shelf.entries();
    for (const Shelf::Entry& entry : std::vector<Shelf::Entry>(all.begin(), all.end())) {
        Exercise e = *entry;
        const auto n = static_cast<std::size_t>(draw() % out.gym.kit.size());
        if (!e.needs.empty() && draw() % 4 == 0) e.needs.push_back({{out.gym.kit[n].id, 1, {}}});
        if (!e.needs.empty() && draw() % 4 == 0)
            e.needs.front().push_back({out.gym.kit[n].id, 1, {}});
        out.gym.shelf.put(std::move(e));
    }
    return out;
}

FloorOptions classOf(int members, int runs, std::uint64_t seed = 1) { // no runs: steady
    FloorOptions out;
    out.members = members;
    out.runs = std::max(1, runs);
    out.steady = runs == 0;
    out.seed = seed;
    return out;
}

// The longest mean wait of any week at each kit item, all members together, in ms.
std::map<KitId, double> waited(const FloorStudy& study) {
    std::map<KitId, double> out;
    for (const FloorWeek& week : study.weeks)
        for (const FloorKitUse& use : week.answer->kit)
            out[use.kit] = std::max(out[use.kit], use.wait.mean.count() * week.answer->members);
    return out;
}

std::optional<Picks> drawn(const Model& model, std::mt19937_64& draw) {
    Picks picks;
    for (const Seat& seat : model.seats())
        picks.push_back(static_cast<int>(draw() % seat.choices.size()));
    return castOf(model, picks, {}) ? std::optional(picks) : std::nullopt;
}

// What the lines say of a month that is filled.
std::map<KitId, double> leastOf(const Gym& gym, const Block& block, const FloorOptions& floor) {
    Task task{gym,
              std::make_unique<const Block>(block),
              std::make_unique<const History>(gym, block.month),
              nullptr,
              {},
              floor};
    task.facts =
        std::make_unique<const Facts>(Facts::of(gym, *task.block, *task.history, Week::first()));
    LeastWaits waits(task);
    std::vector<std::int64_t> sums(2 * waits.lines().size());
    waits.addFixed(sums);
    std::map<KitId, double> out;
    for (std::size_t i = 0; i < waits.lines().size(); ++i)
        if (sums[2 * i + 1] > 0)
            out[waits.lines()[i].kit] =
                std::max(out[waits.lines()[i].kit], static_cast<double>(sums[2 * i]));
    return out;
}
} // namespace

TEST_CASE("No line says more waiting than the simulated class has") {
    int compared = 0, said = 0;
    double share = 0; // of the waiting that is there
    for (std::uint64_t seed = 1; seed <= draws(400); ++seed) {
        const RandomDraft draft = crowdedDraft(seed, 2);
        const FloorOptions floor = classOf(0, seed % 5 == 0 ? 0 : seed % 2 == 0 ? 20 : 1, seed);
        const auto task = taskOf(draft.gym, draft.block, {});
        if (!task) continue;
        const Model model(*task);
        std::mt19937_64 draw(seed);
        const auto picks = drawn(model, draw);
        if (!picks) continue;
        const Block month = model.filled(*castOf(model, *picks, {}));
        const auto study = studyFloor(draft.gym, month, floor);
        if (!study) continue;
        ++compared;
        const auto truth = waited(*study);
        for (const auto& [kit, least] : leastOf(draft.gym, month, floor)) {
            INFO("seed " << seed << ", " << kit.text());
            const double real = truth.contains(kit) ? truth.at(kit) : 0;
            CHECK(least <= real + 1e-6);
            if (least <= 0) continue;
            ++said;
            share += least / real;
        }
    }
    CHECK(compared > draws(400) / 4);
    CHECK(said > compared / 4);
    CHECK(share / said > 0.3);
}

TEST_CASE("Of members who all come at once to a kit item the line says the whole wait") {
    TinyGym tiny;
    tiny.own("bike", 3, Claim::Set).own("sled", 3, Claim::Group);
    const bool kept = GENERATE(false, true);
    tiny.add({group(rounds(1, 1), secondsRange(0, 0),
                    {tiny.work(120, {{{kept ? "sled" : "bike", 1}}})})});
    const FloorOptions floor = classOf(12, 0);
    // 3 begin at once, 3 after two minutes, 3 after four, 3 after six: 36 minutes in all.
    const auto least = leastOf(tiny.gym, tiny.draft, floor);
    REQUIRE(least.size() == 1);
    CHECK(least.begin()->second == Approx(36 * 60'000).margin(100));
    CHECK(tiny.steady(12).kit.at(0).wait.mean.count() == Approx(180'000));
}

TEST_CASE("Rounds at a kit item wait by the law of the busiest server") {
    // 10 members, 2 sleds, 30 s on the sled and 30 s of rest, 10 rounds. The asymptotic bound of
    // operational analysis (Denning and Buzen, Computing Surveys 10, 1978; from memory): a round
    // takes N x D / m = 150 s or more, so 90 s of waiting. The line counts the ten rounds of each.
    TinyGym tiny;
    tiny.own("sled", 2, Claim::Set);
    tiny.add({group(rounds(10, 10), secondsRange(30, 30), {tiny.work(30, {{{"sled", 1}}})})});
    const FloorOptions floor = classOf(10, 0);
    const auto least = leastOf(tiny.gym, tiny.draft, floor);
    REQUIRE(least.size() == 1);
    const double real = tiny.steady(10).kit.at(0).wait.mean.count() * 10;
    CHECK(least.begin()->second <= real);
    CHECK(real == Approx(10 * 10 * 90'000).epsilon(0.06));
}

TEST_CASE("With the class in the search the bound holds for the class played") {
    int compared = 0, higher = 0;
    for (std::uint64_t seed = 1; seed <= draws(80); ++seed) {
        const RandomDraft draft = crowdedDraft(seed, 2);
        const FloorOptions floor = classOf(0, 10, seed);
        ProposeOptions paper{.answers = 2}, crowd{.answers = 2};
        crowd.floor = floor;
        const auto a = propose(draft.gym, draft.block, paper);
        const auto b = propose(draft.gym, draft.block, crowd);
        REQUIRE(a.ok() == b.ok());
        if (!a) continue;
        CHECK(b->bound >= a->bound - 1e-9);
        higher += b->bound > a->bound + 1e-6 ? 1 : 0;
        for (const auto* answers : {&a->answers, &b->answers})
            for (const ProposedMonth& answer : *answers) {
                const auto study = studyFloor(draft.gym, answer.block, floor);
                if (!study) continue;
                INFO("seed " << seed);
                const double played = check(draft.gym, answer.block, {}, &*study).penalty;
                CHECK(b->bound <= played + 1e-6);
                CHECK(answer.penalty + answer.queueing <= played + 1e-6);
                ++compared;
            }
    }
    CHECK(compared > draws(80));
    CHECK(higher > 0);
}
