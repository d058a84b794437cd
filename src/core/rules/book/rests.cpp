// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/rests.hpp"

namespace bw::book {

std::optional<MissedEnd> missedEnd(Range<Millis> rest, const LimitValue& seconds) {
    const double lo = inSeconds(rest.lo());
    const double hi = inSeconds(rest.hi());
    if (lo < seconds.lo) return MissedEnd{true, lo};
    if (hi > seconds.hi) return MissedEnd{false, hi};
    return std::nullopt;
}

void eachRestingGroup(const Block& block, SectionKind kind,
                      const std::function<void(Place, const Group&)>& visit) {
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s) {
        const Section& section = block.sections[static_cast<std::size_t>(s)];
        if (section.kind != kind) continue;
        for (int g = 0; g < static_cast<int>(section.groups.size()); ++g) {
            const Group& group = section.groups[static_cast<std::size_t>(g)];
            if (group.rounds.hi() > 1) visit({s, g}, group);
        }
    }
}

} // namespace bw::book
