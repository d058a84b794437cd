// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/section_run.hpp"

#include <stdexcept>

namespace bw {

namespace {
// Needs of all alternatives of a group's slots: no member can lack more kit items at once.
int needsOf(const FloorPlan& plan, const PlanGroup& g) {
    int n = 0;
    for (int s = g.slots.begin; s < g.slots.end; ++s)
        for (int a = plan.slots[s].alternatives.begin; a < plan.slots[s].alternatives.end; ++a)
            n += plan.alternatives[a].group.size() + plan.alternatives[a].set.size();
    return n;
}
} // namespace

SectionRun::SectionRun(const FloorPlan& plan, int members)
    : plan_(plan), members_(members), events_(members), people_(static_cast<std::size_t>(members)),
      stock_(plan, members) {
    for (const PlanGroup& g : plan.groups) {
        widest_ = std::max(widest_, g.slots.size());
        most_ = std::max(most_, needsOf(plan, g));
    }
    const auto n = static_cast<std::size_t>(members);
    chosen_.resize(n * static_cast<std::size_t>(widest_));
    blame_.resize(n * static_cast<std::size_t>(most_));
    sets_.reserve(n);
    entries_.reserve(n);
}

Ticks SectionRun::play(int section, const std::vector<int>& starts, const FloorSteps& steps,
                       ClassRecord& record, FloorWatch* watch) {
    steps_ = &steps;
    record_ = &record;
    watch_ = watch;
    begin(section, starts);
    while (left_ > 0) {
        if (events_.empty()) throw std::logic_error("A simulated class came to a standstill.");
        const FloorEvent e = events_.first();
        now_ = e.time;
        if (e.phase == EventPhase::GiveBack)
            giveBack(e.member);
        else
            turn(e.member);
    }
    return now_;
}

void SectionRun::begin(int section, const std::vector<int>& starts) {
    section_ = &plan_.sections[section];
    now_ = 0;
    events_.clear();
    left_ = section_->groups.size() > 0 ? members_ : 0;
    stock_.allBack(watch_);
    for (int m = 0; m < left_; ++m) {
        people_[m] = Person{};
        people_[m].group = section_->groups.begin + starts[m];
        events_.set(m, 0, EventPhase::Turn);
    }
}

void SectionRun::turn(int m) {
    switch (people_[m].next) {
    case Next::Enter: askEntry(m); return;
    case Next::Set: askSet(m); return;
    case Next::AfterSet:
        ++people_[m].slot;
        askSet(m);
        return;
    }
}

void SectionRun::giveBack(int m) {
    const IndexSpan needs = plan_.alternatives[people_[m].alternative].set;
    stock_.giveBack(m, needs, now_);
    events_.set(m, now_, EventPhase::Turn);
    if (!sets_.empty()) walkSets(needs);
}

void SectionRun::askEntry(int m) {
    const int slot = slotWithoutKit(m);
    if (slot != kNothing)
        return join(entries_, m, slot,
                    plan_.alternatives[plan_.slots[slot].alternatives.begin].group);
    enter(m);
    askSet(m);
}

// Two slots may share kit, and a member holds the larger count; so an alternative fits exactly when
// each of its counts is free, whatever the entry chose before.
int SectionRun::slotWithoutKit(int m) {
    const IndexSpan slots = plan_.groups[people_[m].group].slots;
    for (int s = slots.begin; s < slots.end; ++s) {
        const PlanSlot& slot = plan_.slots[s];
        if (!slot.chosenOnEntry) continue;
        int a = slot.alternatives.begin;
        while (a < slot.alternatives.end && !isFree(m, plan_.alternatives[a].group)) ++a;
        if (a == slot.alternatives.end) return s;
        chosen(m, s) = a;
    }
    return kNothing;
}

void SectionRun::enter(int m) {
    Person& p = people_[m];
    const IndexSpan slots = plan_.groups[p.group].slots;
    for (int s = slots.begin; s < slots.end; ++s)
        if (plan_.slots[s].chosenOnEntry)
            stock_.keep(m, plan_.alternatives[chosen(m, s)].group, now_);
    for (int s = slots.begin; stock_.byLoad() && s < slots.end; ++s)
        if (plan_.slots[s].chosenOnEntry)
            stock_.keepAny(m, plan_.alternatives[chosen(m, s)].group, now_);
    p.entered = p.roundStart = now_;
    p.round = 0;
    p.slot = slots.begin;
    p.step = steps_->row(m) + plan_.groups[p.group].firstStep;
    p.next = Next::Set;
}

void SectionRun::leave(int m) {
    const auto kept = stock_.kept(m);
    for (const Stock::Held& h : kept) record_->busy[h.kit] += h.count * (now_ - people_[m].entered);
    stock_.giveBackKept(m, now_);
    if (!kept.empty() && !entries_.empty()) walkEntries(kept);
    stock_.forgetKept(m);
}

void SectionRun::askSet(int m) {
    Person& p = people_[m];
    if (p.slot == plan_.groups[p.group].slots.end) return endRound(m);
    const int alternative = choose(m);
    if (alternative != kMustWait) return startSet(m, alternative);
    const PlanSlot& slot = plan_.slots[p.slot];
    const int preferred = slot.chosenOnEntry ? chosen(m, p.slot) : slot.alternatives.begin;
    join(sets_, m, p.slot, plan_.alternatives[preferred].set);
}

int SectionRun::choose(int m) {
    const Person& p = people_[m];
    const PlanSlot& slot = plan_.slots[p.slot];
    if (slot.alternatives.size() == 0) return kNothing;
    if (slot.chosenOnEntry) {
        const int a = chosen(m, p.slot);
        return isFree(m, plan_.alternatives[a].set) ? a : kMustWait;
    }
    for (int a = slot.alternatives.begin; a < slot.alternatives.end; ++a)
        if (isFree(m, plan_.alternatives[a].set)) return a;
    return kMustWait;
}

void SectionRun::startSet(int m, int alternative) {
    Person& p = people_[m];
    const Ticks takes = *p.step++;
    const IndexSpan needs = alternative < 0 ? IndexSpan{} : plan_.alternatives[alternative].set;
    for (int n = needs.begin; n < needs.end; ++n) {
        const auto [kit, count] = plan_.needs[n];
        record_->busy[kit] += count * takes;
    }
    stock_.take(m, needs, now_);
    if (watch_)
        watch_->did(FloorDoing::Set, m, now_, now_ + takes, plan_.slots[p.slot].place, p.round);
    p.alternative = alternative;
    p.next = Next::AfterSet;
    events_.set(m, now_ + takes, needs.size() > 0 ? EventPhase::GiveBack : EventPhase::Turn);
}

void SectionRun::endRound(int m) {
    Person& p = people_[m];
    const PlanGroup& g = plan_.groups[p.group];
    const Ticks rest = *p.step++;
    ++p.round;
    if (!another(p, rest)) return goOn(m, rest);
    if (watch_) watch_->did(FloorDoing::Rest, m, now_, now_ + rest, g.place, p.round - 1);
    p.slot = g.slots.begin;
    p.roundStart = now_ + rest;
    p.next = Next::Set;
    events_.set(m, now_ + rest, EventPhase::Turn);
}

// The deadline is a fraction of the budget; compared in whole numbers.
bool SectionRun::another(const Person& p, Ticks rest) const {
    const PlanGroup& g = plan_.groups[p.group];
    if (p.round < g.lo) return true;
    if (p.round >= g.hi) return false;
    if (!section_->budget) return true;
    const Ticks end = now_ + rest + (now_ - p.roundStart);
    return end * section_->groups.size() <= (p.visits + 1) * (*section_->budget - section_->talk);
}

// Out of the group: its kit back, then the next group after the rest, or through.
void SectionRun::goOn(int m, Ticks rest) {
    Person& p = people_[m];
    record_->rounds[p.group] += p.round;
    record_->reachedHigh[p.group] += p.round == plan_.groups[p.group].hi ? 1 : 0;
    events_.remove(m);
    leave(m);
    if (++p.visits == section_->groups.size()) {
        --left_;
        return;
    }
    if (watch_)
        watch_->did(FloorDoing::Rest, m, now_, now_ + rest, plan_.groups[p.group].place,
                    p.round - 1);
    if (++p.group == section_->groups.end) p.group = section_->groups.begin;
    p.next = Next::Enter;
    events_.set(m, now_ + rest, EventPhase::Turn);
}

bool SectionRun::isFree(int m, IndexSpan needs) const {
    for (int n = needs.begin; n < needs.end; ++n)
        if (!stock_.has(m, n)) return false;
    return true;
}

void SectionRun::join(Line& line, int m, int slot, IndexSpan lacking) {
    Person& p = people_[m];
    p.since = now_;
    p.slot = slot;
    p.blamed = 0;
    for (int n = lacking.begin; n < lacking.end; ++n)
        if (!stock_.has(m, n)) blame_[m * most_ + p.blamed++] = plan_.needs[n].kit;
    line.push_back(m);
    for (std::size_t i = line.size() - 1; i > 0; --i) {
        if (people_[line[i - 1]].since < now_ || line[i - 1] < m) break;
        std::swap(line[i - 1], line[i]);
    }
    events_.remove(m);
    if (watch_) watch_->joinedLine(m, now_);
}

void SectionRun::served(int m, int slot) {
    const Person& p = people_[m];
    const Ticks waited = now_ - p.since;
    record_->wait[m] += waited;
    for (int i = 0; i < p.blamed; ++i)
        record_->kitWait[m * static_cast<int>(plan_.kit.size()) + blame_[m * most_ + i]] += waited;
    if (!watch_) return;
    watch_->leftLine(m, now_);
    for (int i = 0; i < p.blamed; ++i) watch_->lacked(m, blame_[m * most_ + i]);
    watch_->did(FloorDoing::Wait, m, p.since, now_, plan_.slots[slot].place, p.round);
}

// A give-back of set kit can only help who waits for a set, one of group kit only who waits to
// enter: no kit item is both. So the one line of the gym is kept as two. And it can only help with
// what was given back: once that is taken again, the walk is over.
void SectionRun::walkSets(IndexSpan back) {
    const auto left = [&] {
        for (int n = back.begin; n < back.end; ++n)
            if (stock_.free(plan_.needs[n].kit) > 0) return true;
        return false;
    };
    std::size_t kept = 0, i = 0;
    for (; i < sets_.size() && left(); ++i) {
        const int m = sets_[i];
        const int alternative = choose(m);
        if (alternative == kMustWait) {
            sets_[kept++] = m;
            continue;
        }
        served(m, people_[m].slot);
        startSet(m, alternative);
    }
    closeUp(sets_, kept, i);
}

// Who enters asks for the first set in their own turn at this same millisecond.
void SectionRun::walkEntries(std::span<const Stock::Held> back) {
    const auto left = [&] {
        return std::ranges::any_of(back,
                                   [&](const Stock::Held& h) { return stock_.free(h.kit) > 0; });
    };
    std::size_t kept = 0, i = 0;
    for (; i < entries_.size() && left(); ++i) {
        const int m = entries_[i];
        const int slot = people_[m].slot;
        if (slotWithoutKit(m) != kNothing) {
            entries_[kept++] = m;
            continue;
        }
        people_[m].round = 0;
        served(m, slot);
        enter(m);
        events_.set(m, now_, EventPhase::Turn);
    }
    closeUp(entries_, kept, i);
}

// Takes out those from `kept` to before `next`.
void SectionRun::closeUp(Line& line, std::size_t kept, std::size_t next) {
    line.erase(line.begin() + static_cast<std::ptrdiff_t>(kept),
               line.begin() + static_cast<std::ptrdiff_t>(next));
}

int& SectionRun::chosen(int m, int slot) {
    return chosen_[m * widest_ + slot - plan_.groups[people_[m].group].slots.begin];
}

} // namespace bw
