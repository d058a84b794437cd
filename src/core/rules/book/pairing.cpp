// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"
#include "core/rules/book/pairs.hpp"
#include "core/rules/book/pattern_kin.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/substitutes.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>
#include <array>

namespace bw::book {

namespace {
constexpr std::array kPairFormats{Format::HeavyThenLong, Format::Opposed, Format::HeavyThenFast};

bool ofPairs(Format f) {
    return std::find(kPairFormats.begin(), kPairFormats.end(), f) != kPairFormats.end();
}
bool explosive(const Exercise& e) { return e.hasRole("power"); }

// What of the two is as the format wants it, 0 to 1.
double fit(Format format, const Exercise& first, const Exercise& second) {
    if (format == Format::Opposed) return relatedShare(first, second, opposites);
    return relatedShare(first, second, sameOrNeighbours);
}
} // namespace

bool fitsFormat(Format format, const Exercise& first, const Exercise& second, double least) {
    if (format == Format::HeavyThenFast && !explosive(second)) return false;
    return fit(format, first, second) >= least;
}

namespace {
std::vector<const SlotFact*> firstsOf(const Facts& facts) {
    std::vector<const SlotFact*> out;
    for (const SlotFact& s : facts.slots)
        if (s.place.slot == 0 && s.section->kind == SectionKind::Strength) out.push_back(&s);
    return out;
}

// Another pair format that every pair of the month fits; none when there is none.
std::optional<Format> betterFormat(const Facts& facts, double least) {
    for (const Format other : kPairFormats) {
        bool all = other != facts.block.format;
        eachStrengthPair(facts, [&](const SlotFact& first, const SlotFact& second) {
            all = all && fitsFormat(other, *first.exercise, *second.exercise, least);
        });
        if (all) return other;
    }
    return std::nullopt;
}

std::vector<Remedy> exchange(const Facts& facts, const SlotFact& first, const SlotFact& second,
                             double least) {
    const Format format = *facts.block.format;
    std::vector<Remedy> out;
    for (const SlotFact* slot : {&second, &first}) {
        if (slot->slot->locked || slot->slot->main) continue;
        const bool last = slot == &second;
        for (const Exercise* e : substitutes(facts, *slot, 2 - out.size(), [&](const Exercise& x) {
                 return last ? fitsFormat(format, *first.exercise, x, least)
                             : fitsFormat(format, x, *second.exercise, least);
             }))
            out.push_back(useExercise(facts, *slot, *e));
        if (!out.empty()) break;
    }
    return out;
}

std::vector<Remedy> remediesFor(const Facts& facts, const SlotFact& first, const SlotFact& second,
                                double least) {
    auto out = exchange(facts, first, second, least);
    if (const auto other = betterFormat(facts, least))
        out.push_back({{"Call the month %1: all its pairs are", {std::string(wordOf(*other))}},
                       [f = *other](Block& b) { b.format = f; }});
    if (out.empty()) out.push_back(advice({"Another partner for one of the two", {}}));
    return out;
}

const char* wrongPair(Format format) {
    if (format == Format::Opposed)
        return "%1 and %2 are no opposites; in opposed one rests while the other works.";
    if (format == Format::HeavyThenFast)
        return "%2 is not of the pattern of %1; in heavy-then-fast the fast one repeats the heavy "
               "one.";
    return "%1 and %2 are not of the same or a neighbouring pattern, as heavy-then-long wants.";
}

void judgePair(const Facts& facts, Verdict& verdict, const SlotFact& first,
               const SlotFact& second) {
    const Format format = *facts.block.format;
    const double least = verdict.limit("related_share").lo;
    if (fitsFormat(format, *first.exercise, *second.exercise, least)) return;
    const double measured = fit(format, *first.exercise, *second.exercise);
    const std::vector<std::string> names{slotLabel(facts.block, first),
                                         slotLabel(facts.block, second)};
    const bool slow = measured >= least;
    Finding& f = verdict.add(
        Level::Look, {first.place.section, first.place.group}, slow ? 0 : measured,
        slow ? "explosive" : "related_share",
        slow ? Message{"%2 is not explosive; in heavy-then-fast it follows %1 to be moved fast.",
                       names}
             : Message{wrongPair(format), names});
    f.also = {first.place, second.place};
    f.remedies = remediesFor(facts, first, second, least);
}

std::string_view sizeLimit(Format format) {
    if (format == Format::StraightHeavy) return "straight_heavy_slots";
    return format == Format::RoundTrip ? "round_trip_slots" : "pair_slots";
}
const char* wrongSize(Format format) {
    if (format == Format::StraightHeavy)
        return "Group %1 has %2 exercises; in straight-heavy each lift stands alone.";
    if (format == Format::RoundTrip)
        return "Group %1 has %2; a round-trip goes through %3 to %4 exercises.";
    return "Group %1 has %2; %5 pairs two exercises.";
}

Remedy addOpenSlot(const Facts& facts, Place group) {
    return {{"Add an open slot to group %1", {groupLetter(facts.block, group)}}, [group](Block& b) {
                if (Group* g = groupAt(b, group)) g->slots.emplace_back();
            }};
}
// Into groups of so many, one after another; heads told by count no longer fit and are spread.
Remedy split(const Facts& facts, Place group, std::size_t size) {
    return {{"Split group %1 into groups of %2",
             {groupLetter(facts.block, group), std::to_string(size)}},
            [group, size](Block& b) {
                Group* g = groupAt(b, group);
                if (!g || size == 0 || g->slots.size() <= size) return;
                Group rest = *g;
                rest.slots.erase(rest.slots.begin(),
                                 rest.slots.begin() + static_cast<std::ptrdiff_t>(size));
                g->slots.resize(size);
                auto& groups = sectionAt(b, group)->groups;
                auto at = groups.begin() + group.group + 1;
                while (rest.slots.size() > size) {
                    Group part = rest;
                    part.slots.resize(size);
                    rest.slots.erase(rest.slots.begin(),
                                     rest.slots.begin() + static_cast<std::ptrdiff_t>(size));
                    at = groups.insert(at, std::move(part)) + 1;
                }
                groups.insert(at, std::move(rest));
                Section& section = *sectionAt(b, group);
                if (std::holds_alternative<StartCounts>(section.start))
                    section.start = StartSpread{};
            }};
}

std::vector<Remedy> resize(const Facts& facts, Place group, std::size_t slots,
                           const LimitValue& band) {
    const auto most = static_cast<std::size_t>(std::max(1.0, band.hi));
    if (static_cast<double>(slots) < band.lo) return {addOpenSlot(facts, group)};
    for (std::size_t size = most; static_cast<double>(size) >= band.lo && size > 0; --size)
        if (slots % size == 0) return {split(facts, group, size)};
    return {advice({"Move an exercise of group %1 to a group of its own kind",
                    {groupLetter(facts.block, group)}})};
}

void judgeSize(const Facts& facts, Verdict& verdict, const SlotFact& first) {
    const Format format = *facts.block.format;
    const LimitValue band = verdict.limit(sizeLimit(format));
    const std::size_t slots = first.group->slots.size();
    if (holds(band, static_cast<double>(slots))) return;
    const Place group{first.place.section, first.place.group};
    Finding& f = verdict.add(ofPairs(format) ? Level::Note : Level::Look, group,
                             static_cast<double>(slots), sizeLimit(format),
                             {wrongSize(format),
                              {groupLabel(facts, group), std::to_string(slots), numberText(band.lo),
                               numberText(band.hi), std::string(wordOf(format))}});
    f.remedies = resize(facts, group, slots, band);
}

void judge(const Facts& facts, Verdict& verdict) {
    if (!facts.block.format) return;
    for (const SlotFact* first : firstsOf(facts)) judgeSize(facts, verdict, *first);
    if (!ofPairs(*facts.block.format)) return;
    eachStrengthPair(facts, [&](const SlotFact& first, const SlotFact& second) {
        judgePair(facts, verdict, first, second);
    });
}
} // namespace

Rule pairing() {
    return {"pairing",
            {"Strength groups are what the month's format says.", {}},
            {{"related_share",
              atMost(0.5),
              "share",
              commonPractice(),
              {"How much of a pair must be of the same or a neighbouring pattern (heavy-then-long, "
               "heavy-then-fast) or of opposite ones (opposed).",
               {}}},
             {"explosive",
              atMost(1),
              "",
              commonPractice(),
              {"How many exercises of a heavy-then-fast pair come second and are explosive.", {}}},
             {"pair_slots",
              within(2, 2),
              "",
              commonPractice(),
              {"Exercises in a group of heavy-then-long, opposed or heavy-then-fast.", {}}},
             {"straight_heavy_slots",
              within(1, 1),
              "",
              commonPractice(),
              {"Exercises in a group of straight-heavy.", {}}},
             {"round_trip_slots",
              within(3, 4),
              "",
              commonPractice(),
              {"Exercises in a group of round-trip.", {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
