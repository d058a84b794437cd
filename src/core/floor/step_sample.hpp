// SPDX-License-Identifier: GPL-3.0-or-later
// What the draws of a class make of a slot, whatever exercise stands in it. A set is set-up plus
// amount x pace x noise x time of one, and only the set-up and the time of one are the exercise's.
#pragma once
#include "core/floor/draws.hpp"

#include <map>
#include <tuple>

namespace bw {

// A kind of dose in a slot.
struct SampledSets {
    Place slot;
    double lo = 0, hi = 0; // as in PlanWork
    bool whole = false;
    int most = 1; // rounds that may be asked for
    auto operator<=>(const SampledSets&) const = default;
};

class StepSample {
public:
    StepSample(const FloorOptions& options, int members);

    // Of a unit: what an amount is rounded to, in ranks().
    [[nodiscard]] static double parts(bool whole);

    // By rank: what the member with the least of it has to do in the first rounds, then the next,
    // each the mean over all classes; in the smallest unit of the dose. Of the members named, which
    // must be the same for a group at every call.
    const std::vector<double>& ranks(const SampledSets& sets, int rounds,
                                     const std::vector<int>& members);
    // What these members' first rests come to, all together; the mean over all classes, in ms.
    double rests(Place group, Range<Millis> rest, int count, const std::vector<int>& members);

private:
    template <class F> void play(const FloorPlan& plan, F take);
    void sample(const SampledSets& sets, const std::vector<int>& members,
                std::vector<std::vector<double>>& byRounds);

    FloorOptions options_;
    int members_;
    std::map<SampledSets, std::vector<std::vector<double>>> known_; // by rounds
};

// The least that the finishing times of such jobs can add up to when each of the servers does one
// at a time: the shortest first (Conway, Maxwell and Miller, Theory of Scheduling, 1967), and
// doing a job in parts is no help (McNaughton, Management Science 6, 1959; both from memory).
// `ascending`: how long each takes. The jobs of several sums can be bounded one after the other, as
// the least of a sum is not below the sum of the leasts.
[[nodiscard]] double leastTotal(const std::vector<double>& ascending, int servers);
// Jobs of the same length, in that length.
[[nodiscard]] double leastTotal(std::size_t jobs, int servers);

} // namespace bw
