// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/shift.hpp"

#include <algorithm>

namespace bw {

namespace {
const Finding* sameIn(const std::vector<Finding>& list, const Finding& f) {
    const auto it = std::find_if(list.begin(), list.end(), [&](const Finding& other) {
        return other.place == f.place && other.about == f.about && other.rule == f.rule;
    });
    return it == list.end() ? nullptr : &*it;
}
} // namespace

Shift shiftBetween(const CheckResult& before, const CheckResult& after) {
    Shift shift;
    shift.before = before.penalty;
    shift.after = after.penalty;
    for (const Finding& f : before.findings)
        if (!sameIn(after.findings, f)) shift.go.push_back(f);
    for (const Finding& f : after.findings) {
        const Finding* was = sameIn(before.findings, f);
        if (!was)
            shift.appear.push_back(f);
        else if (was->level != f.level)
            shift.turn.emplace_back(was->level, f);
    }
    return shift;
}

} // namespace bw
