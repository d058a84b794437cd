// SPDX-License-Identifier: GPL-3.0-or-later
// What a coach decides about findings: to leave one standing, and where the limits are in this
// house. Like the block verbs, each is one undoable step.
#pragma once
#include "edit/block_verbs.hpp"

#include <map>

namespace bw {

// Keeps the finding's facts and the reason with the month; a reason it had before goes. Why() when
// the reason is blank or longer than 200 characters.
[[nodiscard]] Did acceptFinding(OpenGym& gym, Month month, const Finding& finding,
                                std::string_view reason);
// The finding counts again. False when it was not accepted.
[[nodiscard]] Did takeBack(OpenGym& gym, Month month, const Finding& finding);

// A limit of the rule book, "rule.name". None: the rule book's own.
[[nodiscard]] Did setLimit(OpenGym& gym, const std::string& key, std::optional<LimitValue> value);
// Every limit is the rule book's own again; keys that no rule knows stay.
[[nodiscard]] Did resetLimits(OpenGym& gym);

} // namespace bw
