// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/kit_waits.hpp"

#include "blockwright/floor/floor.hpp"
#include "core/floor/served.hpp"
#include "core/model/weeks.hpp"
#include "core/propose/filling.hpp"
#include "core/rules/gym_limit.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace bw::proposing {

namespace {
constexpr int kMany = 1'000'000;   // servers, where kit need not be shared
constexpr double kUnclear = -1e12; // of a slot that makes a line say nothing
constexpr double kHalfTick = 0.5;  // what a duration is rounded by, ms
using Needs = std::vector<KitNeed>;

bool boundable(const Task& task) {
    if (!task.floor || task.gym.kit.empty()) return false;
    const FloorOptions& o = *task.floor;
    return !o.loadAware && std::holds_alternative<StartAsDrafted>(o.start) &&
           floorShortages(task.gym, *task.block).empty() &&
           std::ranges::none_of(task.block->accepted,
                                [](const Acceptance& a) { return a.rule == "kit-queue"; });
}

std::vector<Needs> servable(const Gym& gym, const Exercise& e) {
    std::vector<Needs> out;
    for (const Needs& one : e.needs)
        if (served(gym, one)) out.push_back(one);
    return out;
}

std::map<KitId, int> ofClaim(const Gym& gym, const Needs& needs, Claim claim) {
    std::map<KitId, int> out = countsOf(needs);
    std::erase_if(out, [&](const auto& one) { return gym.findKit(one.first)->claim != claim; });
    return out;
}

int roundsOfAll(const Block& block, const Group& group) {
    int rounds = 0;
    for (const Week w : weeksOf(block))
        rounds = std::max(rounds, roundsIn(block.step(w).rounds, group.rounds).lo());
    return rounds;
}

bool takesIt(const KitLine& line, const KitWaits& waits) {
    const KitWait& wait = line.entry ? waits.entry : waits.set;
    return wait.may && wait.kit == line.kit && wait.servers <= line.servers;
}

// The wait counts on the kit of the alternative liked best, or of the one taken before.
KitWait waitFor(const Gym& gym, const std::vector<Needs>& all, Claim claim, bool anyBlamed,
                const std::set<KitId>& ample) {
    KitWait out;
    std::set<KitId> blamed;
    bool free = false;
    int servers = 0;
    for (std::size_t a = 0; a < all.size(); ++a) {
        int most = kMany;
        bool scarce = false;
        for (const auto& [id, count] : ofClaim(gym, all[a], claim)) {
            most = std::min(most, gym.findKit(id)->units / count);
            if (ample.contains(id)) continue;
            scarce = true;
            if (a == 0 || anyBlamed) blamed.insert(id);
        }
        free = free || !scarce;
        servers = std::min(kMany, servers + most);
    }
    out.may = anyBlamed ? !blamed.empty() : !free;
    if (blamed.size() == 1) out.kit = *blamed.begin();
    out.servers = servers;
    return out;
}
} // namespace

LeastWaits::LeastWaits(const Task& task) : task_(task) {
    if (!boundable(task)) return;
    members_ = task.floor->members > 0 ? task.floor->members : task.gym.settings.places;
    const GymSettings& gym = task.gym.settings;
    worth_ = 1000 * members_ *
             std::min(limitIn(gym, "kit-queue", "look_seconds").hi,
                      limitIn(gym, "kit-queue", "stop_seconds").hi);
    sample_.emplace(*task.floor, members_);
    findAmple();
    findCrowds();
    for (const Crowd& crowd : crowds_) findLines(crowd);
}

std::vector<const Exercise*> LeastWaits::candidates(const SlotFact& slot) const {
    for (const Target& t : task_.targets)
        if (t.place == slot.place) return t.fits;
    if (!slot.exercise || !slot.slot->dose) return {};
    return {slot.exercise};
}

// Enough of it for everybody at once.
void LeastWaits::findAmple() {
    std::map<KitId, int> most;
    for (const SlotFact& slot : task_.facts->slots)
        for (const Exercise* e : candidates(slot))
            for (const Needs& one : servable(task_.gym, *e))
                for (const auto& [id, count] : countsOf(one)) most[id] = std::max(most[id], count);
    for (const auto& [id, count] : most)
        if (task_.gym.findKit(id)->units >= count * members_) ample_.insert(id);
}

void LeastWaits::findCrowds() {
    const Block& block = *task_.block;
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s) {
        const Section& section = *sectionAt(block, {s});
        const int groups = static_cast<int>(section.groups.size());
        const auto starts = startsOf(section.start, groups, members_);
        for (int g = 0; g < groups; ++g) {
            Crowd crowd{{s, g}, roundsOfAll(block, *groupAt(block, {s, g})), {}, {}};
            for (int m = 0; m < members_; ++m)
                if (starts[static_cast<std::size_t>(m)] == g) crowd.members.push_back(m);
            if (crowd.members.size() < 2 || crowd.rounds < 1) continue;
            for (const SlotFact& slot : task_.facts->slots) {
                if (slot.place.section != s || slot.place.group != g) continue;
                auto& takers = crowd.takers.emplace_back();
                for (const Exercise* e : candidates(slot)) {
                    const Filling filling(slot, *e);
                    takers.push_back(takerOf(filling.fact, *e));
                }
            }
            crowds_.push_back(std::move(crowd));
        }
    }
}

