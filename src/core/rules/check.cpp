// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/check.hpp"

#include "blockwright/floor/study.hpp"
#include "blockwright/ledger/ledger_rules.hpp"
#include "blockwright/rules/accepting.hpp"
#include "blockwright/rules/house_limits.hpp"
#include "blockwright/rules/rule.hpp"
#include "core/model/weeks.hpp"
#include "core/rules/gym_limit.hpp"

#include <algorithm>

namespace bw {

namespace {
bool sameMatter(const Finding& a, const Finding& b) {
    return a.place == b.place && a.about == b.about && a.rule == b.rule;
}

// All are of one rule. The list of weeks grows; the worse level brings its own figures along.
void mergeInto(std::vector<Finding>& merged, Finding f) {
    const auto it = std::find_if(merged.begin(), merged.end(),
                                 [&](const Finding& known) { return sameMatter(known, f); });
    if (it == merged.end()) {
        merged.push_back(std::move(f));
        return;
    }
    auto weeks = std::move(it->weeks);
    if (weeks.back() != f.weeks.front()) weeks.push_back(f.weeks.front());
    if (f.level < it->level) *it = std::move(f);
    it->weeks = std::move(weeks);
}

std::vector<Finding> judgeWeekly(const Rule& rule, const std::vector<Facts>& weeks) {
    std::vector<Finding> found, fresh;
    for (const Facts& facts : weeks) {
        Verdict verdict(rule, facts, fresh);
        rule.judge(facts, verdict);
        for (Finding& f : fresh) mergeInto(found, std::move(f));
        fresh.clear();
    }
    return found;
}

std::vector<Finding> judgeOnce(const Rule& rule, const std::vector<Facts>& weeks) {
    std::vector<Finding> found;
    Verdict verdict(rule, weeks.front(), found);
    rule.judge(weeks.front(), verdict);
    for (Finding& f : found) {
        f.weeks.clear();
        for (const Facts& facts : weeks) f.weeks.push_back(facts.week.number());
    }
    return found;
}

// Which findings the coach has accepted. A single week's is accepted when the month's is.
class Accepted {
public:
    Accepted(const Gym& gym, const Block& block, bool oneWeek, const FloorStudy* floor)
        : block_(block) {
        if (oneWeek && !block.accepted.empty()) month_ = check(gym, block, {}, floor);
    }
    // Null: not accepted. Lives as long as the block and this.
    [[nodiscard]] const std::string* reasonOf(const Finding& f) const {
        if (!month_) {
            const Acceptance* a = acceptanceFor(block_, f);
            return a && factsHold(*a, f) ? &a->reason : nullptr;
        }
        const auto it =
            std::find_if(month_->accepted.begin(), month_->accepted.end(),
                         [&](const AcceptedFinding& a) { return sameMatter(a.finding, f); });
        return it == month_->accepted.end() ? nullptr : &it->reason;
    }

private:
    const Block& block_;
    std::optional<CheckResult> month_;
};

void sortOut(const Gym& gym, const Rule& rule, const Accepted& accepted, std::vector<Finding> found,
             CheckResult& out) {
    for (Finding& f : found) {
        if (const std::string* reason = accepted.reasonOf(f)) {
            out.accepted.push_back({std::move(f), *reason});
            continue;
        }
        out.penalty += weightIn(gym.settings, rule, f.level);
        out.findings.push_back(std::move(f));
    }
}

bool byLevelThenPlace(const Finding& a, const Finding& b) {
    return a.level != b.level ? a.level < b.level : a.place < b.place;
}
} // namespace

int CheckResult::count(Level level) const {
    return static_cast<int>(std::count_if(findings.begin(), findings.end(),
                                          [&](const Finding& f) { return f.level == level; }));
}

CheckResult check(const Gym& gym, const Block& block, std::optional<Week> week,
                  const FloorStudy* floor) {
    const History history(gym, block.month);
    std::vector<Facts> weeks;
    for (const Week w : week ? std::vector{*week} : weeksOf(block))
        weeks.push_back(Facts::of(gym, block, history, w, floor ? floor->of(w) : nullptr));
    const Accepted accepted(gym, block, week.has_value(), floor);
    CheckResult out;
    for (const Rule& rule : ruleBook())
        sortOut(gym, rule, accepted,
                rule.weekly ? judgeWeekly(rule, weeks) : judgeOnce(rule, weeks), out);
    std::stable_sort(out.findings.begin(), out.findings.end(), byLevelThenPlace);
    std::stable_sort(out.accepted.begin(), out.accepted.end(), [](const auto& a, const auto& b) {
        return byLevelThenPlace(a.finding, b.finding);
    });
    return out;
}

std::vector<std::string> unknownLimits(const GymSettings& gym) {
    std::vector<std::string> out;
    for (const auto& limit : gym.limits)
        if (!houseLimit(limit.first) && !isLedgerLimit(limit.first)) out.push_back(limit.first);
    return out;
}

} // namespace bw
