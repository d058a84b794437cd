// SPDX-License-Identifier: GPL-3.0-or-later
// A gym and a draft that the rule book has nothing to say of, for tests to spoil in one way.
#pragma once
#include "blockwright/rules/check.hpp"
#include "blockwright/rules/rule.hpp"
#include "support/fixtures.hpp"

#include <string_view>

namespace bw::test {

// Sections of the clean draft, in order.
inline constexpr int kWarmUp = 0, kPower = 1, kStrength = 2, kFinisher = 3;

struct Draft {
    Gym gym;
    Block block;

    [[nodiscard]] Section& section(int s) { return block.sections.at(static_cast<std::size_t>(s)); }
    [[nodiscard]] Group& group(int s, int g = 0) {
        return section(s).groups.at(static_cast<std::size_t>(g));
    }
    [[nodiscard]] Slot& slot(int s, int g, int n) {
        return group(s, g).slots.at(static_cast<std::size_t>(n));
    }
    [[nodiscard]] const Group& group(int s, int g = 0) const {
        return const_cast<Draft*>(this)->group(s, g);
    }
    [[nodiscard]] const Slot& slot(int s, int g, int n) const {
        return const_cast<Draft*>(this)->slot(s, g, n);
    }
    void limit(const std::string& key, double lo, double hi, bool band) {
        gym.settings.limits[key] = {lo, hi, band};
    }
    void limit(const std::string& key, double n) { limit(key, n, n, false); }

    // What one rule finds in one week.
    [[nodiscard]] std::vector<Finding> find(std::string_view rule, int inWeek = 2) const;
    // All weeks.
    [[nodiscard]] std::vector<Finding> findAll(std::string_view rule) const;
    // The draft with a remedy carried out.
    [[nodiscard]] Draft after(const Remedy& remedy) const;
};

// 40 minutes of a 60 minute class: a warm-up pair, a power pair, two heavy-then-long supersets, a
// finisher. Every exercise has an easier and a harder one, a cue and a caution.
[[nodiscard]] Draft cleanDraft();

// An exercise of the clean kind: one cue, one caution, ladder ends explained, the role given.
[[nodiscard]] Exercise careful(std::string_view id, Pattern pattern, std::string_view role);

[[nodiscard]] inline LimitValue number(double n) { return {n, n, false}; }
[[nodiscard]] inline LimitValue band(double lo, double hi) { return {lo, hi, true}; }
// The label of the first remedy whose label begins so; fails the test when there is none.
[[nodiscard]] const Remedy& remedy(const Finding& finding, std::string_view begins);

} // namespace bw::test
