// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/ledger_rules.hpp"

#include "core/rules/wording.hpp"

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
constexpr std::string_view kLedger = "ledger.", kRatio = "ledger.ratio.";
constexpr double kMostRatio = 100;

using Pair = std::pair<ExerciseId, ExerciseId>;

// "ledger.ratio.front-rack-squat.back-squat"; an id has no dot.
std::optional<Pair> ratioOf(std::string_view key) {
    if (!key.starts_with(kRatio)) return std::nullopt;
    key.remove_prefix(kRatio.size());
    const auto dot = key.find('.');
    if (dot == std::string_view::npos) return std::nullopt;
    auto first = ExerciseId::parse(key.substr(0, dot)),
         second = ExerciseId::parse(key.substr(dot + 1));
    if (!first || !second || *first == *second) return std::nullopt;
    return Pair{std::move(first).value(), std::move(second).value()};
}

// Reads what is set under "ledger.name" and lies from least to most.
class Settings {
public:
    explicit Settings(const GymSettings& gym) : gym_(gym) {}
    void take(std::string_view name, double least, double most, double& into) const {
        if (const auto* v = find(name); v && !v->band && v->lo >= least && v->lo <= most)
            into = v->lo;
    }
    void take(std::string_view name, int least, int most, int& into) const {
        double value = into;
        take(name, double{1} * least, double{1} * most, value);
        if (value == std::floor(value)) into = static_cast<int>(value);
    }
    void take(std::string_view name, int least, int most, Range<int>& into) const {
        const auto* v = find(name);
        if (!v || !v->band || v->lo < least || v->hi > most || v->lo >= v->hi) return;
        if (v->lo != std::floor(v->lo) || v->hi != std::floor(v->hi)) return;
        into = Range<int>::between(static_cast<int>(v->lo), static_cast<int>(v->hi));
    }

private:
    [[nodiscard]] const LimitValue* find(std::string_view name) const {
        const auto it = gym_.limits.find(std::string(kLedger).append(name));
        return it == gym_.limits.end() ? nullptr : &it->second;
    }
    const GymSettings& gym_;
};

LimitSpec spec(std::string name, LimitValue standard, std::string unit, Message basis,
               Message meaning) {
    return {std::move(name), standard, std::move(unit), std::move(basis), std::move(meaning)};
}
} // namespace

LedgerRules::LedgerRules() : window(Range<int>::between(5, 10)) {}

LedgerRules LedgerRules::of(const GymSettings& gym) {
    LedgerRules r;
    const Settings set(gym);
    int formula = static_cast<int>(r.formula) + 1, down = r.neverAbove ? 1 : 0;
    set.take("formula", 1, static_cast<int>(kCount<Formula>), formula);
    set.take("never_above", 0, 1, down);
    set.take("drift", 0.0001, 0.05, r.drift);
    set.take("day_form", 0.005, 0.2, r.dayForm);
    set.take("lookback_days", 30, 3650, r.lookbackDays);
    set.take("max_jump", 0.0, 1.0, r.maxJump);
    set.take("window", 1, 50, r.window);
    r.formula = static_cast<Formula>(formula - 1);
    r.neverAbove = down == 1;
    r.unit = gym.massUnit;
    for (const auto& [key, value] : gym.limits)
        if (auto pair = ratioOf(key);
            pair && !value.band && value.lo >= 1 / kMostRatio && value.lo <= kMostRatio)
            r.ratios.emplace(std::move(*pair), value.lo);
    return r;
}

const std::vector<LimitSpec>& ledgerLimits() {
    static const Message retest{
        "Grgic et al., Sports Med Open 2020;6:31: tested again, the load that "
        "can be lifted once differs by 4.2 % (median of 32 studies).",
        {}};
    static const Message acsm{"ACSM, Med Sci Sports Exerc 2009;41(3):687-708: 2 to 10 %.", {}};
    static const std::vector<LimitSpec> specs{
        spec("formula", atMost(1), "", commonPractice(),
             {"Equation for one repetition: 1 Epley, 2 Brzycki, 3 Lombardi, 4 Lander, 5 Mayhew, "
              "6 O'Conner, 7 Wathan.",
              {}}),
        spec("drift", atMost(0.004), "share", commonPractice(),
             {"How much strength may change in a day, as a standard deviation.", {}}),
        spec("day_form", atMost(0.042), "share", retest,
             {"How much the form of a day differs, as a standard deviation.", {}}),
        spec("lookback_days", atMost(730), "days", commonPractice(),
             {"Results older than this say nothing any more.", {}}),
        spec("max_jump", atMost(0.10), "share", acsm,
             {"The most that a load rises from one week to the next.", {}}),
        spec("never_above", atMost(0), "", commonPractice(),
             {"1 to round loads down; 0 to round them to the nearest.", {}}),
        spec("window", within(5, 10), "reps", commonPractice(),
             {"Repetitions between which an exercise without load climbs to its harder option.",
              {}}),
    };
    return specs;
}

bool isLedgerLimit(std::string_view key) {
    if (ratioOf(key)) return true;
    if (!key.starts_with(kLedger)) return false;
    const auto& specs = ledgerLimits();
    return std::any_of(specs.begin(), specs.end(),
                       [&](const LimitSpec& s) { return s.name == key.substr(kLedger.size()); });
}

} // namespace bw
