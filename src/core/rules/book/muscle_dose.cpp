// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shorthand.hpp"
#include "core/rules/book/book.hpp"
#include "core/rules/book/large_muscles.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/substitutes.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw::book {

namespace {
MuscleId idOf(const Large& large) { return MuscleId::parse(large.muscle).value(); }

double shareOf(const MuscleId& muscle, const Exercise& e) {
    const auto it = e.muscles.find(muscle);
    return it == e.muscles.end() ? 0 : it->second.part();
}

bool countsHard(const SlotFact& s) {
    return s.section->kind == SectionKind::Strength || s.section->kind == SectionKind::Finisher;
}

std::vector<Remedy> fillOpen(const Facts& facts, const MuscleId& muscle) {
    std::vector<Remedy> out;
    for (const SlotFact& slot : facts.slots) {
        if (!slot.slot->open() || !countsHard(slot) || out.size() >= 2) continue;
        const auto trains = [&](const Exercise& e) { return shareOf(muscle, e) >= 0.5; };
        for (const Exercise* e : substitutes(facts, slot, 1, trains))
            out.push_back(useExercise(facts, slot, *e));
    }
    return out;
}

// The strength group that trains the muscle most.
std::optional<Place> groupFor(const Facts& facts, const MuscleId& muscle) {
    std::optional<Place> best;
    double most = 0;
    for (const SlotFact& first : facts.slots) {
        if (first.place.slot != 0 || first.section->kind != SectionKind::Strength) continue;
        double sum = 0;
        for (const SlotFact& s : facts.slots)
            if (s.group == first.group && s.exercise) sum += shareOf(muscle, *s.exercise);
        if (sum > most) best = Place{first.place.section, first.place.group};
        most = std::max(most, sum);
    }
    return best;
}

std::optional<Remedy> turnRounds(const Facts& facts, const MuscleId& muscle, int by) {
    const auto group = groupFor(facts, muscle);
    if (!group) return std::nullopt;
    const Range<int> now = groupAt(facts.block, *group)->rounds;
    if (now.lo() + by < 1 || now.hi() + by > 20) return std::nullopt;
    const auto then = Range<int>::between(now.lo() + by, now.hi() + by);
    return Remedy{{"Set the rounds of group %1 to %2 instead of %3",
                   {groupLetter(facts.block, *group), roundsText(then), roundsText(now)}},
                  setRounds(*group, then)};
}

std::vector<Remedy> remediesFor(const Facts& facts, const Large& large, bool tooFew) {
    const MuscleId muscle = idOf(large);
    auto out = tooFew ? fillOpen(facts, muscle) : std::vector<Remedy>{};
    if (out.empty())
        if (auto remedy = turnRounds(facts, muscle, tooFew ? 1 : -1))
            out.push_back(std::move(*remedy));
    if (out.empty() && tooFew)
        out.push_back(advice({"One more strength exercise that trains %1", {large.name}}));
    if (out.empty()) out.push_back(advice({"One exercise less that trains %1", {large.name}}));
    return out;
}

bool patternsMissing(const Balance& balance, const Large& large) {
    return balance.of(large.patterns[0]) + balance.of(large.patterns[1]) <= 0;
}

void judgeMuscle(const Facts& facts, Verdict& verdict, const Large& large) {
    const Balance& balance = facts.balance().block;
    const LimitValue band = verdict.limit("sets");
    const double sets = balance.hardSets(idOf(large));
    if (holds(band, sets) || patternsMissing(balance, large)) return;
    const bool tooFew = sets < band.lo;
    const bool open = std::any_of(facts.slots.begin(), facts.slots.end(), [](const SlotFact& s) {
        return s.slot->open() && countsHard(s);
    });
    Finding& f = verdict.add(tooFew && !open ? Level::Look : Level::Note, {}, sets, "sets",
                             tooFew ? Message{"Hard sets in a week for %1: %2, fewer than %3.",
                                              {large.name, numberText(sets), numberText(band.lo)}}
                                    : Message{"Hard sets in a week for %1: %2, more than %3.",
                                              {large.name, numberText(sets), numberText(band.hi)}});
    f.about = large.muscle;
    f.remedies = remediesFor(facts, large, tooFew);
}

void judge(const Facts& facts, Verdict& verdict) {
    if (facts.balance().block.muscles.empty()) return; // the Shelf tells no muscles
    for (const Large& large : kLarge) judgeMuscle(facts, verdict, large);
}
} // namespace

Rule muscleDose() {
    return {
        "muscle-dose",
        {"Each large muscle group gets its hard sets in a week.", {}},
        {{"sets",
          within(4, 40),
          "sets",
          {"ACSM 2026 (Med Sci Sports Exerc, overview of reviews, from summaries): about 10 sets a "
           "week and muscle for growth, 2 to 3 sets twice a week for strength. Iversen et al. 2021 "
           "(Sports Med 51:2079-2095): 4 a week as the least. The upper end is common practice; "
           "none is published. The Shelf counts a muscle that helps for less than one (Pelland et "
           "al. 2025, Sports Med, doi 10.1007/s40279-025-02344-w: one half fitted best).",
           {}},
          {"Hard sets a week, all visits together: quadriceps, hamstrings, glutes, chest, upper "
           "back, lats.",
           {}}}},
        judge,
        {},
        false};
}

} // namespace bw::book
