// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/stock.hpp"

#include <algorithm>

namespace bw {

namespace {
// Kit that a member of this group could hold at once: at most one kind a need, or with any load, of
// as many kinds as it asks for units.
int kindsIn(const FloorPlan& plan, const PlanGroup& g) {
    int n = 0;
    for (int s = g.slots.begin; s < g.slots.end; ++s)
        for (int a = plan.slots[s].alternatives.begin; a < plan.slots[s].alternatives.end; ++a)
            for (const IndexSpan needs : {plan.alternatives[a].group, plan.alternatives[a].set})
                for (int i = needs.begin; i < needs.end; ++i)
                    n += plan.wishes.empty() ? 1 : plan.needs[i].count;
    return n;
}
} // namespace

Stock::Stock(const FloorPlan& plan, int members)
    : plan_(plan), byLoad_(!plan.wishes.empty()), free_(plan.kit.size()), loads_(plan.loads.size()),
      keeps_(static_cast<std::size_t>(members)), takes_(static_cast<std::size_t>(members)) {
    for (const PlanGroup& g : plan.groups) most_ = std::max(most_, kindsIn(plan, g));
    kept_.resize(static_cast<std::size_t>(members) * static_cast<std::size_t>(most_));
    if (byLoad_) inSet_.resize(kept_.size());
}

void Stock::allBack(FloorWatch* watch) {
    watch_ = watch;
    for (std::size_t k = 0; k < free_.size(); ++k) free_[k] = plan_.kit[k].units;
    for (std::size_t l = 0; l < loads_.size(); ++l) loads_[l] = plan_.loads[l].units;
    std::ranges::fill(keeps_, 0);
    std::ranges::fill(takes_, 0);
}

void Stock::move(int member, int kit, int load, int count, Ticks now) {
    free_[kit] -= count;
    if (load >= 0) loads_[load] -= count;
    if (!watch_) return;
    if (count > 0)
        watch_->took(member, kit, load, count, now);
    else
        watch_->gaveBack(member, kit, load, -count, now);
}

void Stock::take(int member, IndexSpan needs, Ticks now) {
    if (byLoad_) return takeLoads(member, needs, now);
    for (int n = needs.begin; n < needs.end; ++n)
        move(member, plan_.needs[n].kit, -1, plan_.needs[n].count, now);
}

void Stock::giveBack(int member, IndexSpan needs, Ticks now) {
    if (!byLoad_) {
        for (int n = needs.begin; n < needs.end; ++n)
            move(member, plan_.needs[n].kit, -1, -plan_.needs[n].count, now);
        return;
    }
    const Held* const mine = inSet_.data() + member * most_;
    for (int i = 0; i < takes_[member]; ++i)
        move(member, mine[i].kit, mine[i].load, -mine[i].count, now);
    takes_[member] = 0;
}

void Stock::keep(int member, IndexSpan needs, Ticks now) {
    for (int n = needs.begin; n < needs.end; ++n) {
        if (byLoad_ && wishOf(member, n).count == 0) continue;
        const int load = byLoad_ ? loadFor(member, n) : -1;
        keepUpTo(member, plan_.needs[n].kit, load, plan_.needs[n].count, now);
    }
}

void Stock::keepAny(int member, IndexSpan needs, Ticks now) {
    for (int n = needs.begin; n < needs.end; ++n) {
        const auto [kit, count] = plan_.needs[n];
        if (wishOf(member, n).count > 0) continue;
        int has = 0;
        for (const Held& h : kept(member)) has += h.kit == kit ? h.count : 0;
        for (; has < count; ++has) {
            const int load = mostPlentiful(kit);
            keepUpTo(member, kit, load, keptOf(member, load) + 1, now);
        }
    }
}

void Stock::giveBackKept(int member, Ticks now) {
    for (const Held& h : kept(member)) move(member, h.kit, h.load, -h.count, now);
}

// What the member has kept on this very entry counts as free: another slot may share it.
int Stock::loadFor(int member, int need) const {
    const auto [kit, count] = plan_.needs[need];
    const PlanWish& wish = wishOf(member, need);
    if (wish.count == 0) return free_[kit] >= count ? kAny : kShort;
    for (int i = 0; i < wish.count; ++i) {
        const int load = wish.loads[static_cast<std::size_t>(i)];
        if (loads_[load] + keptOf(member, load) >= count) return load;
    }
    return kShort;
}

int Stock::keptOf(int member, int load) const {
    for (const Held& h : kept(member))
        if (h.load == load) return h.count;
    return 0;
}

int Stock::mostPlentiful(int kit) const {
    int most = plan_.kit[kit].loads.begin;
    for (int l = most + 1; l < plan_.kit[kit].loads.end; ++l)
        if (loads_[l] > loads_[most]) most = l;
    return most;
}

void Stock::keepUpTo(int member, int kit, int load, int count, Ticks now) {
    Held* const mine = kept_.data() + member * most_;
    int i = 0;
    while (i < keeps_[member] && (mine[i].kit != kit || mine[i].load != load)) ++i;
    if (i == keeps_[member]) mine[keeps_[member]++] = {kit, load, 0};
    const int more = count - mine[i].count;
    if (more <= 0) return;
    mine[i].count += more;
    move(member, kit, load, more, now);
}

void Stock::takeOne(int member, int kit, int load, int count, Ticks now) {
    Held* const mine = inSet_.data() + member * most_;
    mine[takes_[member]++] = {kit, load, count};
    move(member, kit, load, count, now);
}

void Stock::takeLoads(int member, IndexSpan needs, Ticks now) {
    for (int n = needs.begin; n < needs.end; ++n) {
        const auto [kit, count] = plan_.needs[n];
        const int load = loadFor(member, n);
        if (load != kAny) {
            takeOne(member, kit, load, count, now);
            continue;
        }
        for (int i = 0; i < count; ++i) takeOne(member, kit, mostPlentiful(kit), 1, now);
    }
}

} // namespace bw
