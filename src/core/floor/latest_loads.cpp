// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/floor/targets.hpp"

#include <tuple>

namespace bw {

namespace {
bool later(const LiftResult& a, const LiftResult& b) {
    return std::tie(a.date, a.set) > std::tie(b.date, b.set);
}
} // namespace

FloorTargets latestLoads(const Gym& gym, std::span<const LiftResult> results) {
    std::map<std::pair<MemberId, ExerciseId>, const LiftResult*> last;
    for (const LiftResult& r : results) {
        const auto [it, fresh] = last.try_emplace({r.member, r.exercise}, &r);
        if (!fresh && later(r, *it->second)) it->second = &r;
    }
    std::map<MemberId, std::map<ExerciseId, Mass>> loads;
    for (const auto& [key, result] : last)
        if (result->load) loads[key.first].emplace(key.second, *result->load);
    FloorTargets out;
    for (const Member& member : gym.members)
        if (member.active) out.members.push_back(loads[member.id]);
    return out;
}

} // namespace bw
