// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/served.hpp"
#include "core/rules/book/book.hpp"
#include "core/rules/book/floor_facts.hpp"

#include <algorithm>

namespace bw::book {

namespace {
std::vector<Place> takersOf(const Facts& facts, const KitId& kit) {
    std::vector<Place> out;
    for (const SlotFact& slot : facts.slots)
        if (slot.exercise && slot.slot->dose && mayTake(facts.gym, *slot.exercise, kit))
            out.push_back(slot.place);
    return out;
}

Message queue(const Facts& facts, const FloorKitUse& use) {
    const KitItem* item = facts.gym.findKit(use.kit);
    return {"In the simulated class a member waits %1 for “%2” on average, one in ten longer than "
            "%3; the gym has %4.",
            {clockOf(use.wait.mean), kitName(facts.gym, use.kit), clockOf(use.wait.p90),
             std::to_string(item ? item->units : 0)}};
}

MeanTime waitAfter(const ProvenChange& change, const KitId& kit) {
    const auto it = std::find_if(change.kit.begin(), change.kit.end(),
                                 [&](const FloorKitUse& use) { return use.kit == kit; });
    return it == change.kit.end() ? MeanTime{} : it->wait.mean;
}

void judge(const Facts& facts, Verdict& verdict) {
    if (!facts.floor) return;
    constexpr MeanTime kShorter{15'000};
    for (const FloorKitUse& use : facts.floor->answer->kit) {
        const double seconds = use.wait.mean.count() / 1000;
        const bool stop = seconds > verdict.limit("stop_seconds").hi;
        if (!stop && seconds <= verdict.limit("look_seconds").hi) continue;
        std::vector<Place> takers = takersOf(facts, use.kit);
        if (takers.empty()) continue;
        Finding& f = verdict.add(stop ? Level::Stop : Level::Look, takers.front(), seconds,
                                 stop ? "stop_seconds" : "look_seconds", queue(facts, use));
        f.also.assign(takers.begin() + 1, takers.end());
        f.about = use.kit.text();
        f.remedies = provenRemedies(*facts.floor, [&](const ProvenChange& change) {
            return waitAfter(change, use.kit) + kShorter <= use.wait.mean;
        });
    }
}
} // namespace

Rule kitQueue() {
    return {"kit-queue",
            {"In the simulated class nobody waits long for one kit item.", {}},
            {{"look_seconds",
              atMost(120),
              "s",
              thisGymsSetting(),
              {"How long a member may wait for one kit item, on average, before a coach should "
               "look.",
               {}}},
             {"stop_seconds",
              atMost(300),
              "s",
              thisGymsSetting(),
              {"A longer wait for one kit item stops the draft.", {}}}},
            judge};
}

} // namespace bw::book
