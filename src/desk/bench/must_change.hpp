// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "desk/bench/draft.hpp"

namespace bw {

// Marks the rows of a month that was copied from another, where the rule book finds that they were
// carried too long. They stay marked until the coach goes to another row.
void markMustChange(Draft& draft);

} // namespace bw
