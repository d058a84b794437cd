// SPDX-License-Identifier: GPL-3.0-or-later
// What every session should train, and the patterns that do.
#pragma once
#include "blockwright/model/exercise.hpp"

#include <array>
#include <string_view>

namespace bw::book {

struct Family {
    std::string_view key;
    Pattern one, other;            // the same twice when there is but one
    const char* missing;           // when nothing trains it
    const char* missingWithAPlace; // and an open slot could: %1
};
constexpr std::array<Family, 5> kFamilies{{
    {"squat-or-lunge", Pattern::Squat, Pattern::Lunge,
     "Nothing in this session trains a squat or a lunge.",
     "Nothing in this session trains a squat or a lunge; the open slot %1 could."},
    {"hinge", Pattern::Hinge, Pattern::Hinge, "Nothing in this session trains a hinge.",
     "Nothing in this session trains a hinge; the open slot %1 could."},
    {"push", Pattern::HorizontalPush, Pattern::VerticalPush,
     "Nothing in this session trains a push.",
     "Nothing in this session trains a push; the open slot %1 could."},
    {"pull", Pattern::HorizontalPull, Pattern::VerticalPull,
     "Nothing in this session trains a pull.",
     "Nothing in this session trains a pull; the open slot %1 could."},
    {"trunk", Pattern::TrunkStability, Pattern::Rotation,
     "Nothing in this session trains the trunk, by stability or rotation.",
     "Nothing in this session trains the trunk, by stability or rotation; the open slot %1 could."},
}};

// How much of an exercise is of the family, 0 to 1.
[[nodiscard]] double shareIn(const Family& family, const Exercise& e);

} // namespace bw::book
