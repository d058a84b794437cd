// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/vocabulary.hpp"

namespace bw {

namespace {
constexpr std::array<std::string_view, 5> kRoles{"warm-up", "power", "strength-heavy",
                                                 "strength-long", "finisher"};
constexpr std::array<std::string_view, 20> kMuscles{
    "quadriceps", "hamstrings",     "glutes",        "adductors",     "abductors",
    "calves",     "hip-flexors",    "chest",         "upper-back",    "lats",
    "lower-back", "front-shoulder", "side-shoulder", "rear-shoulder", "biceps",
    "triceps",    "forearms",       "abdominals",    "obliques",      "neck"};
constexpr std::array<std::string_view, 7> kLoads{"bodyweight", "implement", "pair", "barbell",
                                                 "sled",       "machine",   "band"};
} // namespace

std::span<const std::string_view> shippedRoles() { return kRoles; }
std::span<const std::string_view> shippedMuscles() { return kMuscles; }
std::span<const std::string_view> shippedLoads() { return kLoads; }

} // namespace bw
