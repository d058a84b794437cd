// SPDX-License-Identifier: GPL-3.0-or-later
// GymFile::create and open with the list of steps given, so that tests can lengthen it.
#pragma once
#include "store/gym_file.hpp"
#include "store/migrations.hpp"

namespace bw::store {

Result<std::unique_ptr<GymFile>> createGymFile(const std::filesystem::path& path,
                                               const Migrations& steps);
Result<std::unique_ptr<GymFile>> openGymFile(const std::filesystem::path& path,
                                             GymFile::Access access, const Migrations& steps);

} // namespace bw::store
