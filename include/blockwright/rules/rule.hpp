// SPDX-License-Identifier: GPL-3.0-or-later
// A rule is one small, pure unit: facts in, findings out. Each stands in a file of its own under
// src/core/rules/book/ and in one line of the list in src/core/rules/rule_list.cpp.
#pragma once
#include "blockwright/rules/facts.hpp"
#include "blockwright/rules/finding.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace bw {

// A limit that the gym can set under the key "rule.name".
struct LimitSpec {
    std::string name; // "look_share"
    LimitValue standard;
    std::string unit; // "s", "share", "reps", "sets", ""
    Message basis;    // a citation, or "common practice", or "this gym's setting"
    Message meaning;  // one sentence for the coach
};

// Weight of one finding in the penalty, by level. The gym sets them as "rule.weight_stop" and so
// on.
struct LevelWeights {
    double stop = 100, look = 10, note = 1;
};

class Verdict;

struct Rule {
    std::string_view id; // "session-length"
    Message title;       // what it measures, one sentence
    std::vector<LimitSpec> limits;
    void (*judge)(const Facts&, Verdict&) = nullptr;
    LevelWeights weights{};
    bool weekly = true; // judged week by week; else once, and true of every week
};

// What a rule reads its limits from and writes its findings to.
class Verdict {
public:
    Verdict(const Rule& rule, const Facts& facts, std::vector<Finding>& out)
        : rule_(rule), facts_(facts), out_(out) {}

    // The gym's value, else the standard one. The name must be one of the rule's limits.
    [[nodiscard]] LimitValue limit(std::string_view name) const;
    // The limit's basis; "this gym's setting" when the gym has set it.
    [[nodiscard]] Message basis(std::string_view name) const;

    // Adds a finding measured against the named limit; the rest of it can be filled in through the
    // returned reference, which the next call makes stale.
    Finding& add(Level level, Place place, double measured, std::string_view limitName,
                 Message text);

private:
    [[nodiscard]] const LimitSpec& spec(std::string_view name) const;
    const Rule& rule_;
    const Facts& facts_;
    std::vector<Finding>& out_;
};

// All rules, in the order of the catalogue.
[[nodiscard]] const std::vector<Rule>& ruleBook();

} // namespace bw
