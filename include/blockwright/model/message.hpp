// SPDX-License-Identifier: GPL-3.0-or-later
// Text that the engine makes: an English source sentence with numbered gaps, and what fills them.
// The desk translates the source sentence before filling it; the terminal fills it as it stands.
//   Message{"Section takes %1, its budget is %2.", {"26:10", "22:00"}}.english()
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace bw {

struct Message {
    std::string source;            // English, gaps %1 to %9
    std::vector<std::string> args; // args[0] fills %1

    [[nodiscard]] std::string english() const { return fill(source, args); }
    static std::string fill(std::string_view source, const std::vector<std::string>& args);

    bool operator==(const Message&) const = default;
};

} // namespace bw
