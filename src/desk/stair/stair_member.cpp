// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/stair/stair_member.hpp"

#include <algorithm>

namespace bw {

namespace {
// Without any result, the day does not matter.
Date dayOf(const Gym& gym, const std::optional<Date>& newest) {
    if (newest) return *newest;
    const auto latest = gym.latest();
    return latest ? Date::of(latest->month.year(), latest->month.month(), 1).value()
                  : Date::of(2000, 1, 1).value();
}
} // namespace

const SlotTargets* targetsAt(const MemberStair& stair, Place place) {
    const auto at = std::ranges::find(stair.slots, place, &SlotTargets::place);
    return at == stair.slots.end() ? nullptr : &*at;
}

bool anythingDone(const MemberStair& stair) {
    return std::ranges::any_of(stair.done, [](const SessionWeek& w) { return w.visits > 0; });
}

Result<MemberResults> MemberResults::read(OpenGym& gym, const MemberId& member) {
    const auto newest = gym.file().newestResult();
    if (!newest) return newest.why();
    MemberResults out(member, Ledger(gym.gym(), dayOf(gym.gym(), *newest)), *newest);
    const auto read = gym.file().eachResultOf({{member}, {}, out.ledger_.earliest()},
                                              [&](const LiftResult& result) {
                                                  out.ledger_.add(result);
                                                  out.results_.push_back(result);
                                                  return true;
                                              });
    if (!read) return read.why();
    return out;
}

std::optional<MemberStair> MemberResults::stairOf(const Gym& gym, const Block& block) const {
    const Member* member = gym.findMember(member_);
    if (!member) return std::nullopt;
    return MemberStair{member, newest_, ledger_.rules(),
                       MonthTargets(gym, block).of(ledger_, *member),
                       memberLoads(gym, block, results_)};
}

} // namespace bw
