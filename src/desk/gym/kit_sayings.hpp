// SPDX-License-Identifier: GPL-3.0-or-later
// What is said of kit under the table.
#pragma once
#include "blockwright/model/kit_use.hpp"

#include <QString>

#include <optional>

namespace bw {

// Who needs it, and where the month stands on it.
[[nodiscard]] QString kitNeeded(const Gym& gym, const KitItem& item, KitUse use,
                                std::optional<Month> month);
// What can't be done any more.
[[nodiscard]] QString kitLost(const Gym& gym, const KitItem& item, const KitLoss& loss,
                              std::optional<Month> month);

} // namespace bw
