// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <string_view>

namespace bw::cli {

// Both throw Ending. Reading stops soon after `most` bytes, so that no endless file fills the
// memory.
[[nodiscard]] std::string readWholeFile(const std::string& file, std::size_t most);
// The old file stays until the new one is whole.
void writeWholeFile(const std::string& file, std::string_view text);

} // namespace bw::cli
