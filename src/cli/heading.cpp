// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/heading.hpp"

namespace bw::cli {

std::string headingOf(const Gym& gym, const Block& block) {
    std::string text;
    const auto add = [&](std::string_view part) {
        if (part.empty()) return;
        if (!text.empty()) text += " · ";
        text += part;
    };
    add(gym.settings.name);
    add(block.month.text());
    add(block.title);
    if (block.format) add(wordOf(*block.format));
    return text;
}

} // namespace bw::cli
