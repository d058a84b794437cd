// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/rule.hpp"
#include "core/rules/gym_limit.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>
#include <array>
#include <stdexcept>

namespace bw {

const LimitValue* gymLimit(const GymSettings& gym, std::string_view rule, std::string_view name) {
    if (gym.limits.empty()) return nullptr;
    std::string key(rule);
    key += '.';
    key += name;
    const auto it = gym.limits.find(key);
    return it == gym.limits.end() ? nullptr : &it->second;
}

namespace {
const LimitSpec& specOf(const Rule& rule, std::string_view name) {
    const auto it = std::find_if(rule.limits.begin(), rule.limits.end(),
                                 [&](const LimitSpec& s) { return s.name == name; });
    if (it == rule.limits.end())
        throw std::logic_error(std::string(rule.id) + " has no limit " + std::string(name));
    return *it;
}
LimitValue limitOf(const GymSettings& gym, const Rule& rule, std::string_view name) {
    const LimitSpec& known = specOf(rule, name);
    const LimitValue* set = gymLimit(gym, rule.id, name);
    return set ? *set : known.standard;
}
} // namespace

LimitValue limitIn(const GymSettings& gym, std::string_view rule, std::string_view name) {
    const auto it = std::find_if(ruleBook().begin(), ruleBook().end(),
                                 [&](const Rule& r) { return r.id == rule; });
    if (it == ruleBook().end()) throw std::logic_error("There is no rule " + std::string(rule));
    return limitOf(gym, *it, name);
}

double weightIn(const GymSettings& gym, const Rule& rule, Level level) {
    constexpr std::array<std::string_view, 3> kNames{"weight_stop", "weight_look", "weight_note"};
    const std::array<double, 3> own{rule.weights.stop, rule.weights.look, rule.weights.note};
    const auto i = static_cast<std::size_t>(level);
    const LimitValue* set = gymLimit(gym, rule.id, kNames[i]);
    return set ? set->lo : own[i];
}

const LimitSpec& Verdict::spec(std::string_view name) const { return specOf(rule_, name); }

LimitValue Verdict::limit(std::string_view name) const {
    return limitOf(facts_.gym.settings, rule_, name);
}

Message Verdict::basis(std::string_view name) const {
    const LimitSpec& known = spec(name);
    return gymLimit(facts_.gym.settings, rule_.id, name) ? thisGymsSetting() : known.basis;
}

Finding& Verdict::add(Level level, Place place, double measured, std::string_view limitName,
                      Message text) {
    Finding f;
    f.rule = rule_.id;
    f.level = level;
    f.place = place;
    f.weeks = {facts_.week.number()};
    f.measured = measured;
    f.limit = limit(limitName);
    f.limitName = limitName;
    f.unit = spec(limitName).unit;
    f.basis = basis(limitName);
    f.text = std::move(text);
    out_.push_back(std::move(f));
    return out_.back();
}

} // namespace bw
