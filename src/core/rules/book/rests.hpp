// SPDX-License-Identifier: GPL-3.0-or-later
// What the rules on rests share.
#pragma once
#include "blockwright/model/place.hpp"
#include "core/rules/wording.hpp"

#include <functional>
#include <optional>

namespace bw::book {

struct MissedEnd {
    bool below;     // else above
    double seconds; // the end of the rest that is outside
};
// The short end of the rest first; none when both ends lie in the limit.
[[nodiscard]] std::optional<MissedEnd> missedEnd(Range<Millis> rest, const LimitValue& seconds);

// Groups of such sections that can have a second round, and with it a rest.
void eachRestingGroup(const Block& block, SectionKind kind,
                      const std::function<void(Place, const Group&)>& visit);

} // namespace bw::book
