// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/json_text.hpp"

#include "cli/terminal.hpp"

#include <cmath>

namespace bw::cli {

Json number(double value) {
    constexpr double kExact = 9e15; // below 2^53, where a double still counts in ones
    if (std::nearbyint(value) == value && std::abs(value) < kExact)
        return static_cast<std::int64_t>(value);
    return value;
}

void sayJson(const Json& object) {
    say(object.dump(2, ' ', false, Json::error_handler_t::replace) + "\n");
}

} // namespace bw::cli
