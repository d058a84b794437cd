// SPDX-License-Identifier: GPL-3.0-or-later
// Everything a rule may look at, computed once for a draft and a week.
#pragma once
#include "blockwright/balance/balance.hpp"
#include "blockwright/model/gym.hpp"
#include "blockwright/model/place.hpp"
#include "blockwright/time/timing.hpp"

#include <memory>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace bw {

struct FloorWeek;
class Offers;

// The months before a block, newest first, and when each exercise was last used in them.
class History {
public:
    History(const Gym& gym, Month before);
    [[nodiscard]] const std::vector<Gym::BlockPtr>& blocks() const { return blocks_; }
    [[nodiscard]] bool knows(const ExerciseId& id) const { return last_.contains(id); }
    [[nodiscard]] bool empty() const { return blocks_.empty(); }

private:
    std::vector<Gym::BlockPtr> blocks_;
    std::unordered_map<ExerciseId, Month> last_;
};

// A slot with its exercise looked up; exercise is null in an open slot.
struct SlotFact {
    Place place;
    const Section* section = nullptr;
    const Group* group = nullptr;
    const Slot* slot = nullptr;
    const Exercise* exercise = nullptr;
    SetTime work; // at pace 1, without set-up; zero in an open slot
};

struct Facts {
    const Gym& gym;
    const Block& block;
    const History& history;
    Week week;
    SessionTime time;
    std::vector<SlotFact> slots;      // in order of the session
    const FloorWeek* floor = nullptr; // null: the week was not simulated

    // Of the month, its weeks averaged, and of the window. Worked out when it is first asked for.
    [[nodiscard]] const Balances& balance() const;

    // All that is handed in must outlive the facts.
    static Facts of(const Gym& gym, const Block& block, const History& history, Week week,
                    const FloorWeek* floor = nullptr);

    // Worked out when first needed, and then kept.
    mutable std::shared_ptr<const Balances> balanced;
    mutable std::shared_ptr<Offers> offers;
};

} // namespace bw
