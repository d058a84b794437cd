// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/floor_plan.hpp"

#include "blockwright/time/timing.hpp"
#include "core/floor/served.hpp"

#include <algorithm>
#include <map>
#include <numeric>

namespace bw {

namespace {
// Milliseconds of one smallest unit of the dose.
double perAmount(const Slot& slot, const Exercise& e) {
    const double k = e.sides == Sides::Each ? 2 : 1;
    const auto billionths = [](const std::optional<Rate>& r) {
        return r ? static_cast<double>(r->billionths()) : 0.0;
    };
    const auto& rates = e.pace.rates();
    switch (slot.dose->measure()) {
    case Measure::Reps:
        if (slot.tempo) return k * slot.tempo->seconds() * 1000;
        return k * billionths(rates.secondsPerRep) * 1000 / 1e9;
    case Measure::Seconds: return k;
    case Measure::Metres:
        if (!rates.metresPerSecond) break;
        return 1e9 / billionths(rates.metresPerSecond);
    case Measure::Kcal:
        if (!rates.kcalPerMinute) break;
        return 60e9 / billionths(rates.kcalPerMinute);
    }
    return 0; // no pace for such a dose: no time
}

class Planner {
public:
    Planner(const Gym& gym, const Block& block, Week week)
        : gym_(gym), block_(block), mode_(block.step(week).rounds) {}

    FloorPlan plan() {
        const GymSettings& s = gym_.settings;
        plan_.opening = s.opening.count();
        plan_.closing = s.closing.count();
        plan_.classTime = Ticks{s.classMinutes} * 60'000;
        listKit();
        for (int i = 0; i < static_cast<int>(block_.sections.size()); ++i) addSection({i, -1, -1});
        return std::move(plan_);
    }

private:
    // Only what some slot can take is numbered.
    void listKit() {
        for (const KitItem& item : gym_.kit) {
            if (!taken(item.id)) continue;
            number_[item.id] = static_cast<int>(plan_.kit.size());
            plan_.kit.push_back({item.id, item.units, {}});
        }
    }
    bool taken(const KitId& id) const {
        const auto inSlot = [&](const Slot& slot) {
            const Exercise* e = exerciseOf(gym_.shelf, slot);
            return e && mayTake(gym_, *e, id);
        };
        for (const Section& s : block_.sections)
            for (const Group& g : s.groups)
                if (std::ranges::any_of(g.slots, inSlot)) return true;
        return false;
    }

    void addSection(Place place) {
        const Section& s = *sectionAt(block_, place);
        const int first = static_cast<int>(plan_.groups.size());
        for (place.group = 0; place.group < static_cast<int>(s.groups.size()); ++place.group)
            addGroup(place);
        plan_.sections.push_back({.kind = s.kind,
                                  .groups = {first, static_cast<int>(plan_.groups.size())},
                                  .talk = s.talk.count(),
                                  .budget = {},
                                  .start = s.start});
        if (s.budget) plan_.sections.back().budget = s.budget->hi().count();
    }

    void addGroup(Place place) {
        const Group& g = *groupAt(block_, place);
        PlanGroup out{.place = place,
                      .slots = {static_cast<int>(plan_.slots.size()), 0},
                      .lo = roundsIn(mode_, g.rounds).lo(),
                      .hi = roundsIn(mode_, g.rounds).hi(),
                      .restLo = g.rest.lo().count(),
                      .restHi = g.rest.hi().count(),
                      .firstStep = plan_.steps};
        for (place.slot = 0; place.slot < static_cast<int>(g.slots.size()); ++place.slot)
            addSlot(place);
        out.slots.end = static_cast<int>(plan_.slots.size());
        plan_.steps += out.hi * out.stepsPerRound();
        plan_.groups.push_back(out);
    }

    void addSlot(Place place) {
        const Slot& slot = *slotAt(block_, place);
        const Exercise* e = exerciseOf(gym_.shelf, slot);
        if (!e) return;
        PlanSlot out{.place = place,
                     .setup = e->setup.count(),
                     .work = planWork(slot, *e),
                     .alternatives = {static_cast<int>(plan_.alternatives.size()), 0},
                     .chosenOnEntry = false};
        for (const auto& one : e->needs) {
            out.chosenOnEntry = out.chosenOnEntry || keepsKit(gym_, one);
            if (served(gym_, one)) plan_.alternatives.push_back(alternative(one));
        }
        out.alternatives.end = static_cast<int>(plan_.alternatives.size());
        plan_.slots.push_back(out);
    }

    PlanAlternative alternative(const std::vector<KitNeed>& one) {
        return {.group = addNeeds(one, Claim::Group), .set = addNeeds(one, Claim::Set)};
    }
    IndexSpan addNeeds(const std::vector<KitNeed>& one, Claim claim) {
        const int first = static_cast<int>(plan_.needs.size());
        for (const auto& [id, count] : countsOf(one))
            if (gym_.findKit(id)->claim == claim) plan_.needs.push_back({number_.at(id), count});
        return {first, static_cast<int>(plan_.needs.size())};
    }

    const Gym& gym_;
    const Block& block_;
    RoundsMode mode_;
    std::map<KitId, int> number_;
    FloorPlan plan_;
};

std::vector<int> startsByCount(std::vector<int> heads, int groups, int members) {
    heads.resize(static_cast<std::size_t>(groups), 0);
    std::vector<int> order;
    for (int g = 0; g < groups; ++g) order.insert(order.end(), heads[g], g);
    if (order.empty()) order.push_back(0);
    std::vector<int> starts;
    starts.reserve(static_cast<std::size_t>(members));
    for (int m = 0; m < members; ++m)
        starts.push_back(order[static_cast<std::size_t>(m) % order.size()]);
    return starts;
}
} // namespace

Range<int> roundsIn(RoundsMode mode, Range<int> rounds) {
    switch (mode) {
    case RoundsMode::Low: return Range<int>{rounds.lo()};
    case RoundsMode::High: return Range<int>{rounds.hi()};
    case RoundsMode::Open: break;
    }
    return rounds;
}

PlanWork planWork(const Slot& slot, const Exercise& e) {
    return {.lo = static_cast<double>(slot.dose->amount().lo()),
            .hi = static_cast<double>(slot.dose->amount().hi()),
            .whole = slot.dose->measure() == Measure::Reps,
            .perAmount = perAmount(slot, e),
            .middle = setWork(*slot.dose, slot.tempo, e).middle.count()};
}

FloorPlan planFloor(const Gym& gym, const Block& block, Week week) {
    return Planner(gym, block, week).plan();
}

std::vector<int> startsOf(const Start& start, int groups, int members) {
    std::vector<int> starts(static_cast<std::size_t>(members), 0);
    if (groups < 2) return starts;
    if (const auto* counts = std::get_if<StartCounts>(&start))
        return startsByCount(counts->heads, groups, members);
    if (std::holds_alternative<StartSpread>(start))
        for (int m = 0; m < members; ++m) starts[m] = m % groups;
    return starts;
}

} // namespace bw
