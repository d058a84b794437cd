// SPDX-License-Identifier: GPL-3.0-or-later
// UTF-8 as RFC 3629 has it: no overlong forms, no surrogates, nothing above U+10FFFF.
#pragma once
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace bw {

// Index of the first byte that begins no well-formed sequence; none when all is well.
[[nodiscard]] std::optional<std::size_t> firstNotUtf8(std::string_view text);

// Of well-formed text.
[[nodiscard]] std::size_t codePoints(std::string_view text);

// The beginning of any bytes as something to show in a sentence: at most `most` bytes, ends before
// the first ill-formed or cut sequence, control characters as U+FFFD.
[[nodiscard]] std::string shown(std::string_view bytes, std::size_t most = 200);

} // namespace bw
