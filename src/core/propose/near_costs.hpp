// SPDX-License-Identifier: GPL-3.0-or-later
// What the rules that look at one slot, two neighbours or one group add to the penalty. The rules
// of the whole session are in whole_costs.hpp. Which rule is where: docs/proposals.md.
#pragma once
#include "blockwright/rules/rule.hpp"
#include "core/propose/task.hpp"

#include <array>
#include <functional>
#include <string_view>

namespace bw::proposing {

// Weights of a rule's findings in this gym.
struct Cost {
    double stop = 0, look = 0, note = 0;
};
[[nodiscard]] Cost costOf(const GymSettings& gym, std::string_view rule);

// Two slots that some rule looks at together; indices of the facts' slots.
struct Link {
    int from = 0, to = 0;
    bool pair = false;            // a strength pair, from its first slot to its second
    std::optional<Level> overlap; // when both ask a lot
};
// All of the session. A strength pair whose slots also follow each other is one link.
[[nodiscard]] std::vector<Link> linksOf(const Facts& facts);

class NearCosts {
public:
    explicit NearCosts(const Task& task);

    // Of a slot by itself; the finisher's group is left out. Members are taken to have another
    // exercise ready.
    [[nodiscard]] double alone(const SlotFact& slot) const;
    // Of two slots with an exercise each.
    [[nodiscard]] double together(const Link& link, const SlotFact& from, const SlotFact& to) const;
    // Of the all-out work in a finisher's group; slots in order, those without an exercise left
    // out.
    [[nodiscard]] double finisher(const std::vector<const SlotFact*>& group) const;
    [[nodiscard]] bool allOut(const SlotFact& slot) const;
    [[nodiscard]] Cost memberFlag() const { return memberFlag_; }

private:
    [[nodiscard]] double power(const SlotFact& slot) const;
    [[nodiscard]] double warmUp(const Exercise& e) const;
    [[nodiscard]] double care(const Exercise& e) const;
    [[nodiscard]] double stale(const Exercise& e) const;
    [[nodiscard]] double flags(const Exercise& e) const;
    [[nodiscard]] double pair(const SlotFact& first, const SlotFact& second) const;
    [[nodiscard]] double limit(std::string_view rule, std::string_view name,
                               bool high = false) const;

    const Task& task_;
    std::vector<const Block*> before_; // months in a row
    Cost powerDose_, powerFirst_, staleness_, options_, memberFlag_, cue_, caution_, superset_,
        heavyFirst_, pairing_, overlap_, finisherDose_;
    double powerLook_, powerStop_, warmUpMost_, staleMost_, ways_, members_, cueFewest_, cueSkill_,
        cautionFewest_, cautionSkill_, secondReps_, relatedShare_, overlapLevel_, tableShare_,
        allOutSeconds_, allOutBreath_;
    LimitValue supersetSeconds_;
};

} // namespace bw::proposing
