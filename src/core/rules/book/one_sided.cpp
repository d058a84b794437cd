// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"
#include "core/rules/book/scales.hpp"
#include "core/rules/wording.hpp"

namespace bw::book {

namespace {
Ratio by(const Exercise& e) { return {e.sides == Sides::Both ? 0.0 : 1.0, 1}; }

void judge(const Facts& facts, Verdict& verdict) {
    const Scale scale{[](const Balance& b) { return b.oneSidedShare(); }, by, true, Level::Note};
    judgeScale(
        facts, verdict, scale,
        {"%1 of the month's sets work one side at a time, less than %2.",
         "%1 of the month's sets work one side at a time, more than %2: the hour gets long.",
         "Over %3 months, this one among them, %1 of the sets worked one side at a time, less than "
         "%2.",
         "Over %3 months, this one among them, %1 of the sets worked one side at a time, more than "
         "%2.",
         "Nothing in this month works one side at a time.", nullptr, "A one-sided exercise more",
         "A one-sided exercise less"});
}
} // namespace

Rule oneSided() {
    const Message basis{"Common practice: no position stand gives such a number.", {}};
    return {"one-sided",
            {"Some of the work is done one side at a time, and not all of it.", {}},
            {{"block",
              within(0.1, 0.6),
              "share",
              basis,
              {"Share of the month's sets that work one side at a time.", {}}},
             {"window",
              within(0.15, 0.5),
              "share",
              basis,
              {"The same over the months of the window.", {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
