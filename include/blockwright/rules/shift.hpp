// SPDX-License-Identifier: GPL-3.0-or-later
// What is different between two checks of a draft: because a limit was moved, or the draft.
#pragma once
#include "blockwright/rules/check.hpp"

#include <utility>

namespace bw {

struct Shift {
    std::vector<Finding> appear, go;
    std::vector<std::pair<Level, Finding>> turn; // another level now; with the one before
    double before = 0, after = 0;                // penalties

    [[nodiscard]] bool nothing() const {
        return appear.empty() && go.empty() && turn.empty() && before == after;
    }
};

// A finding is the same when rule, place and `about` are; figures alone make no difference.
[[nodiscard]] Shift shiftBetween(const CheckResult& before, const CheckResult& after);

} // namespace bw
