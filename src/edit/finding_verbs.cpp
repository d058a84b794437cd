// SPDX-License-Identifier: GPL-3.0-or-later
#include "edit/finding_verbs.hpp"

#include "blockwright/rules/accepting.hpp"
#include "blockwright/rules/check.hpp"
#include "edit/gym_verbs.hpp"

#include <algorithm>

namespace bw {

namespace {
constexpr std::size_t kMostAccepted = 200; // of a month: older ones go

std::string_view trimmed(std::string_view text) {
    const auto from = text.find_first_not_of(" \t\r\n");
    if (from == text.npos) return {};
    return text.substr(from, text.find_last_not_of(" \t\r\n") - from + 1);
}

void drop(Block& block, const Finding& finding) {
    while (const Acceptance* a = acceptanceFor(block, finding))
        block.accepted.erase(block.accepted.begin() + (a - block.accepted.data()));
}

Spot spotOf(Month month, const Finding& finding) { return {month, finding.place}; }
} // namespace

Did acceptFinding(OpenGym& gym, Month month, const Finding& finding, std::string_view reason) {
    const std::string_view said = trimmed(reason);
    if (said.find_first_of("\t\r\n") != said.npos)
        return Message{"A reason is one line: nothing was kept.", {}};
    if (said.empty()) return Message{"Say in a few words why it may stay: nothing was kept.", {}};
    constexpr std::size_t kLongest = 200;
    if (lengthOf(said) > kLongest)
        return Message{"A reason has up to 200 characters: nothing was kept.", {}};
    return editBlock(gym, spotOf(month, finding), {"accept a finding", {}}, [&](Block& b) {
        drop(b, finding);
        if (b.accepted.size() >= kMostAccepted) b.accepted.erase(b.accepted.begin());
        b.accepted.push_back(makeAcceptance(b, finding, std::string(said)));
    });
}

Did takeBack(OpenGym& gym, Month month, const Finding& finding) {
    return editBlock(gym, spotOf(month, finding), {"take back an acceptance", {}},
                     [&](Block& b) { drop(b, finding); });
}

Did setLimit(OpenGym& gym, const std::string& key, std::optional<LimitValue> value) {
    GymSettings settings = gym.gym().settings;
    if (value)
        settings.limits[key] = *value;
    else
        settings.limits.erase(key);
    return gym.change({{"limit %1", {key}}, {PutSettings{std::move(settings)}}, {}, {}});
}

Did resetLimits(OpenGym& gym) {
    GymSettings settings = gym.gym().settings;
    const auto unknown = unknownLimits(settings);
    std::erase_if(settings.limits, [&](const auto& limit) {
        return std::find(unknown.begin(), unknown.end(), limit.first) == unknown.end();
    });
    return gym.change({{"all limits", {}}, {PutSettings{std::move(settings)}}, {}, {}});
}

} // namespace bw
