// SPDX-License-Identifier: GPL-3.0-or-later
// Which backups have had their time. Of the daily ones the last 7 stay, and one for each of the
// last 4 weeks (from Monday) and 12 months that have one: the last that can be read. Of each other
// kind the last 5 stay; what was set aside as damaged stays until the coach deletes it. "Last" is
// by number, so that a clock that was wrong for a while drives nothing out.
#pragma once
#include "store/backups.hpp"

#include <functional>

namespace bw::store {

inline constexpr std::size_t kDaysKept = 7, kWeeksKept = 4, kMonthsKept = 12, kOthersKept = 5;

// Of a list with the last made first. `good` is asked only where one of several may stay.
[[nodiscard]] std::vector<Backup> outOfRotation(const std::vector<Backup>& backups,
                                                const std::function<bool(const Backup&)>& good);

} // namespace bw::store
