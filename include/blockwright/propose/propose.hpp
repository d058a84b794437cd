// SPDX-License-Identifier: GPL-3.0-or-later
// Proposals: what could stand in the open slots of a draft, the least penalty first.
//
//   place   a slot to fill: open, or filled and to be exchanged. Locked slots stay.
//   answer  an exercise for every place, none of them twice in the session; two answers differ in
//           at least two places (in the one, when there is but one)
//   bound   no answer at all has a lower penalty. When the best answer has it, it is proved best.
//
// The penalty of an answer is what check() says of the month with its exercises filled in.
// docs/proposals.md tells what may stand where, and how the bound is found.
#pragma once
#include "blockwright/floor/options.hpp"
#include "blockwright/rules/shift.hpp"

#include <cstdint>
#include <functional>
#include <stop_token>

namespace bw {

struct SpareKit { // in the slot nothing takes this kit
    Place slot;
    KitId kit;
    bool operator==(const SpareKit&) const = default;
};

struct ProposeOptions {
    static constexpr int kMostAnswers = 20, kMostThreads = 64;

    int answers = 3;
    // A slot, filled or not, or the open slots of a group, section or session; none: all open ones.
    std::vector<Place> places{};
    // Filled slots in the places too; each keeps its pattern, and what stands there may come back.
    // Main lifts stay, but for one that the rule book finds stale: that one must change.
    bool anew = false;
    std::optional<MemberId> member{}; // no answer meets a flag of this member
    std::vector<SpareKit> spare{};
    // The classes that will be played of the answers, all weeks. Then the search counts what its
    // rule kit-queue will add at least, so that the bound is one for the class played, too.
    std::optional<FloorOptions> floor{};
    bool prove = true;      // false: good answers at once, and a bound that is low
    std::uint64_t seed = 1; // of the draws that look for a good answer to begin with
    int threads = 1;        // the answers are the same with any number
};

struct ProposedSlot {
    Place place;
    ExerciseId exercise;
    Dose dose;   // the one that was written down, else the usual one
    Message why; // what it trains, when the gym had it last, what kit it takes
};

struct ProposedMonth {
    Block block; // the draft with the slots filled
    std::vector<ProposedSlot> slots;
    double penalty = 0;
    double queueing = 0; // that the simulated class adds at least; 0 once it was played
    Shift shift;         // from the draft now to this
};

struct Proposal {
    double penaltyNow = 0;
    double bound = 0;
    std::vector<ProposedMonth> answers; // the least penalty first
    bool onFloor = false;               // penalties are those with the simulated class
    bool reordered = false;             // by the simulated class

    [[nodiscard]] double gap() const; // of the first answer; 0: it is proved best
    [[nodiscard]] bool provedBest() const { return !answers.empty() && gap() <= 0; }
};

// Told on the calling thread when a better answer or bound is known.
using ProposeProgress = std::function<void(double best, double bound)>;

// Ends when the answers are proved, or when stopped: then with the best that were found. Why(): an
// option out of range, a place that can't be filled, and which limit leaves nothing for it.
[[nodiscard]] Result<Proposal> propose(const Gym& gym, const Block& draft,
                                       const ProposeOptions& options = {},
                                       const std::stop_token& stop = {},
                                       const ProposeProgress& progress = {});

struct FloorPlay {
    FloorOptions options{}; // but the week: all are played
    int keep = 3;           // answers
    std::stop_token enough; // what was played by then counts, when it is as many as are kept
    std::stop_token drop;   // the proposal stays as it was, but for answers beyond those kept
};

// The best of the answers with the simulated class in their penalties, which can only add to them.
// Where members queue in the best one, others that leave that kit alone in its slots are looked for
// and played as well; `asked` is what the proposal is an answer to. The bound stays: a proof holds
// as far as the best answer has nothing added. Where a month can't be simulated the proposal stays
// as it was, but for answers beyond those kept.
[[nodiscard]] Proposal onFloor(const Gym& gym, const Block& draft, const ProposeOptions& asked,
                               Proposal proposal, const FloorPlay& play,
                               const FloorProgress& progress = {});

// The sentences of an answer: each slot's, then what it settles and what it brings.
[[nodiscard]] std::vector<Message> whyOf(const ProposedMonth& answer);

} // namespace bw
