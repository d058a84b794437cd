// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/rule.hpp"
#include "core/rules/gym_limit.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>
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

const LimitSpec& Verdict::spec(std::string_view name) const {
    const auto it = std::find_if(rule_.limits.begin(), rule_.limits.end(),
                                 [&](const LimitSpec& s) { return s.name == name; });
    if (it == rule_.limits.end())
        throw std::logic_error(std::string(rule_.id) + " has no limit " + std::string(name));
    return *it;
}

LimitValue Verdict::limit(std::string_view name) const {
    const LimitSpec& known = spec(name);
    const LimitValue* set = gymLimit(facts_.gym.settings, rule_.id, name);
    return set ? *set : known.standard;
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
    f.unit = spec(limitName).unit;
    f.basis = basis(limitName);
    f.text = std::move(text);
    out_.push_back(std::move(f));
    return out_.back();
}

} // namespace bw
