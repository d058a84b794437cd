// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <span>
#include <string_view>

namespace bw {

struct ShippedText {
    std::string_view name; // of the file in resources/shelf
    std::string_view json;
};

// Made by cmake/embed.cmake from resources/shelf/*.bundle.json when the program is built.
[[nodiscard]] std::span<const ShippedText> shippedTexts();

} // namespace bw
