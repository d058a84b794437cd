// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/sums.hpp"

#include "core/model/weeks.hpp"
#include "core/rules/book/families.hpp"
#include "core/rules/book/large_muscles.hpp"
#include "core/rules/book/main_lifts.hpp"
#include "core/rules/gym_limit.hpp"

#include <algorithm>

namespace bw::proposing {

namespace {
std::int64_t& slotIn(Sums& sums, int index) { return sums[static_cast<std::size_t>(index)]; }
} // namespace

double partOf(const Exercise& e, int index) {
    if (index < at::plane) return e.patterns[static_cast<Pattern>(index)].part();
    if (index < at::sets) return e.planes[static_cast<Plane>(index - at::plane)].part();
    return index == at::oneSided && !oneSideAtATime(e) ? 0 : 1;
}

Adder::Adder(const Task& task)
    : task_(task), leastShare_(limitIn(task.gym.settings, "pattern-missing", "least_share").lo),
      waits_(task) {
    const Block& block = *task.block;
    for (const Week w : weeksOf(block))
        if (const RoundsMode mode = block.step(w).rounds;
            std::find(modes_.begin(), modes_.end(), mode) == modes_.end())
            modes_.push_back(mode);
    if (!task.history->empty())
        lastMains_ = book::mainsOf(task.gym, *task.history->blocks().front());
    Block filled = block;
    for (const Target& t : task.targets) slotAt(filled, t.place)->exercise = t.fits.front()->id;
    for (const SlotGrains& slot : slotGrains(task.gym, filled, {}))
        for (const Target& t : task.targets)
            if (t.place == slot.place) seats_.push_back(slot);
    addFixed();
}

void Adder::addFixed() {
    const Task& task = task_;
    const Block& block = *task.block;
    fixed_.resize(static_cast<std::size_t>(waitAt(waits_.lines().size())));
    for (const SlotGrains& slot : slotGrains(task.gym, block, {})) addBalance(slot, fixed_);
    std::vector<const Exercise*> seen;
    for (const SlotFact& slot : task.facts->slots) {
        if (!slot.exercise) continue;
        const bool again = std::find(seen.begin(), seen.end(), slot.exercise) != seen.end();
        const auto fresh = slotIn(fixed_, at::fresh);
        addCounts(slot, fixed_);
        if (again) slotIn(fixed_, at::fresh) = fresh;
        seen.push_back(slot.exercise);
    }
    slotIn(fixed_, at::carried) =
        std::count_if(lastMains_.begin(), lastMains_.end(),
                      [&](const Exercise* e) { return book::isMainIn(block, e->id); });
    for (std::size_t m = 0; m < modes_.size(); ++m)
        for (const Week w : weeksOf(block)) {
            if (block.step(w).rounds != modes_[m]) continue;
            const SessionTime time = timeSession(task.gym.settings, task.gym.shelf, block, w);
            for (std::size_t s = 0; s < time.sections.size(); ++s)
                slotIn(fixed_, timeAt(m, s)) = time.sections[s].total.planned.count();
        }
    waits_.addFixed(waitsIn(fixed_));
}

void Adder::addBalance(const SlotGrains& slot, Sums& to) const {
    const Exercise& e = *slot.exercise;
    slotIn(to, at::sets) += slot.sets();
    if (oneSideAtATime(e)) slotIn(to, at::oneSided) += slot.sets();
    for (int i = 0; i < at::plane; ++i)
        if (const auto p = static_cast<Pattern>(i); e.patterns.has(p))
            slotIn(to, at::pattern + i) += slot.sets(e.patterns[p]);
    for (int i = 0; i < at::sets - at::plane; ++i)
        if (const auto p = static_cast<Plane>(i); e.planes.has(p))
            slotIn(to, at::plane + i) += slot.sets(e.planes[p]);
    if (slot.hardWeight == Share{}) return;
    for (const auto& [muscle, told] : e.muscles) {
        const Grains grains = slot.hardSets(muscleShare(task_.gym.settings, told));
        slotIn(to, at::anyMuscle) += grains;
        for (std::size_t i = 0; i < book::kLarge.size(); ++i)
            if (muscle.text() == book::kLarge[i].muscle)
                slotIn(to, at::muscle + static_cast<int>(i)) += grains;
    }
}

void Adder::addCounts(const SlotFact& slot, Sums& to) const {
    const Exercise& e = *slot.exercise;
    for (std::size_t i = 0; i < book::kFamilies.size(); ++i)
        if (book::shareIn(book::kFamilies[i], e) >= leastShare_)
            ++slotIn(to, at::family + static_cast<int>(i));
    if (!task_.history->knows(e.id)) ++slotIn(to, at::fresh);
}

std::span<std::int64_t> Adder::waitsIn(Sums& sums) const {
    return std::span(sums).subspan(static_cast<std::size_t>(waitAt(0)));
}

Sums Adder::of(const Filling& filling) {
    Sums out(fixed_.size());
    SlotGrains seat = *std::find_if(seats_.begin(), seats_.end(), [&](const SlotGrains& s) {
        return s.place == filling.fact.place;
    });
    seat.exercise = filling.fact.exercise;
    addBalance(seat, out);
    addCounts(filling.fact, out);
    const bool main = filling.slot.main;
    if (main && std::find(lastMains_.begin(), lastMains_.end(), seat.exercise) != lastMains_.end())
        ++slotIn(out, at::carried);
    const auto section = static_cast<std::size_t>(filling.fact.place.section);
    const Millis set = seat.exercise->setup + filling.fact.work.middle;
    for (std::size_t m = 0; m < modes_.size(); ++m)
        slotIn(out, timeAt(m, section)) +=
            ExactTime{set}.count() * plannedRoundsDoubled(filling.fact.group->rounds, modes_[m]) /
            2;
    waits_.add(filling.fact, waitsIn(out));
    return out;
}

Sums Adder::months() const {
    Sums out(fixed_.size());
    for (const Block* block : windowOf(task_.gym, *task_.block))
        if (block != task_.block.get())
            for (const SlotGrains& slot : slotGrains(task_.gym, *block, {})) addBalance(slot, out);
    return out;
}

} // namespace bw::proposing
