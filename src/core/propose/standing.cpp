// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/accepting.hpp"
#include "blockwright/rules/check.hpp"
#include "blockwright/rules/member_substitute.hpp"
#include "core/propose/model.hpp"
#include "core/rules/gym_limit.hpp"
#include "core/rules/offers.hpp"
#include "core/rules/substitutes.hpp"

#include <algorithm>
#include <array>

namespace bw::proposing {

namespace {
constexpr std::array<std::string_view, 12> kOfTheWhole{
    "session-length", "section-length", "pattern-missing",     "push-pull",
    "knee-hip",       "one-sided",      "horizontal-vertical", "planes",
    "muscle-dose",    "novelty",        "carry-over",          "stair-jump"};

constexpr std::array<std::string_view, 3> kOfTheFloor{"kit-queue", "overrun-chance",
                                                      "third-round"}; // silent here

template <class List> bool has(const List& list, std::string_view word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

class Stands {
public:
    explicit Stands(const Task& task) : task_(task) {}

    // Is it found whatever is chosen for the targets?
    bool operator()(const Finding& f) const {
        if (has(kOfTheWhole, f.rule)) return false;
        if (f.place.isSession() || f.place.isSection()) return true; // stair, format, order
        if (f.rule == "power-rest" || f.rule == "strength-rest") return true;
        if (f.rule == "pairing" && f.limitName.ends_with("_slots")) return true;
        const bool ofGroup = f.rule == "heavy-first" || f.rule == "finisher-dose";
        if (touched(ofGroup ? Place{f.place.section, f.place.group} : f.place)) return false;
        return std::none_of(f.also.begin(), f.also.end(),
                            [&](const Place& p) { return touched(p); });
    }

private:
    bool touched(Place p) const {
        return std::any_of(task_.targets.begin(), task_.targets.end(), [&](const Target& t) {
            return p.isSlot() ? t.place == p
                              : t.place.section == p.section && t.place.group == p.group;
        });
    }
    const Task& task_;
};

const Rule& ruleOf(std::string_view id) {
    return *std::find_if(ruleBook().begin(), ruleBook().end(),
                         [&](const Rule& r) { return r.id == id; });
}

bool flagged(const Task& task, const SlotFact& slot, const Member& m) {
    if (slot.exercise) return flagAgainst(m, *slot.exercise) != nullptr;
    for (const Target& t : task.targets)
        if (t.place == slot.place)
            return std::any_of(t.fits.begin(), t.fits.end(),
                               [&](const Exercise* e) { return flagAgainst(m, *e) != nullptr; });
    return false;
}

// Might a member be left without another exercise, as the targets have taken it? Not when there are
// more than targets, and not when a slot that is filled has none to begin with.
bool membersTight(const Task& task, const Block& filled) {
    const Facts facts = Facts::of(task.gym, filled, *task.history, Week::first());
    Offers offers(*task.facts);
    for (std::size_t i = 0; i < facts.slots.size(); ++i) {
        const SlotFact& now = task.facts->slots[i];
        if (!facts.slots[i].exercise) continue;
        const auto& pool = offers.ofRoles(rolesFor(facts, facts.slots[i]));
        for (const Member& m : task.gym.members) {
            if (!m.active || !flagged(task, now, m)) continue;
            std::size_t left = 0;
            for (const Exercise* e : pool)
                if (!flagAgainst(m, *e) && ++left > task.targets.size()) break;
            if (left > task.targets.size()) continue;
            const auto kin = [&](const Exercise& e) { return !flagAgainst(m, e); };
            if (!now.exercise || !substitutes(*task.facts, now, 1, kin).empty()) return true;
        }
    }
    return false;
}
} // namespace

Standing standingOf(const Task& task, const Block& filled) {
    const GymSettings& gym = task.gym.settings;
    const CheckResult now = check(task.gym, filled);
    const Stands stands(task);
    Standing out;
    out.unsure = membersTight(task, filled);
    for (const Finding& f : now.findings) {
        if (!stands(f)) continue;
        const Rule& rule = ruleOf(f.rule);
        const double cost = weightIn(gym, rule, f.level);
        const bool hangs = out.unsure && f.rule == "member-flag";
        out.cost += hangs ? std::min(cost, weightIn(gym, rule, Level::Note)) : cost;
    }
    for (const Acceptance& a : task.block->accepted) {
        const bool known =
            std::any_of(now.accepted.begin(), now.accepted.end(), [&](const AcceptedFinding& f) {
                return stands(f.finding) && acceptanceFor(filled, f.finding) != nullptr &&
                       a.rule == f.finding.rule && a.about == f.finding.about &&
                       a.place == placeKey(filled, f.finding.place);
            });
        const auto rule = std::find_if(ruleBook().begin(), ruleBook().end(),
                                       [&](const Rule& r) { return r.id == a.rule; });
        if (known || rule == ruleBook().end() || has(kOfTheFloor, a.rule)) continue;
        out.least -= std::max(0.0, weightIn(gym, *rule, a.level));
        out.unsure = true;
    }
    return out;
}

} // namespace bw::proposing
