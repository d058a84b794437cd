// SPDX-License-Identifier: GPL-3.0-or-later
// The ways to a gym that can be worked on. What fails leaves every file as it was; Why() says what
// happened and what to do.
#pragma once
#include "edit/gym_verbs.hpp"

#include <QString>

#include <filesystem>

namespace bw {

using Opening = Result<std::unique_ptr<OpenGym>>;

[[nodiscard]] Opening openGymFile(const std::filesystem::path& path);
// The copy of the demonstration gym; made when it is not there yet.
[[nodiscard]] Opening openDemo(const std::filesystem::path& path);
[[nodiscard]] Opening createEmptyGym(const std::filesystem::path& path, const QString& name);
[[nodiscard]] Opening createFromBundle(const std::filesystem::path& path,
                                       const QString& bundleFile);

// Why() names the first faults and how many more there are.
[[nodiscard]] Result<Bundle> readBundleFile(const QString& file, const Gym* over);

} // namespace bw
