// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/scales.hpp"

#include "blockwright/model/shorthand.hpp"
#include "core/model/weeks.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/substitutes.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw::book {

namespace {
// How far an exercise leans to the wanted side: 1 all of it, -1 all to the other.
double lean(const Leaning& leaning, const Exercise& e) {
    const Ratio by = leaning.scale.by(e);
    const double other = leaning.scale.share ? by.under - by.over : by.under;
    return leaning.more ? by.over - other : other - by.over;
}
Fits mainlyWanted(const Leaning& leaning) {
    return [&leaning](const Exercise& e) { return lean(leaning, e) >= 0.5; };
}

// 0 within the band.
double distance(const LimitValue& band, const Ratio& ratio) {
    const auto value = ratio.value();
    if (!value) return 1e9;
    return std::max({0.0, band.lo - *value, *value - band.hi});
}

bool alike(const Exercise& a, const Exercise& b) {
    using enum Pattern;
    const Pattern p = a.patterns.largest(), q = b.patterns.largest();
    const auto both = [&](Pattern x, Pattern y) {
        return (p == x || p == y) && (q == x || q == y);
    };
    return p == q || both(HorizontalPush, VerticalPush) || both(HorizontalPull, VerticalPull) ||
           both(Squat, Lunge);
}

struct Candidate {
    Remedy remedy;
    double left; // of the distance to the band
};

class Search {
public:
    Search(const Facts& facts, const Leaning& leaning) : facts_(facts), leaning_(leaning) {}

    std::vector<Remedy> best() {
        fillOpenSlots();
        if (found_.empty()) {
            changeRounds(1);
            changeRounds(-1);
            exchange();
        }
        std::stable_sort(found_.begin(), found_.end(),
                         [](auto& a, auto& b) { return a.left < b.left; });
        std::vector<Remedy> out;
        for (Candidate& c : found_)
            if (out.size() < 2) out.push_back(std::move(c.remedy));
        return out;
    }

private:
    // Sets of one round more, averaged over the weeks that are measured.
    double setsOfARound(const Section& section) const {
        return leaning_.part *
               facts_.gym.settings.weights.of[static_cast<std::size_t>(section.kind)].part();
    }
    double roundsOf(const Group& group) const {
        int halves = 0;
        const auto weeks = weeksOf(facts_.block);
        for (const Week w : weeks)
            halves += plannedRoundsDoubled(group.rounds, facts_.block.step(w).rounds);
        return halves / (2.0 * static_cast<double>(weeks.size()));
    }
    double setsOf(const SlotFact& slot) const {
        return setsOfARound(*slot.section) * roundsOf(*slot.group);
    }
    void add(double sets, const Exercise& e, Ratio& to) const {
        const Ratio by = leaning_.scale.by(e);
        to.over += sets * by.over;
        to.under += sets * by.under;
    }
    // Kept when it takes at least a tenth off the way to the band.
    void consider(Remedy remedy, const Ratio& then) {
        const double left = distance(leaning_.band, then);
        if (left <= 0.9 * distance(leaning_.band, leaning_.now))
            found_.push_back({std::move(remedy), left});
    }
    void put(const SlotFact& slot, const Exercise& e) {
        Ratio then = leaning_.now;
        if (slot.exercise) add(-setsOf(slot), *slot.exercise, then);
        add(setsOf(slot), e, then);
        consider(useExercise(facts_, slot, e), then);
    }
    void fillOpenSlots() {
        for (const SlotFact& slot : facts_.slots)
            if (slot.slot->open())
                for (const Exercise* e : substitutes(facts_, slot, 1, mainlyWanted(leaning_)))
                    put(slot, *e);
    }

    double leanOf(Place group) const {
        double sum = 0;
        for (const SlotFact& s : facts_.slots)
            if (s.exercise && s.place.section == group.section && s.place.group == group.group)
                sum += lean(leaning_, *s.exercise);
        return sum;
    }
    static bool canTurn(const Group& group, int by) {
        return group.rounds.lo() + by >= 1 && group.rounds.hi() + by <= 20;
    }
    // A round more in the group that leans most to the wanted side, or less in that which leans
    // most to the other. Not in a warm-up.
    void changeRounds(int by) {
        const SlotFact* most = nullptr;
        for (const SlotFact& s : facts_.slots) {
            if (s.place.slot != 0 || s.section->kind == SectionKind::WarmUp) continue;
            if (canTurn(*s.group, by) &&
                (!most || by * leanOf(s.place) * setsOfARound(*s.section) >
                              by * leanOf(most->place) * setsOfARound(*most->section)))
                most = &s;
        }
        if (!most || by * leanOf(most->place) <= 0) return;
        Ratio then = leaning_.now;
        for (const SlotFact& s : facts_.slots)
            if (s.exercise && s.group == most->group)
                add(by * setsOfARound(*s.section), *s.exercise, then);
        consider(turned(*most, by), then);
    }
    Remedy turned(const SlotFact& first, int by) const {
        const Place group{first.place.section, first.place.group};
        const Range<int> now = first.group->rounds;
        const auto then = Range<int>::between(now.lo() + by, now.hi() + by);
        return {{"Set the rounds of group %1 to %2 instead of %3",
                 {groupLetter(facts_.block, group), roundsText(then), roundsText(now)}},
                setRounds(group, then)};
    }

    bool exchangeable(const SlotFact& s) const {
        return s.exercise && !s.slot->locked && !s.slot->main && lean(leaning_, *s.exercise) <= 0;
    }
    // In a strength pair only for another of its kind: what the format joins, no ratio may part.
    void exchange(const SlotFact& slot) {
        const bool strength = slot.section->kind == SectionKind::Strength;
        const auto wanted = mainlyWanted(leaning_);
        for (const Exercise* e : substitutes(facts_, slot, 1, [&](const Exercise& x) {
                 return wanted(x) && (!strength || alike(x, *slot.exercise));
             }))
            put(slot, *e);
    }
    // Outside the strength section first, then what is done most; the first that helps.
    void exchange() {
        std::vector<const SlotFact*> slots;
        for (const SlotFact& s : facts_.slots)
            if (exchangeable(s)) slots.push_back(&s);
        const auto order = [&](const SlotFact* s) {
            return std::pair{s->section->kind == SectionKind::Strength, -setsOf(*s)};
        };
        std::stable_sort(slots.begin(), slots.end(),
                         [&](auto* a, auto* b) { return order(a) < order(b); });
        const std::size_t before = found_.size();
        for (const SlotFact* s : slots)
            if (found_.size() == before) exchange(*s);
    }

    const Facts& facts_;
    const Leaning& leaning_;
    std::vector<Candidate> found_;
};
} // namespace

std::vector<Remedy> straighten(const Facts& facts, const Leaning& leaning) {
    return Search(facts, leaning).best();
}

bool openSlotCould(const Facts& facts, const Leaning& leaning) {
    return std::any_of(facts.slots.begin(), facts.slots.end(), [&](const SlotFact& s) {
        return s.slot->open() && !substitutes(facts, s, 1, mainlyWanted(leaning)).empty();
    });
}

} // namespace bw::book
