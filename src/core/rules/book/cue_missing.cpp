// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"
#include "core/rules/book/care.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/wording.hpp"

namespace bw::book {

namespace {
void judge(const Facts& facts, Verdict& verdict) {
    const double fewest = verdict.limit("fewest").lo;
    for (const CareCase& c : careCases(facts, verdict.limit("skill").lo)) {
        const Exercise& e = *c.slot->exercise;
        const auto cues = static_cast<double>(e.cues.size());
        if (cues >= fewest) continue;
        const std::string name = slotLabel(facts.block, *c.slot);
        Finding& f = verdict.add(
            Level::Note, c.slot->place, cues, "fewest",
            c.fresh
                ? Message{"%1 is new to this gym and has no cues for the coaches to share.", {name}}
                : Message{"%1 takes skill and has no cues for the coaches to share.", {name}});
        f.also = c.also;
        f.remedies = {advice({"On the Shelf, write down what a coach says of %1", {e.name}})};
    }
}
} // namespace

Rule cueMissing() {
    return {"cue-missing",
            {"Exercises that are new or take skill have cues.", {}},
            {{"fewest", atMost(1), "", commonPractice(), {"Fewest cues of such an exercise.", {}}},
             {"skill",
              atMost(3),
              "",
              commonPractice(),
              {"From which skill on, 1 to 3, a known exercise needs cues too.", {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
