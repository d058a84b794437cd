// SPDX-License-Identifier: GPL-3.0-or-later
// Many classes counted up. Whole numbers only, so it does not matter in which order, or on how many
// threads, the classes came.
#pragma once
#include "core/floor/class_record.hpp"

namespace bw {

// All waits of members, for mean and percentile; most are none.
class WaitSample {
public:
    void add(Ticks wait) {
        if (wait == 0) return;
        waited_.push_back(wait);
        sum_ += wait;
    }
    void take(const WaitSample& other);
    // Of that many waits, those that were none included. Sorts.
    [[nodiscard]] FloorWait figures(std::int64_t count);
    [[nodiscard]] bool none() const { return waited_.empty(); }

private:
    std::vector<Ticks> waited_;
    Ticks sum_ = 0;
};

class FloorTally {
public:
    FloorTally(const FloorPlan& plan, int members);

    void add(const ClassRecord& record);
    void take(const FloorTally& other);

    // Sections' groups, kit, and waits of the answer.
    void tell(FloorAnswer& answer);
    [[nodiscard]] bool waitedFor(int kit) const { return kitWait_[kit].none() == false; }

private:
    const FloorPlan& plan_;
    int members_;
    std::int64_t classes_ = 0;
    WaitSample wait_;
    std::vector<WaitSample> kitWait_;
    std::vector<Ticks> busy_, rounds_, reachedHigh_;
    Ticks open_ = 0; // class start to the last section's end, of all classes
};

// Of a sample in any order, at least one long.
[[nodiscard]] FloorTimes timesOf(std::vector<Ticks> sample);
// Index of a percentile in a sorted sample: ceil(percent / 100 * size) - 1.
[[nodiscard]] constexpr std::int64_t percentileIndex(int percent, std::int64_t size) {
    return (percent * size + 99) / 100 - 1;
}

} // namespace bw
