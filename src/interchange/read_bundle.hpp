// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "interchange/bundle.hpp"

namespace bw {

// Unfollowed: ids may refer to what is in another bundle that is read after this one.
enum class Follow { Yes, No };

[[nodiscard]] BundleReading readBundleFollowing(std::string_view json, const Gym* over,
                                                Follow follow);

} // namespace bw
