// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/tally.hpp"

#include <numeric>

namespace bw {

namespace {
void addTo(std::vector<Ticks>& sums, const std::vector<Ticks>& more) {
    for (std::size_t i = 0; i < sums.size(); ++i) sums[i] += more[i];
}
double ratio(Ticks part, Ticks whole) {
    return whole == 0 ? 0 : static_cast<double>(part) / static_cast<double>(whole);
}
} // namespace

void WaitSample::take(const WaitSample& other) {
    waited_.insert(waited_.end(), other.waited_.begin(), other.waited_.end());
    sum_ += other.sum_;
}

FloorWait WaitSample::figures(std::int64_t count) {
    std::ranges::sort(waited_);
    const auto none = count - static_cast<std::int64_t>(waited_.size());
    const auto at = percentileIndex(90, count) - none;
    return {MeanTime{ratio(sum_, count)},
            Millis{at < 0 ? 0 : waited_[static_cast<std::size_t>(at)]}};
}

FloorTally::FloorTally(const FloorPlan& plan, int members)
    : plan_(plan), members_(members), kitWait_(plan.kit.size()), busy_(plan.kit.size()),
      rounds_(plan.groups.size()), reachedHigh_(plan.groups.size()) {}

void FloorTally::add(const ClassRecord& record) {
    ++classes_;
    for (const Ticks wait : record.wait) wait_.add(wait);
    const std::size_t kits = kitWait_.size();
    for (std::size_t i = 0; i < record.kitWait.size(); ++i)
        kitWait_[i % kits].add(record.kitWait[i]);
    addTo(busy_, record.busy);
    addTo(rounds_, record.rounds);
    addTo(reachedHigh_, record.reachedHigh);
    open_ += record.finish - plan_.closing;
}

void FloorTally::take(const FloorTally& other) {
    classes_ += other.classes_;
    wait_.take(other.wait_);
    for (std::size_t k = 0; k < kitWait_.size(); ++k) kitWait_[k].take(other.kitWait_[k]);
    addTo(busy_, other.busy_);
    addTo(rounds_, other.rounds_);
    addTo(reachedHigh_, other.reachedHigh_);
    open_ += other.open_;
}

void FloorTally::tell(FloorAnswer& answer) {
    const std::int64_t people = classes_ * members_;
    answer.wait = wait_.figures(people);
    for (std::size_t k = 0; k < plan_.kit.size(); ++k)
        answer.kit.push_back({plan_.kit[k].id, kitWait_[k].figures(people),
                              ratio(busy_[k], plan_.kit[k].units * open_)});
    for (std::size_t s = 0; s < plan_.sections.size(); ++s) {
        const IndexSpan groups = plan_.sections[s].groups;
        for (int g = groups.begin; g < groups.end; ++g)
            answer.sections[s].groups.push_back(
                {ratio(rounds_[g], people), ratio(reachedHigh_[g], people)});
    }
}

FloorTimes timesOf(std::vector<Ticks> sample) {
    std::ranges::sort(sample);
    const auto size = static_cast<std::int64_t>(sample.size());
    const auto at = [&](int percent) {
        return Millis{sample[static_cast<std::size_t>(percentileIndex(percent, size))]};
    };
    const Ticks sum = std::accumulate(sample.begin(), sample.end(), Ticks{0});
    return {MeanTime{ratio(sum, size)}, at(10), at(50), at(90)};
}

} // namespace bw
