// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/model/extras.hpp"

namespace bw {

// The keys of both; of a key in both, the value in `above`, but two objects are merged in turn.
[[nodiscard]] Extras mergedExtras(const Extras& beneath, const Extras& above);

} // namespace bw
