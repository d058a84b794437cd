// SPDX-License-Identifier: GPL-3.0-or-later
// A finding that the coach leaves standing, and why. Kept with the block. It holds as long as the
// facts are what they were (blockwright/rules/accepting.hpp); then the finding comes back.
#pragma once
#include "blockwright/model/extras.hpp"
#include "blockwright/model/limit_value.hpp"
#include "blockwright/model/vocabulary.hpp"

#include <optional>
#include <string>

namespace bw {

struct Acceptance {
    std::string rule;  // "superset-work"
    std::string place; // as placeKey() writes it
    std::string about; // as in the finding, mostly empty
    Level level = Level::Look;
    std::optional<double> measured; // in the unit of the rule; none: no number (over nothing)
    LimitValue limit;
    std::string reason; // one line, 1 to 200 characters
    Extras extras;
    bool operator==(const Acceptance&) const = default;
};

} // namespace bw
