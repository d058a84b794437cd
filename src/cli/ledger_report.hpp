// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/ledger/target.hpp"
#include "cli/json_text.hpp"

namespace bw::cli {

struct LedgerLine {
    ExerciseId exercise;
    std::optional<Estimate> estimate;
    std::optional<TopSet> last;
    std::optional<Target> next;
    std::vector<LedgerDay> days; // only when one member and one exercise were asked for
};
struct LedgerMember {
    const Member* member;
    std::vector<LedgerLine> lines;
};
struct LedgerReport {
    const Gym& gym;
    Date on;
    LedgerRules rules;
    bool oneMember = false, oneExercise = false;
    std::vector<LedgerMember> members;
};

[[nodiscard]] Json ledgerJson(const LedgerReport& report);
[[nodiscard]] std::string ledgerText(const LedgerReport& report);

} // namespace bw::cli
