// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"
#include "core/rules/book/scales.hpp"
#include "core/rules/wording.hpp"

namespace bw::book {

namespace {
Ratio by(const Exercise& e) {
    return {e.patterns[Pattern::HorizontalPush].part() + e.patterns[Pattern::HorizontalPull].part(),
            e.patterns[Pattern::VerticalPush].part() + e.patterns[Pattern::VerticalPull].part()};
}

void judge(const Facts& facts, Verdict& verdict) {
    const Scale scale{[](const Balance& b) { return b.horizontalVertical(); }, by};
    judgeScale(
        facts, verdict, scale,
        {"For every vertical set of the upper body the month has %1 horizontal, fewer than %2.",
         "For every vertical set of the upper body the month has %1 horizontal, more than %2.",
         "Over %3 months, this one among them, the upper body had %1 horizontal for every vertical "
         "set, less than %2.",
         "Over %3 months, this one among them, the upper body had %1 horizontal for every vertical "
         "set, more than %2.",
         "The upper body works overhead only: no press away from the chest, no row.",
         "The upper body works horizontally only: nothing is pressed up or pulled down.",
         "A row or a press away from the chest more", "A press up or a pull down more"});
}
} // namespace

Rule horizontalVertical() {
    const Message basis{"Common practice: no position stand gives such a number. Overhead work "
                        "rightly yields to the shoulders of a class.",
                        {}};
    return {"horizontal-vertical",
            {"The upper body pushes and pulls both away from the chest and overhead.", {}},
            {{"block",
              within(0.3, 5),
              "",
              basis,
              {"Horizontal sets of the upper body for every vertical one, in the month.", {}}},
             {"window",
              within(0.4, 4),
              "",
              basis,
              {"The same over the months of the window; it is only noted.", {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