void LeastWaits::findLines(const Crowd& crowd) {
    const int heads = static_cast<int>(crowd.members.size());
    const int slots = static_cast<int>(crowd.takers.size());
    std::vector<KitLine> all;
    const auto put = [&](const KitLine& line) {
        if (line.servers < heads && std::ranges::find(all, line) == all.end()) all.push_back(line);
    };
    for (int last = 0; last < slots; ++last)
        for (const Taker& taker : crowd.takers[static_cast<std::size_t>(last)]) {
            const auto& [entry, set] = taker.waits;
            if (entry.may && entry.kit)
                put({crowd.group, *entry.kit, entry.servers, true, crowd.rounds, slots});
            if (!set.may || !set.kit) continue;
            put({crowd.group, *set.kit, set.servers, false, 1, last});
            put({crowd.group, *set.kit, set.servers, false, crowd.rounds, last});
        }
    std::ranges::copy_if(all, std::back_inserter(lines_),
                         [&](const KitLine& line) { return mayMatter(crowd, line); });
}

LeastWaits::Taker LeastWaits::takerOf(const SlotFact& slot, const Exercise& e) const {
    return {waitsOf(e), e.setup, planWork(*slot.slot, e)};
}

KitWaits LeastWaits::waitsOf(const Exercise& e) const {
    const auto all = servable(task_.gym, e);
    if (all.empty()) return {};
    const bool onEntry =
        std::ranges::any_of(e.needs, [&](const Needs& one) { return keepsKit(task_.gym, one); });
    KitWaits out;
    if (onEntry) out.entry = waitFor(task_.gym, all, Claim::Group, false, ample_);
    out.set = waitFor(task_.gym, all, Claim::Set, onEntry, ample_);
    return out;
}

const LeastWaits::Crowd* LeastWaits::crowdAt(Place group) const {
    const auto it = std::ranges::find(crowds_, group, &Crowd::group);
    return it == crowds_.end() ? nullptr : &*it;
}

int LeastWaits::roundsOf(const KitLine& line, int slot) {
    return line.entry || slot <= line.last ? line.rounds : line.rounds - 1;
}

double LeastWaits::partOf(const KitLine& line, int slot, const Taker& taker,
                          const std::vector<double>& times) {
    const auto& [entry, set] = taker.waits;
    const bool other = entry.may && !(line.entry && entry.kit == line.kit);
    const bool otherSet = !line.entry && roundsOf(line, slot) > 0 && set.may && set.kit != line.kit;
    if (other || otherSet) return kUnclear;
    const double own = std::accumulate(times.begin(), times.end(), 0.0);
    const bool takes = line.entry || takesIt(line, taker.waits);
    return (takes ? leastTotal(times, line.servers) : 0) - own;
}

double LeastWaits::leastPart(const KitLine& line, Place slot, const Taker& taker) {
    const auto& crowd = *crowdAt(line.group);
    const int rounds = roundsOf(line, slot.slot);
    const PlanWork& work = taker.work;
    std::vector<double> times;
    if (rounds > 0)
        times = sample_->ranks({slot, work.lo, work.hi, work.whole, crowd.rounds}, rounds,
                               crowd.members);
    for (double& t : times)
        t = t * work.perAmount + static_cast<double>(taker.setup.count()) * rounds;
    const double rounded =
        rounds * kHalfTick * (1 + work.perAmount / StepSample::parts(work.whole));
    const auto jobs = static_cast<double>(times.size());
    return partOf(line, slot.slot, taker, times) -
           rounded * (jobs + leastTotal(times.size(), line.servers));
}

// What a line could come to with the exercises that make the most of it, roughly: a steady class.
double LeastWaits::likelyPart(const Crowd& crowd, const KitLine& line) const {
    double sum = 0;
    for (std::size_t s = 0; s < crowd.takers.size(); ++s) {
        const int rounds = roundsOf(line, static_cast<int>(s));
        double most = crowd.takers[s].empty() ? 0 : kUnclear;
        for (const Taker& taker : crowd.takers[s]) {
            const double set =
                static_cast<double>((taker.setup.count() + taker.work.middle) * rounds);
            most = std::max(most, partOf(line, static_cast<int>(s), taker,
                                         std::vector<double>(crowd.members.size(), set)));
        }
        sum += most;
    }
    return sum;
}

bool LeastWaits::mayMatter(const Crowd& crowd, const KitLine& line) const {
    constexpr double kRoom = 1.2; // as this is rough
    const FloorOptions& o = *task_.floor;
    const double varied = std::exp((o.paceSigma * o.paceSigma + o.setSigma * o.setSigma) / 2);
    return kRoom * varied * likelyPart(crowd, line) > worth_;
}

void LeastWaits::add(const SlotFact& slot, std::span<std::int64_t> to) {
    std::optional<Taker> taker;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const KitLine& line = lines_[i];
        if (line.group != Place{slot.place.section, slot.place.group}) continue;
        if (!taker) taker = takerOf(slot, *slot.exercise);
        to[2 * i] += static_cast<std::int64_t>(std::floor(leastPart(line, slot.place, *taker)));
        if (takesIt(line, taker->waits)) ++to[2 * i + 1];
    }
}

void LeastWaits::addFixed(std::span<std::int64_t> to) {
    for (const SlotFact& slot : task_.facts->slots)
        if (slot.exercise && slot.slot->dose) add(slot, to);
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const KitLine& line = lines_[i];
        const Crowd& crowd = *crowdAt(line.group);
        const Range<Millis> rest = groupAt(*task_.block, line.group)->rest;
        const int rests = line.rounds - 1;
        const std::size_t heads = crowd.members.size();
        const double part = line.entry
                                ? static_cast<double>(rest.lo().count()) * rests *
                                      (leastTotal(heads, line.servers) - static_cast<double>(heads))
                                : -sample_->rests(line.group, rest, rests, crowd.members);
        to[2 * i] += static_cast<std::int64_t>(std::floor(part));
    }
}

} // namespace bw::proposing
