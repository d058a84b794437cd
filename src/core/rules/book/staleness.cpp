// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"
#include "core/rules/book/main_lifts.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/substitutes.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw::book {

namespace {
// Months in a row up to this one, it included, of which `holds` is true.
template <class Holds> int streak(const std::vector<const Block*>& before, Holds holds) {
    const auto end = std::find_if_not(before.begin(), before.end(), holds);
    return 1 + static_cast<int>(end - before.begin());
}

// Of the same main pattern, and no main lift of last month either.
std::vector<Remedy> otherLift(const Facts& facts, const SlotFact& lift, const Block& last) {
    std::vector<Remedy> out;
    if (lift.slot->locked) return {advice({"Unlock it and choose another lift", {}})};
    for (const Exercise* e : substitutes(facts, lift, 2, [&](const Exercise& x) {
             return x.patterns.largest() == lift.exercise->patterns.largest() &&
                    !isMainIn(last, x.id);
         }))
        out.push_back(useExercise(facts, lift, *e));
    if (out.empty()) out.push_back(advice({"Another lift of the same pattern", {}}));
    return out;
}

void judgeLifts(const Facts& facts, Verdict& verdict, const std::vector<const Block*>& before) {
    const double most = verdict.limit("main_months").hi;
    for (const SlotFact* lift : mainLifts(facts)) {
        const int months =
            streak(before, [&](const Block* b) { return isMainIn(*b, lift->exercise->id); });
        if (months <= most || months < 2) continue;
        Finding& f = verdict.add(
            Level::Look, lift->place, months, "main_months",
            {"%1 is a main lift for %2 months in a row now, more than %3: members stop gaining "
             "from it, or tire of it.",
             {slotLabel(facts.block, *lift), std::to_string(months), numberText(most)}});
        f.remedies = otherLift(facts, *lift, *before.front());
    }
}

// Groups of the strength sections are as large as the format wants them.
bool sizesFit(const Block& block, Format format) {
    const auto fits = [&](std::size_t n) {
        if (format == Format::StraightHeavy) return n == 1;
        return format == Format::RoundTrip ? n == 3 || n == 4 : n == 2;
    };
    for (const Section& section : block.sections)
        for (const Group& group : section.groups)
            if (section.kind == SectionKind::Strength && !fits(group.slots.size())) return false;
    return true;
}

// The one that the month's groups could take and that was not used for longest.
std::optional<Format> restedFormat(const Facts& facts) {
    std::optional<Format> best;
    std::size_t longest = 0;
    const auto& blocks = facts.history.blocks();
    for (std::size_t i = 0; i < kCount<Format>; ++i) {
        const auto format = static_cast<Format>(i);
        if (format == facts.block.format || !sizesFit(facts.block, format)) continue;
        const auto last = std::find_if(blocks.begin(), blocks.end(),
                                       [&](const auto& b) { return b->format == format; });
        const auto ago = static_cast<std::size_t>(last - blocks.begin()) + 1;
        if (ago > longest) best = format;
        longest = std::max(longest, ago);
    }
    return best;
}

void judgeFormat(const Facts& facts, Verdict& verdict, const std::vector<const Block*>& before) {
    if (!facts.block.format) return;
    const int months =
        streak(before, [&](const Block* b) { return b->format == facts.block.format; });
    const double most = verdict.limit("format_months").hi;
    if (months <= most || months < 2) return;
    Finding& f = verdict.add(Level::Look, {}, months, "format_months",
                             {"The format is %1 for %2 months in a row now.",
                              {std::string(wordOf(*facts.block.format)), std::to_string(months)}});
    f.about = "format";
    if (const auto other = restedFormat(facts))
        f.remedies = {
            {{"Make the month %1, and look at its pairs again", {std::string(wordOf(*other))}},
             [format = *other](Block& b) { b.format = format; }}};
    else
        f.remedies = {advice({"Another format, with groups to suit it", {}})};
}

void judge(const Facts& facts, Verdict& verdict) {
    const auto before = monthsInARow(facts);
    if (before.empty()) return;
    judgeLifts(facts, verdict, before);
    judgeFormat(facts, verdict, before);
}
} // namespace

Rule staleness() {
    return {"staleness",
            {"Main lifts and formats change from time to time.", {}},
            {{"main_months",
              atMost(3),
              "months",
              commonPractice(),
              {"Calendar months in a row that an exercise may be a main lift.", {}}},
             {"format_months",
              atMost(1),
              "months",
              commonPractice(),
              {"Calendar months in a row that may have the same format.", {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
