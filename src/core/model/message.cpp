// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/message.hpp"

namespace bw {

std::string Message::fill(std::string_view source, const std::vector<std::string>& args) {
    std::string out;
    out.reserve(source.size() + 32);
    for (std::size_t i = 0; i < source.size(); ++i) {
        const bool gap = source[i] == '%' && i + 1 < source.size() && source[i + 1] >= '1' &&
                         source[i + 1] <= '9';
        if (!gap) {
            out += source[i];
            continue;
        }
        const auto n = static_cast<std::size_t>(source[++i] - '1');
        if (n < args.size()) out += args[n];
    }
    return out;
}

} // namespace bw
