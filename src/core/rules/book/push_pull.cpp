// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"
#include "core/rules/book/scales.hpp"
#include "core/rules/wording.hpp"

namespace bw::book {

namespace {
Ratio by(const Exercise& e) {
    return {e.patterns[Pattern::HorizontalPush].part() + e.patterns[Pattern::VerticalPush].part(),
            e.patterns[Pattern::HorizontalPull].part() + e.patterns[Pattern::VerticalPull].part()};
}

void judge(const Facts& facts, Verdict& verdict) {
    const Scale scale{[](const Balance& b) { return b.pushPull(); }, by};
    judgeScale(facts, verdict, scale,
               {"For every set of pulling the month has %1 of pushing, fewer than %2.",
                "For every set of pulling the month has %1 of pushing, more than %2.",
                "Over %3 months, this one among them, there was %1 of pushing for every set of "
                "pulling, less than %2.",
                "Over %3 months, this one among them, there was %1 of pushing for every set of "
                "pulling, more than %2.",
                nullptr, nullptr, // pattern-missing says so
                "More pushing or less pulling", "More pulling or less pushing"});
}
} // namespace

Rule pushPull() {
    const Message basis{
        "Common practice: no position stand gives a ratio of push to pull sets. What is published "
        "is about strength, not sets (Negrete et al. 2013, Int J Sports Phys Ther 8(2):138-144).",
        {}};
    return {"push-pull",
            {"Pushing and pulling of the upper body keep a balance.", {}},
            {{"block",
              within(0.6, 1.4),
              "",
              basis,
              {"Sets of pushing for every set of pulling, in the month.", {}}},
             {"window",
              within(0.75, 1.25),
              "",
              basis,
              {"The same over the months of the window; it is only noted.", {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
