// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/substitutes.hpp"

#include "core/rules/offers.hpp"

#include <algorithm>

namespace bw {

namespace {
// In heavy-then-long a pair has a heavy and a long end, in heavy-then-fast a fast one.
std::vector<std::string_view> strengthRoles(const Facts& facts, const SlotFact& slot) {
    const auto format = facts.block.format;
    const bool pair = slot.group->slots.size() == 2;
    const bool last = pair && slot.place.slot == 1;
    if (format == Format::HeavyThenLong && pair)
        return {last ? std::string_view("strength-long") : "strength-heavy"};
    if (format == Format::HeavyThenFast && last) return {"power"};
    return {"strength-heavy", "strength-long"};
}

} // namespace

std::vector<std::string_view> rolesFor(const Facts& facts, const SlotFact& slot) {
    if (slot.exercise == nullptr && slot.slot->role) return {slot.slot->role->text()};
    if (slot.section->kind == SectionKind::Strength) return strengthRoles(facts, slot);
    return {wordOf(slot.section->kind)};
}

bool patternFits(const Slot& slot, const Exercise& e) {
    return !slot.open() || slot.patterns.empty() ||
           std::find(slot.patterns.begin(), slot.patterns.end(), e.patterns.largest()) !=
               slot.patterns.end();
}

namespace {
class Choice {
public:
    Choice(const Facts& facts, const SlotFact& slot, std::size_t most, const Fits& fits)
        : facts_(facts), slot_(slot), most_(most), fits_(fits) {
        if (!facts.offers) facts.offers = std::make_shared<Offers>(facts);
    }
    std::vector<const Exercise*> made() {
        if (slot_.exercise) {
            takeKin(slot_.exercise->easier);
            takeKin(slot_.exercise->swaps);
        }
        const auto kin = static_cast<std::ptrdiff_t>(found_.size());
        for (const Exercise* e : facts_.offers->ofRoles(rolesFor(facts_, slot_))) {
            if (found_.size() >= most_) break;
            if (std::find(found_.begin(), found_.begin() + kin, e) == found_.begin() + kin)
                take(*e);
        }
        return std::move(found_);
    }

private:
    void takeKin(const std::vector<ExerciseId>& ids) {
        std::vector<const Exercise*> kin;
        for (const ExerciseId& id : ids)
            if (const Exercise* e = facts_.gym.shelf.find(id); e && facts_.offers->free(*e))
                kin.push_back(e);
        facts_.offers->rank(kin);
        for (const Exercise* e : kin)
            if (std::find(found_.begin(), found_.end(), e) == found_.end()) take(*e);
    }
    void take(const Exercise& e) {
        if (found_.size() < most_ && fits_(e) && patternFits(*slot_.slot, e)) found_.push_back(&e);
    }

    const Facts& facts_;
    const SlotFact& slot_;
    std::size_t most_;
    const Fits& fits_;
    std::vector<const Exercise*> found_;
};
} // namespace

std::vector<const Exercise*> substitutes(const Facts& facts, const SlotFact& slot, std::size_t most,
                                         const Fits& fits) {
    return Choice(facts, slot, most, fits).made();
}

} // namespace bw
