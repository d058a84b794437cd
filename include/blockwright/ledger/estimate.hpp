// SPDX-License-Identifier: GPL-3.0-or-later
// How strong a member is in an exercise, as far as the results tell: the load that could be lifted
// once on an ordinary day, with an interval that should hold the truth 8 times in 10. How it comes
// about stands in docs/ledger.md. Not meant for comparing members.
#pragma once
#include "blockwright/ledger/ledger_rules.hpp"
#include "blockwright/model/message.hpp"

namespace bw {

// The best set of a day: the heaviest, of equals the one with most repetitions.
struct TopSet {
    Date date;
    int reps = 0;
    std::optional<Rir> rir;
    std::optional<Mass> load; // none: bodyweight
    bool operator==(const TopSet&) const = default;
};

struct Estimate {
    double kg = 0, lowKg = 0, highKg = 0;
    int days = 0;              // with results that count
    std::optional<Date> since; // the first of them
    std::optional<TopSet> last;
    bool atLeast = false; // no set said how many were in reserve, so none were reckoned
    bool outside = false; // the last day's sets were all outside the range of the equation
    bool far = false;     // the last day was so far from the others that it counted little
    // Passed on from another exercise, for want of results of its own: then days is 0.
    std::optional<ExerciseId> from;
    double ratio = 1;
};

// One sentence that says where the estimate comes from.
[[nodiscard]] Message explain(const Estimate& estimate, MassUnit unit, const Shelf& shelf);
// What a coach should know before trusting it; mostly nothing.
[[nodiscard]] std::vector<Message> remarks(const Estimate& estimate, const LedgerRules& rules);

} // namespace bw
