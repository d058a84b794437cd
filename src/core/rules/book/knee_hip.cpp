// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"
#include "core/rules/book/scales.hpp"
#include "core/rules/wording.hpp"

namespace bw::book {

namespace {
Ratio by(const Exercise& e) {
    return {e.patterns[Pattern::Squat].part() + e.patterns[Pattern::Lunge].part(),
            e.patterns[Pattern::Hinge].part()};
}

void judge(const Facts& facts, Verdict& verdict) {
    const Scale scale{[](const Balance& b) { return b.kneeHip(); }, by};
    judgeScale(facts, verdict, scale,
               {"For every set of hinging the month has %1 of squats and lunges, fewer than %2.",
                "For every set of hinging the month has %1 of squats and lunges, more than %2.",
                "Over %3 months, this one among them, there was %1 of squats and lunges for every "
                "set of hinging, less than %2.",
                "Over %3 months, this one among them, there was %1 of squats and lunges for every "
                "set of hinging, more than %2.",
                nullptr, nullptr, // pattern-missing says so
                "More squats or lunges, or less hinging",
                "More hinging, or fewer squats and lunges"});
}
} // namespace

Rule kneeHip() {
    const Message basis{"Common practice: no position stand gives such a number.", {}};
    return {"knee-hip",
            {"Squats and lunges keep a balance with hinges.", {}},
            {{"block",
              within(0.5, 2),
              "",
              basis,
              {"Sets of squats and lunges for every set of hinging, in the month.", {}}},
             {"window",
              within(0.6, 1.7),
              "",
              basis,
              {"The same over the months of the window; it is only noted.", {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
