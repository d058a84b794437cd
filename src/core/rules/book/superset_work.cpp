// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"
#include "core/rules/book/pairs.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/wording.hpp"

#include <string>

namespace bw::book {

namespace {
struct Pair {
    const SlotFact& first;
    const SlotFact& second;
    LimitValue limit; // seconds of work in one round

    [[nodiscard]] double work() const { return inSeconds(first.work.middle + second.work.middle); }
    [[nodiscard]] bool tooLong() const { return work() > limit.hi; }
    // Work of a round when this slot is done in another way.
    [[nodiscard]] double workWith(const SlotFact& slot, const Dose& dose,
                                  const std::optional<Tempo>& tempo) const {
        const SlotFact& other = &slot == &first ? second : first;
        return inSeconds(setWork(dose, tempo, *slot.exercise).middle + other.work.middle);
    }
};

// In heavy-then-long the heavy set keeps its few reps and the long set its eight.
bool mayTake(const Facts& facts, const Pair& pair, const SlotFact& slot, const Dose& dose) {
    constexpr double kLong = 8;
    if (facts.block.format != Format::HeavyThenLong) return true;
    if (&slot == &pair.first) return false;
    return dose.measure() != Measure::Reps || dose.lo() >= kLong || !pair.tooLong();
}

// The smallest change of one slot's dose that brings the round into the limit.
std::optional<Remedy> changeDose(const Facts& facts, const Pair& pair, const SlotFact& slot) {
    constexpr int kMostSteps = 60;
    for (int n = 1; n <= kMostSteps; ++n) {
        const auto dose = shifted(*slot.slot->dose, pair.tooLong() ? -n : n);
        if (!dose) return std::nullopt;
        if (!holds(pair.limit, pair.workWith(slot, *dose, slot.slot->tempo))) continue;
        return mayTake(facts, pair, slot, *dose) ? std::optional(setDoseTo(facts, slot, *dose))
                                                 : std::nullopt;
    }
    return std::nullopt;
}

// The next tempo on the way: a second off the lowering down to 2, then off the first pause; or a
// second more of lowering up to 5.
std::optional<Tempo> nextTempo(const Tempo& tempo, bool quicker) {
    std::string text = tempo.text();
    if (text[0] == 'X') return std::nullopt;
    if (!quicker && text[0] < '5')
        ++text[0];
    else if (quicker && text[0] > '2')
        --text[0];
    else if (quicker && text[1] > '0' && text[1] <= '9')
        --text[1];
    else
        return std::nullopt;
    const auto next = Tempo::parse(text);
    return next ? std::optional(*next) : std::nullopt;
}

std::optional<Remedy> changeTempo(const Facts& facts, const Pair& pair, const SlotFact& slot) {
    if (slot.slot->dose->measure() != Measure::Reps) return std::nullopt;
    const bool quicker = pair.tooLong();
    std::optional<Tempo> tempo = slot.slot->tempo;
    if (!tempo && quicker) return std::nullopt;
    tempo = tempo ? nextTempo(*tempo, quicker) : Tempo::parse("3010").value();
    for (; tempo; tempo = nextTempo(*tempo, quicker))
        if (holds(pair.limit, pair.workWith(slot, *slot.slot->dose, tempo)))
            return setTempoTo(facts, slot, *tempo);
    return std::nullopt;
}

std::vector<Remedy> remediesFor(const Facts& facts, const Pair& pair) {
    const bool secondLonger = pair.second.work.middle >= pair.first.work.middle;
    const SlotFact& longer = secondLonger ? pair.second : pair.first;
    const SlotFact& shorter = secondLonger ? pair.first : pair.second;
    std::vector<Remedy> out;
    for (auto way : {changeDose, changeTempo})
        for (const SlotFact* slot : {&longer, &shorter})
            if (auto remedy = way(facts, pair, *slot)) out.push_back(std::move(*remedy));
    if (out.empty() && pair.tooLong())
        out.push_back(advice({"Fewer reps in both, or a quicker tempo", {}}));
    if (out.empty()) out.push_back(advice({"More reps in both, or a slower tempo", {}}));
    return out;
}

void judge(const Facts& facts, Verdict& verdict) {
    const LimitValue limit = verdict.limit("seconds");
    eachStrengthPair(facts, [&](const SlotFact& first, const SlotFact& second) {
        const Pair pair{first, second, limit};
        if (holds(limit, pair.work())) return;
        const Place place{first.place.section, first.place.group};
        const std::vector<std::string> args{groupLabel(facts, place), secondsText(pair.work()),
                                            bandText(limit)};
        Finding& f = verdict.add(
            Level::Look, place, pair.work(), "seconds",
            pair.tooLong()
                ? Message{"One round of %1 is %2 of work, longer than %3: the second exercise "
                          "becomes a test of staying power.",
                          args}
                : Message{"One round of %1 is %2 of work, shorter than %3: there is room for more.",
                          args});
        f.remedies = remediesFor(facts, pair);
    });
}
} // namespace

Rule supersetWork() {
    return {"superset-work",
            {"One round of a strength pair is one to two minutes of work.", {}},
            {{"seconds",
              within(60, 120),
              "s",
              commonPractice(),
              {"Work in one round of a strength pair, set-ups and rests left out; 90 s is typical.",
               {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
