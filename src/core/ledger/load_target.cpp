// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/ledger/load_target.hpp"

#include "blockwright/ledger/mass_text.hpp"

#include <cmath>

namespace bw {

namespace {
std::string percent(double share) { return std::to_string(std::llround(100 * share)); }

Message limitedText(const TargetCase& c, const Loading& chosen, const Before& before) {
    const MassUnit unit = c.rules.unit;
    const double now = chosen.total.kg();
    const auto next = c.loadings.above(now);
    if (before.same && next && now <= before.kg)
        return {"The next load here, %1, is %2 % above %3: stay, and do a repetition more.",
                {massText(next->total, unit), percent(next->total.kg() / before.kg - 1),
                 kgText(before.kg, unit)}};
    return {"Held back: at most %1 % above the last load, %2 at these repetitions.",
            {percent(c.rules.maxJump), kgText(before.kg, unit)}};
}

Message loadText(const TargetCase& c, const Loading& chosen, double want, int reps, Rir rir) {
    const std::string asked = kgText(want, c.rules.unit);
    const auto& all = c.loadings.around(want);
    if (!all.empty() && want < all.front().total.kg())
        return {"The lightest load here; the estimate asks for %1.", {asked}};
    if (!all.empty() && want > all.back().total.kg())
        return {"The heaviest load here; the estimate asks for %1.", {asked}};
    if (!chosen.kit)
        return {"%1 for %2 repetitions with %3 in reserve, by the estimate; the gym has not told "
                "its loads.",
                {asked, std::to_string(reps), rirText(rir.reps())}};
    return {"%1 for %2 repetitions with %3 in reserve, by the estimate.",
            {asked, std::to_string(reps), rirText(rir.reps())}};
}
} // namespace

double repsOf(const Exercise& exercise, int reps, Rir rir) {
    const double done = exercise.sides == Sides::Alternating ? reps / 2.0 : reps;
    return std::max(1.0, done + rir.reps());
}

std::optional<Before> carriedOver(const TargetCase& c, double n) {
    if (!c.last || !c.last->load || c.last->reps < 1) return std::nullopt;
    const double load = c.last->load->kg();
    const double then = repsOf(c.exercise, c.last->reps, c.last->rir.value_or(Rir{}));
    if (then > kMostReps || then == n) return Before{load, true};
    return Before{load * multiplier(c.rules.formula, then) / multiplier(c.rules.formula, n), false};
}

Target loadTarget(const TargetCase& c, int reps, Rir rir, const std::optional<Before>& before) {
    const double want = loadFor(c.rules.formula, c.estimate->kg, repsOf(c.exercise, reps, rir));
    Loadings::Ask ask{want, c.rules.neverAbove, {}};
    const Loading free = c.loadings.nearest(ask);
    if (before) ask.most = before->kg * (1 + c.rules.maxJump);
    Loading chosen = c.loadings.nearest(ask);
    const bool limited = chosen.total < free.total;
    Message text = limited ? limitedText(c, chosen, *before) : loadText(c, chosen, want, reps, rir);
    return {Aim::Load, std::move(chosen), {}, std::move(text)};
}

Target asLast(const TargetCase& c) {
    if (!c.last || !c.last->load)
        return {
            Aim::Find, {}, {}, {"Find it: light enough to move well to the end of the dose.", {}}};
    Loading loading = c.loadings.nearest({c.last->load->kg(), c.rules.neverAbove, {}});
    return {Aim::AsLast,
            std::move(loading),
            {},
            {"As last time: %1 on %2.",
             {setText(*c.last, c.rules.unit).english(), c.last->date.text()}}};
}

bool bodyOnly(const TargetCase& c) {
    const std::string& load = c.exercise.load.text();
    if (load == "bodyweight") return true;
    if (c.loadings.told()) return false;
    return load == "band" || (load == "machine" && c.exercise.pace.usual() != Measure::Reps);
}

Target bodyTarget(const TargetCase& c, const std::optional<Dose>& dose) {
    const bool band = c.exercise.load.text() == "band";
    const bool counted =
        dose ? dose->measure() == Measure::Reps : c.exercise.pace.usual() == Measure::Reps;
    if (!counted || !c.last || c.last->reps < 1)
        return {Aim::Body,
                {},
                {},
                band ? Message{"The band that leaves the week’s repetitions in reserve.", {}}
                     : Message{"The dose as it stands, without load.", {}}};
    Range<int> window = c.rules.window;
    if (dose) { // as wide, from where the dose begins
        const int from = static_cast<int>(dose->amount().lo());
        window = Range<int>::between(from, from + window.hi() - window.lo());
    }
    BodyStep step = nextBodyStep(c.gym, c.exercise, c.last->reps, window, c.member);
    if (band && step.move == BodyMove::Harder)
        step = {
            BodyMove::Harder,
            step.aim,
            nullptr,
            {"%1 last time: with good form take the next band, a stronger one, or a lighter one "
             "where it carries part of the body; else climb on.",
             {std::to_string(c.last->reps)}}};
    Message text = step.text;
    return {Aim::Body, {}, std::move(step), std::move(text)};
}

} // namespace bw
