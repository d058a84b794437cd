// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/house_limits.hpp"

#include "blockwright/balance/balance_limits.hpp"
#include "blockwright/ledger/ledger_rules.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw {

namespace {
LimitValue single(double n) { return {n, n, false}; }

HouseLimit weight(const Rule& rule, Level level, double standard) {
    const std::string word(wordOf(level));
    return {std::string(rule.id) + ".weight_" + word,
            &rule,
            {"weight_" + word,
             single(standard),
             "",
             commonPractice(),
             {"What a finding of level %1 adds to the penalty.", {word}}},
            true};
}

std::vector<HouseLimit> all() {
    std::vector<HouseLimit> out;
    for (const LimitSpec& spec : balanceLimits())
        out.push_back({"balance." + spec.name, nullptr, spec, false});
    for (const Rule& rule : ruleBook()) {
        for (const LimitSpec& spec : rule.limits)
            out.push_back({std::string(rule.id) + "." + spec.name, &rule, spec, false});
        out.push_back(weight(rule, Level::Stop, rule.weights.stop));
        out.push_back(weight(rule, Level::Look, rule.weights.look));
        out.push_back(weight(rule, Level::Note, rule.weights.note));
    }
    for (const LimitSpec& spec : ledgerLimits())
        out.push_back({"ledger." + spec.name, nullptr, spec, false});
    return out;
}
} // namespace

const std::vector<HouseLimit>& houseLimits() {
    static const std::vector<HouseLimit> list = all();
    return list;
}

const HouseLimit* houseLimit(std::string_view key) {
    const auto& list = houseLimits();
    const auto it = std::find_if(list.begin(), list.end(),
                                 [&](const HouseLimit& limit) { return limit.key == key; });
    return it == list.end() ? nullptr : &*it;
}

LimitValue limitHere(const GymSettings& gym, const HouseLimit& limit) {
    const auto it = gym.limits.find(limit.key);
    return it == gym.limits.end() ? limit.spec.standard : it->second;
}

} // namespace bw
