// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"
#include "core/rules/book/care.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/substitutes.hpp"
#include "core/rules/wording.hpp"

namespace bw::book {

namespace {
void judge(const Facts& facts, Verdict& verdict) {
    const double fewest = verdict.limit("fewest").lo;
    for (const CareCase& c : careCases(facts, verdict.limit("skill").lo)) {
        const Exercise& e = *c.slot->exercise;
        const auto cautions = static_cast<double>(e.cautions.size());
        if (cautions >= fewest) continue;
        const std::string name = slotLabel(facts.block, *c.slot);
        Finding& f = verdict.add(
            Level::Look, c.slot->place, cautions, "fewest",
            c.fresh
                ? Message{"%1 is new to this gym and has no caution: nobody is told what to watch.",
                          {name}}
                : Message{"%1 takes skill and has no caution: nobody is told what to watch.",
                          {name}});
        f.also = c.also;
        f.remedies = {advice({"On the Shelf, write a caution for %1", {e.name}})};
        const auto kin = substitutes(facts, *c.slot, 1, [&](const Exercise& other) {
            return static_cast<double>(other.cautions.size()) >= fewest &&
                   other.patterns.largest() == e.patterns.largest();
        });
        for (const Exercise* other : kin) f.remedies.push_back(useExercise(facts, *c.slot, *other));
    }
}
} // namespace

Rule cautionMissing() {
    return {
        "caution-missing",
        {"Exercises that are new or take skill have a caution.", {}},
        {{"fewest", atMost(1), "", commonPractice(), {"Fewest cautions of such an exercise.", {}}},
         {"skill",
          atMost(3),
          "",
          commonPractice(),
          {"From which skill on, 1 to 3, a known exercise needs a caution too.", {}}}},
        judge,
        {},
        false};
}

} // namespace bw::book
