// SPDX-License-Identifier: GPL-3.0-or-later
// One member's part of the stair: the results are read once, then every draft of the month is
// answered from memory.
#pragma once
#include "blockwright/ledger/target.hpp"
#include "blockwright/ramp/session_load.hpp"
#include "edit/open_gym.hpp"

#include <optional>
#include <vector>

namespace bw {

struct MemberStair {
    const Member* member = nullptr; // of the gym, like all that the targets point at
    std::optional<Date> newest;     // result of the gym; none: nobody has any
    LedgerRules rules;
    std::vector<SlotTargets> slots;
    std::vector<SessionWeek> done; // what was lifted in the month; visits 0 where nothing was
};

// The targets of the slot; null when it has none.
[[nodiscard]] const SlotTargets* targetsAt(const MemberStair& stair, Place place);
[[nodiscard]] bool anythingDone(const MemberStair& stair);

class MemberResults {
public:
    // As far back as the gym looks, as it stood on the day of the gym's newest result. Why() when
    // the file can't be read. The gym must outlive it, and not change meanwhile.
    static Result<MemberResults> read(OpenGym& gym, const MemberId& member);

    [[nodiscard]] const MemberId& member() const { return member_; }
    // None when the gym no longer has the member.
    [[nodiscard]] std::optional<MemberStair> stairOf(const Gym& gym, const Block& block) const;

private:
    MemberResults(MemberId member, Ledger ledger, std::optional<Date> newest)
        : member_(std::move(member)), ledger_(std::move(ledger)), newest_(newest) {}

    MemberId member_;
    Ledger ledger_;
    std::optional<Date> newest_;
    std::vector<LiftResult> results_;
};

} // namespace bw
