// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/propose/propose.hpp"

#include "blockwright/model/fitting.hpp"
#include "core/propose/random_draft.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <algorithm>
#include <map>

using namespace bw;
using namespace bw::test;

namespace {
// The roles of a slot, as docs/proposals.md has them.
std::vector<std::string> rolesOf(const Block& block, Place p) {
    const Slot& slot = *slotAt(block, p);
    if (slot.role) return {slot.role->text()};
    const SectionKind kind = sectionAt(block, p)->kind;
    if (kind != SectionKind::Strength) return {std::string(wordOf(kind))};
    const bool pair = groupAt(block, p)->slots.size() == 2, last = pair && p.slot == 1;
    if (block.format == Format::HeavyThenLong && pair)
        return {last ? "strength-long" : "strength-heavy"};
    if (block.format == Format::HeavyThenFast && last) return {"power"};
    return {"strength-heavy", "strength-long"};
}

bool standsIn(const Block& block, const ExerciseId& id) {
    for (const Section& section : block.sections)
        for (const Group& group : section.groups)
            for (const Slot& slot : group.slots)
                if (slot.exercise == id) return true;
    return false;
}

std::vector<ExerciseId> mayStand(const Gym& gym, const Block& block, Place p) {
    const Slot& slot = *slotAt(block, p);
    const auto roles = rolesOf(block, p);
    std::vector<ExerciseId> out;
    for (const auto& e : gym.shelf.entries()) {
        const bool role = std::any_of(roles.begin(), roles.end(),
                                      [&](const std::string& r) { return e->hasRole(r); });
        const bool pattern =
            slot.patterns.empty() ||
            std::count(slot.patterns.begin(), slot.patterns.end(), e->patterns.largest()) > 0;
        const bool dose = !slot.dose || canTime(slot, *e, *slot.dose);
        if (role && pattern && dose && !e->retired && ownsKitFor(gym, *e) &&
            !standsIn(block, e->id))
            out.push_back(e->id);
    }
    return out;
}

std::vector<Place> openSlots(const Block& block) {
    std::vector<Place> out;
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s)
        for (int g = 0; g < static_cast<int>(sectionAt(block, {s})->groups.size()); ++g)
            for (int i = 0; i < static_cast<int>(groupAt(block, {s, g})->slots.size()); ++i)
                if (slotAt(block, {s, g, i})->open()) out.push_back({s, g, i});
    return out;
}

using Names = std::vector<ExerciseId>;

// All fillings of the open slots with their penalties, by the check alone.
std::vector<std::pair<double, Names>> allFillings(const RandomDraft& draft,
                                                  const std::vector<Place>& places) {
    std::vector<std::pair<double, Names>> out;
    std::vector<Names> options;
    for (const Place p : places) options.push_back(mayStand(draft.gym, draft.block, p));
    Names chosen;
    const std::function<void()> choose = [&] {
        if (chosen.size() == places.size()) {
            const Block full = withExercises(draft.gym, draft.block, places, chosen);
            out.emplace_back(check(draft.gym, full).penalty, chosen);
            return;
        }
        for (const ExerciseId& id : options[chosen.size()]) {
            if (std::count(chosen.begin(), chosen.end(), id) > 0) continue;
            chosen.push_back(id);
            choose();
            chosen.pop_back();
        }
    };
    choose();
    return out;
}

std::size_t apart(const Names& a, const Names& b) {
    std::size_t n = 0;
    for (std::size_t i = 0; i < a.size(); ++i) n += a[i] == b[i] ? 0 : 1;
    return n;
}

Names namesOf(const ProposedMonth& answer) {
    Names out;
    for (const ProposedSlot& slot : answer.slots) out.push_back(slot.exercise);
    return out;
}

// The least penalty of a filling that is apart enough from all of these.
std::optional<double> leastApart(const std::vector<std::pair<double, Names>>& all,
                                 const std::vector<Names>& from, std::size_t places) {
    std::optional<double> least;
    for (const auto& [penalty, names] : all) {
        const bool far = std::all_of(from.begin(), from.end(), [&](const Names& other) {
            return apart(names, other) >= std::min<std::size_t>(2, places);
        });
        if (far && (!least || penalty < *least)) least = penalty;
    }
    return least;
}
} // namespace

TEST_CASE("Answers are as good as trying all fillings through the check") {
    int tried = 0, several = 0;
    for (std::uint64_t seed = 1000; tried < 80; ++seed) {
        const RandomDraft draft = randomDraft(seed, 22, 1 + static_cast<int>(seed % 3));
        const auto places = openSlots(draft.block);
        const auto all = allFillings(draft, places);
        const auto proposal = propose(draft.gym, draft.block, {.answers = 4});
        INFO("seed " << seed);
        REQUIRE(proposal.ok() == !all.empty());
        if (!proposal) continue;
        ++tried;
        CHECK(proposal->provedBest());
        std::vector<Names> before;
        for (const ProposedMonth& answer : proposal->answers) {
            const Names names = namesOf(answer);
            const auto same = std::find_if(all.begin(), all.end(),
                                           [&](const auto& one) { return one.second == names; });
            REQUIRE(same != all.end());
            CHECK(answer.penalty == same->first);
            const auto least = leastApart(all, before, places.size());
            REQUIRE(least);
            CHECK(answer.penalty == Approx(*least));
            before.push_back(names);
        }
        if (proposal->answers.size() < 4) CHECK_FALSE(leastApart(all, before, places.size()));
        several += proposal->answers.size() > 1 ? 1 : 0;
    }
    CHECK(several > 40);
}
