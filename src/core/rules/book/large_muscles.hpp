// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/model/vocabulary.hpp"

#include <array>
#include <string_view>

namespace bw::book {

// The large groups, and the patterns that train them; when none of those is there at all,
// pattern-missing says so.
struct Large {
    std::string_view muscle;
    const char* name;
    std::array<Pattern, 2> patterns;
};
constexpr std::array<Large, 6> kLarge{{
    {"quadriceps", "the quadriceps", {Pattern::Squat, Pattern::Lunge}},
    {"hamstrings", "the hamstrings", {Pattern::Hinge, Pattern::Hinge}},
    {"glutes", "the glutes", {Pattern::Hinge, Pattern::Squat}},
    {"chest", "the chest", {Pattern::HorizontalPush, Pattern::VerticalPush}},
    {"upper-back", "the upper back", {Pattern::HorizontalPull, Pattern::VerticalPull}},
    {"lats", "the lats", {Pattern::HorizontalPull, Pattern::VerticalPull}},
}};

} // namespace bw::book
