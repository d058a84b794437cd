// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/ledger.hpp"

#include "core/floor/portable_math.hpp"
#include "core/ledger/track.hpp"

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace bw {

namespace {
// How repetitions of an exercise count; none when a result of it says nothing of strength.
std::optional<Sides> countedSides(const Shelf& shelf, const ExerciseId& id) {
    const Exercise* e = shelf.find(id);
    if (!e) return Sides::Both;
    if (e->pace.usual() != Measure::Reps) return std::nullopt;
    return e->sides;
}

Date earliestOf(Date on, const LedgerRules& rules) { return on.plusDays(1 - rules.lookbackDays); }

void addTo(DaySets& day, const LiftResult& r, const SetModel& model,
           const std::optional<Sides>& sides) {
    day.add(r, sides ? model.figure(r, *sides) : std::nullopt);
}

// The days so far, and the one that may still grow.
struct Line {
    std::optional<Sides> sides;
    Track track;
    std::optional<DaySets> open;
};

Track closed(const Line& line, const LedgerRules& rules) {
    Track track = line.track;
    if (line.open) track.day(*line.open, rules);
    return track;
}

Estimate passedOn(Estimate e, const ExerciseId& from, double ratio) {
    constexpr double kRatioSpread = 0.10; // of a member's own ratio around the coach's: our choice
    const double reach = portableLog(e.highKg / e.kg);
    const double more = kEightyPercent * kRatioSpread;
    const double wider = portableExp(std::sqrt(reach * reach + more * more));
    e.kg *= ratio;
    e.lowKg = e.kg / wider;
    e.highKg = e.kg * wider;
    e.days = 0;
    e.last.reset();
    e.from = from;
    e.ratio = ratio;
    return e;
}

double width(const Estimate& e) { return e.highKg / e.lowKg; }
} // namespace

struct Ledger::Inside {
    Inside(const Gym& g, Date day)
        : gym(g), rules(LedgerRules::of(g.settings)), on(day), earliest(earliestOf(day, rules)),
          model(rules.formula) {}

    // Sets mostly follow others of the same line.
    Line& lineOf(const LiftResult& r) {
        if (recent && recentMember == r.member && recentExercise == r.exercise) return *recent;
        recentMember = r.member;
        recentExercise = r.exercise;
        auto& of = lines[r.member];
        auto it = of.find(r.exercise);
        if (it == of.end())
            it = of.emplace(r.exercise, Line{countedSides(gym.shelf, r.exercise), {}, {}}).first;
        return *(recent = &it->second);
    }
    [[nodiscard]] const Line* find(const MemberId& member, const ExerciseId& exercise) const {
        const auto of = lines.find(member);
        if (of == lines.end()) return nullptr;
        const auto it = of->second.find(exercise);
        return it == of->second.end() ? nullptr : &it->second;
    }
    [[nodiscard]] std::optional<Estimate> own(const MemberId& member,
                                              const ExerciseId& exercise) const {
        const Line* line = find(member, exercise);
        return line ? closed(*line, rules).at(on, rules) : std::nullopt;
    }

    const Gym& gym;
    LedgerRules rules;
    Date on, earliest;
    SetModel model;
    std::unordered_map<MemberId, std::map<ExerciseId, Line>> lines;
    Line* recent = nullptr; // of these
    std::optional<MemberId> recentMember;
    std::optional<ExerciseId> recentExercise;
};

Ledger::Ledger(const Gym& gym, Date on) : inside_(std::make_unique<Inside>(gym, on)) {}
Ledger::~Ledger() = default;
Ledger::Ledger(Ledger&&) noexcept = default;
Ledger& Ledger::operator=(Ledger&&) noexcept = default;

const LedgerRules& Ledger::rules() const { return inside_->rules; }
Date Ledger::on() const { return inside_->on; }
Date Ledger::earliest() const { return inside_->earliest; }

void Ledger::add(const LiftResult& result) {
    Inside& in = *inside_;
    if (result.date < in.earliest || result.date > in.on) return;
    Line& line = in.lineOf(result);
    if (line.open && line.open->date() != result.date) {
        line.track.day(*line.open, in.rules);
        line.open.reset();
    }
    if (!line.open) line.open.emplace(result.date);
    addTo(*line.open, result, in.model, line.sides);
}

std::optional<Estimate> Ledger::estimate(const MemberId& member, const ExerciseId& exercise) const {
    const Inside& in = *inside_;
    auto best = in.own(member, exercise);
    if (best) return best;
    for (const auto& [pair, ratio] : in.rules.ratios) {
        const bool first = pair.first == exercise;
        if (!first && pair.second != exercise) continue;
        const ExerciseId& other = first ? pair.second : pair.first;
        auto own = in.own(member, other);
        if (!own) continue;
        Estimate passed = passedOn(std::move(*own), other, first ? ratio : 1 / ratio);
        if (!best || width(passed) < width(*best)) best = std::move(passed);
    }
    return best;
}

std::optional<TopSet> Ledger::last(const MemberId& member, const ExerciseId& exercise) const {
    const Line* line = inside_->find(member, exercise);
    return line ? closed(*line, inside_->rules).last() : std::nullopt;
}

std::vector<ExerciseId> Ledger::exercisesOf(const MemberId& member) const {
    std::vector<ExerciseId> out;
    const auto of = inside_->lines.find(member);
    if (of == inside_->lines.end()) return out;
    for (const auto& line : of->second) out.push_back(line.first);
    return out;
}

std::vector<LedgerDay> overTime(const Gym& gym, std::span<const LiftResult> results) {
    const LedgerRules rules = LedgerRules::of(gym.settings);
    const SetModel model(rules.formula);
    std::vector<DaySets> days;
    for (const LiftResult& r : results) {
        if (days.empty() || days.back().date() != r.date) days.emplace_back(r.date);
        addTo(days.back(), r, model, countedSides(gym.shelf, r.exercise));
    }
    std::vector<LedgerDay> out;
    out.reserve(days.size());
    for (auto last = days.begin(); last != days.end(); ++last) {
        const Date from = earliestOf(last->date(), rules);
        Track track;
        for (auto day = std::partition_point(days.begin(), last,
                                             [&](const DaySets& d) { return d.date() < from; });
             day <= last; ++day)
            track.day(*day, rules);
        out.push_back({last->top(), track.at(last->date(), rules)});
    }
    return out;
}

} // namespace bw
