// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/utf8.hpp"

#include <algorithm>

namespace bw {

namespace {
unsigned byteAt(std::string_view text, std::size_t i) {
    return i < text.size() ? static_cast<unsigned char>(text[i]) : 0u;
}
bool continues(unsigned byte) { return (byte & 0xC0u) == 0x80u; }

// Bytes of the sequence that begins at i, 0 when it is not well-formed (table 3-7 of the Unicode
// standard: the second byte is narrower after E0, ED, F0 and F4).
std::size_t sequenceAt(std::string_view text, std::size_t i) {
    const unsigned a = byteAt(text, i);
    if (a < 0x80) return 1;
    const unsigned b = byteAt(text, i + 1);
    if (a < 0xC2 || a > 0xF4 || !continues(b)) return 0;
    if (a < 0xE0) return 2;
    if ((a == 0xE0 && b < 0xA0) || (a == 0xED && b > 0x9F)) return 0;
    if (!continues(byteAt(text, i + 2))) return 0;
    if (a < 0xF0) return 3;
    if ((a == 0xF0 && b < 0x90) || (a == 0xF4 && b > 0x8F)) return 0;
    return continues(byteAt(text, i + 3)) ? 4 : 0;
}
} // namespace

std::optional<std::size_t> firstNotUtf8(std::string_view text) {
    for (std::size_t i = 0; i < text.size();) {
        const auto n = sequenceAt(text, i);
        if (n == 0) return i;
        i += n;
    }
    return std::nullopt;
}

std::size_t codePoints(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return !continues(static_cast<unsigned char>(c));
    }));
}

std::string shown(std::string_view bytes, std::size_t most) {
    bytes = bytes.substr(0, most);
    bytes = bytes.substr(0, firstNotUtf8(bytes).value_or(bytes.size()));
    std::string out;
    for (const char c : bytes) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte < 0x20 || byte == 0x7F)
            out += "\uFFFD";
        else
            out += c;
    }
    return out;
}

} // namespace bw
