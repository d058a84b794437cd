// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shorthand.hpp"

#include "core/model/board_text.hpp"

#include <optional>

namespace bw {

namespace {
using board::Amount;
using board::Span;
using board::Unit;

constexpr std::string_view kDoseForms = "5, 5–10, 10/side, 30 s, 1:30, 2 min, 15 m or 5 cal";
constexpr std::string_view kRoundsForms = "3 or 2–3";
constexpr std::string_view kRestForms = "90, 60–120 s, 2 min, 1:30–2:00 or no rest";
constexpr std::string_view kBudgetForms = "12, 8–12 min, 45 s or 1:30";
constexpr std::string_view kEffortForms = "2, 1–3 or RPE 8";

Message notUnderstood(std::string_view source, std::string_view typed, std::string_view forms) {
    return {std::string(source), {board::quoted(typed), std::string(forms)}};
}
Message wrongWayRound(std::string_view typed) {
    return {"“%1” is the wrong way round: write the smaller number first.", {board::quoted(typed)}};
}

struct Scale {
    Measure measure;
    std::int64_t grains; // smallest units of the measure in one unit
};
std::optional<Scale> scaleOf(Unit unit, Measure usual) {
    switch (unit) {
    case Unit::None: return Scale{usual, Dose::smallestPerUnit(usual)};
    case Unit::Rep: return Scale{Measure::Reps, 1};
    case Unit::Second: return Scale{Measure::Seconds, 1'000};
    case Unit::Minute: return Scale{Measure::Seconds, 60'000};
    case Unit::Hour: return Scale{Measure::Seconds, 3'600'000};
    case Unit::Metre: return Scale{Measure::Metres, 1'000};
    case Unit::Kilometre: return Scale{Measure::Metres, 1'000'000};
    case Unit::Kcal: return Scale{Measure::Kcal, 1'000};
    case Unit::Round:
    case Unit::Rir:
    case Unit::Rpe: break;
    }
    return std::nullopt;
}

struct Measured {
    Measure measure;
    std::int64_t lo, hi; // smallest units
};
std::optional<Measured> measured(const Span& span, Measure usual) {
    const auto lo = scaleOf(span.lo.unit, usual);
    const auto hi = scaleOf(span.hi.unit, usual);
    if (!lo || !hi || lo->measure != hi->measure) return std::nullopt;
    const auto from = span.lo.grains(lo->grains);
    const auto to = span.hi.grains(hi->grains);
    if (!from || !to) return std::nullopt;
    return Measured{lo->measure, *from, *to};
}

Message doseOutOfRange(std::string_view typed, Measure m) {
    const auto most = Dose::of(m, Dose::most(m), Dose::most(m)).value();
    return {"“%1” is out of range: a dose is above 0 and at most %2.",
            {board::quoted(typed), doseText(most, Sides::Both, Measure::Seconds)}};
}

// A bare amount counts seconds; `bad` is what to say when no time is understood.
Result<Range<Millis>> times(std::string_view typed, const std::optional<Span>& span,
                            std::int64_t mostMinutes, Message bad) {
    const auto m = span ? measured(*span, Measure::Seconds) : std::nullopt;
    if (!m || m->measure != Measure::Seconds || span->perSide) return bad;
    if (m->lo > mostMinutes * 60'000 || m->hi > mostMinutes * 60'000)
        return Message{"“%1” is out of range: at most %2 min.",
                       {board::quoted(typed), std::to_string(mostMinutes)}};
    if (m->hi < m->lo) return wrongWayRound(typed);
    return Range<Millis>::between(Millis{m->lo}, Millis{m->hi});
}
} // namespace

Result<DoseText> parseDose(std::string_view text, Measure usual) {
    const auto span = board::readSpan(text);
    const auto m = span ? measured(*span, usual) : std::nullopt;
    if (!m) return notUnderstood("“%1” is not a dose: write %2.", text, kDoseForms);
    if (m->hi < m->lo) return wrongWayRound(text);
    const auto dose = Dose::of(m->measure, m->lo, m->hi);
    if (!dose) return doseOutOfRange(text, m->measure);
    return DoseText{*dose, span->perSide};
}

Result<Range<int>> parseRounds(std::string_view text) {
    constexpr std::int64_t kMost = 20;
    const auto bad = [&] {
        return notUnderstood("“%1” is not a number of rounds: write %2, from 1 to 20.", text,
                             kRoundsForms);
    };
    const auto span = board::readSpan(text);
    const auto counts = [](const Amount& a) {
        return a.unit == Unit::None || a.unit == Unit::Round;
    };
    if (!span || span->perSide || !counts(span->lo) || !counts(span->hi)) return bad();
    const auto lo = span->lo.grains(1);
    const auto hi = span->hi.grains(1);
    if (!lo || !hi || *lo < 1 || *hi < 1 || *lo > kMost || *hi > kMost) return bad();
    if (*hi < *lo) return wrongWayRound(text);
    return Range<int>::between(static_cast<int>(*lo), static_cast<int>(*hi));
}

Result<Range<Millis>> parseRest(std::string_view text) {
    if (const auto words = board::plainWords(text); words == "no rest" || words == "none")
        return Range<Millis>(Millis{0});
    return times(text, board::readSpan(text), 30,
                 notUnderstood("“%1” is not a rest: write %2.", text, kRestForms));
}

Result<Range<Millis>> parseBudget(std::string_view text) {
    auto span = board::readSpan(text);
    if (span)
        for (Amount* a : {&span->lo, &span->hi})
            if (a->unit == Unit::None) a->unit = Unit::Minute;
    return times(text, span, 300,
                 notUnderstood("“%1” is not a length of time: write %2.", text, kBudgetForms));
}

Result<Range<Rir>> parseEffort(std::string_view text) {
    constexpr std::int64_t kMost = 100; // tenths
    const auto bad = [&] {
        return notUnderstood(
            "“%1” is not an effort: write the repetitions in reserve, from 0 to 10, "
            "as %2.",
            text, kEffortForms);
    };
    const auto span = board::readSpan(text);
    if (!span || span->perSide || span->lo.unit != span->hi.unit) return bad();
    const Unit unit = span->lo.unit;
    if (unit != Unit::None && unit != Unit::Rir && unit != Unit::Rpe) return bad();
    const auto lo = span->lo.grains(10);
    const auto hi = span->hi.grains(10);
    if (!lo || !hi || *lo > kMost || *hi > kMost) return bad();
    if (*hi < *lo) return wrongWayRound(text);
    const auto rir = [&](std::int64_t tenths) {
        return Rir::fromTenths(static_cast<int>(unit == Unit::Rpe ? kMost - tenths : tenths))
            .value();
    };
    return Range<Rir>::between(rir(*lo), rir(*hi));
}

} // namespace bw
