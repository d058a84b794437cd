// SPDX-License-Identifier: GPL-3.0-or-later
// Names by which things refer to each other: lower-case words of a to z and 0 to 9 joined by single
// hyphens, 1 to 200 characters. An exercise id can't be passed where a kit id is wanted.
#pragma once
#include "blockwright/model/result.hpp"

#include <compare>
#include <functional>
#include <string>
#include <string_view>

namespace bw {

[[nodiscard]] bool isIdText(std::string_view text);
// "Sled push (light)" -> "sled-push-light"; empty when no letter or digit is left.
[[nodiscard]] std::string idTextFrom(std::string_view name);

template <class Tag> class Id {
public:
    static Result<Id> parse(std::string_view text) {
        if (!isIdText(text))
            return Message{"“%1” is not an id: use lower-case words joined by “-”.",
                           {std::string(text.substr(0, 200))}};
        return Id(std::string(text));
    }
    [[nodiscard]] const std::string& text() const { return text_; }
    auto operator<=>(const Id&) const = default;

private:
    explicit Id(std::string text) : text_(std::move(text)) {}
    std::string text_;
};

using ExerciseId = Id<struct ExerciseTag>;
using KitId = Id<struct KitTag>;
using MemberId = Id<struct MemberTag>;
using MuscleId =
    Id<struct MuscleTag>;          // an open word list: see vocabulary.hpp for the words we ship
using RoleId = Id<struct RoleTag>; // likewise
using LoadId = Id<struct LoadTag>; // likewise

} // namespace bw

template <class Tag> struct std::hash<bw::Id<Tag>> {
    std::size_t operator()(const bw::Id<Tag>& id) const noexcept {
        return std::hash<std::string>{}(id.text());
    }
};
