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

Proposal onFloor(const Gym& gym, const Block& draft, Proposal proposal, int keep,
                 const FloorOptions& options, const std::stop_token& stop,
                 const FloorProgress& progress) {
    const auto most = static_cast<std::size_t>(std::max(1, keep));
    const auto asItWas = [&] {
        if (proposal.answers.size() > most)
            proposal.answers.erase(proposal.answers.begin() + keep, proposal.answers.end());
        return std::move(proposal);
    };
    const auto now = studyFloor(gym, draft, options, {}, {}, progress);
    if (!now) return asItWas();
    const CheckResult before = check(gym, draft, {}, &*now);
    Proposal out = proposal;
    out.answers.clear();
    for (ProposedMonth answer : proposal.answers) {
        if (out.answers.size() >= most && stop.stop_requested()) break;
        const auto then = studyFloor(gym, answer.block, options, {}, {}, progress);
        if (!then) return asItWas();
        const CheckResult after = check(gym, answer.block, {}, &*then);
        answer.penalty = after.penalty;
        answer.shift = shiftBetween(before, after);
        out.answers.push_back(std::move(answer));
    }
    out.penaltyNow = before.penalty;
    out.reordered = !std::is_sorted(out.answers.begin(), out.answers.end(), cheaper);
    std::stable_sort(out.answers.begin(), out.answers.end(), cheaper);
    if (out.answers.size() > most)
        out.answers.erase(out.answers.begin() + static_cast<std::ptrdiff_t>(most),
                          out.answers.end());
    out.onFloor = true;
    return out;
}

} // namespace bw
