// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/floor/study.hpp"
#include "blockwright/propose/propose.hpp"

#include <algorithm>

namespace bw {

namespace {
bool cheaper(const ProposedMonth& a, const ProposedMonth& b) {
    constexpr double kSlip = 1e-6;
    return a.penalty < b.penalty - kSlip;
}
} // namespace

Proposal onFloor(const Gym& gym, const Block& draft, Proposal proposal, const FloorPlay& play,
                 const FloorProgress& progress) {
    const auto most = static_cast<std::size_t>(std::max(1, play.keep));
    const auto keepBest = [&](Proposal p) {
        if (p.answers.size() > most)
            p.answers.erase(p.answers.begin() + static_cast<std::ptrdiff_t>(most), p.answers.end());
        return p;
    };
    const auto study = [&](const Block& block) {
        return studyFloor(gym, block, play.options, {}, play.drop, progress);
    };
    const auto now = study(draft);
    if (!now) return keepBest(std::move(proposal));
    const CheckResult before = check(gym, draft, {}, &*now);
    Proposal out = proposal;
    out.answers.clear();
    for (ProposedMonth answer : proposal.answers) {
        if (out.answers.size() >= most && play.enough.stop_requested()) break;
        const auto then = study(answer.block);
        if (!then) return keepBest(std::move(proposal));
        const CheckResult after = check(gym, answer.block, {}, &*then);
        answer.penalty = after.penalty;
        answer.shift = shiftBetween(before, after);
        out.answers.push_back(std::move(answer));
    }
    out.penaltyNow = before.penalty;
    out.reordered = !std::is_sorted(out.answers.begin(), out.answers.end(), cheaper);
    std::stable_sort(out.answers.begin(), out.answers.end(), cheaper);
    out.onFloor = true;
    return keepBest(std::move(out));
}

} // namespace bw
