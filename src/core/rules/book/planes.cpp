// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"
#include "core/rules/book/scales.hpp"
#include "core/rules/wording.hpp"

namespace bw::book {

namespace {
double told(const Exercise& e) {
    return e.planes[Plane::Sagittal].part() + e.planes[Plane::Frontal].part() +
           e.planes[Plane::Transverse].part();
}
template <Plane P> Scale scaleOf() {
    return {[](const Balance& b) { return b.planeShare(P); },
            [](const Exercise& e) {
                return Ratio{e.planes[P].part(), told(e)};
            },
            true, Level::Note};
}

void judge(const Facts& facts, Verdict& verdict) {
    judgeScale(facts, verdict, scaleOf<Plane::Sagittal>(),
               {"%1 of the month's sets move forwards or up and down, less than %2.",
                "%1 of the month's sets move forwards or up and down, more than %2.",
                "Over %3 months, this one among them, %1 of the sets moved forwards or up and "
                "down, less than %2.",
                "Over %3 months, this one among them, %1 of the sets moved forwards or up and "
                "down, more than %2.",
                "Nothing in this month moves forwards or up and down.", nullptr,
                "A squat, hinge, press or row more", "Something sideways or turning more"},
               "sagittal");
    judgeScale(facts, verdict, scaleOf<Plane::Frontal>(),
               {"%1 of the month's sets move sideways, less than %2.",
                "%1 of the month's sets move sideways, more than %2.",
                "Over %3 months, this one among them, %1 of the sets moved sideways, less than %2.",
                "Over %3 months, this one among them, %1 of the sets moved sideways, more than %2.",
                "Nothing in this month moves sideways.", nullptr, "Something sideways more",
                "Something sideways less"},
               "frontal");
    judgeScale(facts, verdict, scaleOf<Plane::Transverse>(),
               {"%1 of the month's sets turn or resist turning, less than %2.",
                "%1 of the month's sets turn or resist turning, more than %2.",
                "Over %3 months, this one among them, %1 of the sets turned or resisted turning, "
                "less than %2.",
                "Over %3 months, this one among them, %1 of the sets turned or resisted turning, "
                "more than %2.",
                "Nothing in this month turns or resists turning.", nullptr,
                "Something turning more", "Something turning less"},
               "transverse");
}
} // namespace

Rule planes() {
    const Message basis{"Common practice: no position stand says how much of each plane a session "
                        "needs. Most loaded lifts are sagittal by nature.",
                        {}};
    return {"planes",
            {"The month moves in all three planes.", {}},
            {{"block",
              within(0.02, 1),
              "share",
              basis,
              {"Share of the month's sets in each of the three planes.", {}}},
             {"window",
              within(0.04, 1),
              "share",
              basis,
              {"The same over the months of the window.", {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
