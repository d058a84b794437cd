// SPDX-License-Identifier: GPL-3.0-or-later
// GymFile::create and open with the list of steps given, so that tests can lengthen it.
#pragma once
#include "store/gym_file.hpp"
#include "store/migrations.hpp"

namespace bw::store {

Result<std::unique_ptr<GymFile>> createGymFile(const std::filesystem::path& path,
                                               const Migrations& steps);
// Up to so many bytes a file is looked through for damage before it opens, which takes no longer
// than a blink; the results of a larger one that is opened for writing are, after it has opened.
inline constexpr std::uintmax_t kLookedThroughFirst = 8ULL << 20;
Result<std::unique_ptr<GymFile>> openGymFile(const std::filesystem::path& path,
                                             GymFile::Access access, const Migrations& steps,
                                             std::uintmax_t first = kLookedThroughFirst);

} // namespace bw::store
