// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/id.hpp"

namespace bw {

namespace {
constexpr std::size_t kLongest = 200;
bool plain(char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'); }
} // namespace

bool isIdText(std::string_view text) {
    if (text.empty() || text.size() > kLongest || text.front() == '-' || text.back() == '-')
        return false;
    char before = 'a';
    for (const char c : text) {
        if (!plain(c) && !(c == '-' && before != '-')) return false;
        before = c;
    }
    return true;
}

std::string idTextFrom(std::string_view name) {
    std::string out;
    for (char c : name) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
        if (plain(c))
            out += c;
        else if (!out.empty() && out.back() != '-')
            out += '-';
        if (out.size() == kLongest) break;
    }
    while (!out.empty() && out.back() == '-') out.pop_back();
    return out;
}

} // namespace bw
