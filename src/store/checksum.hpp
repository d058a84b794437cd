// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <filesystem>
#include <string_view>

namespace bw::store {

// CRC-32 as in ISO 3309, PNG and zip: tells every change of a single bit. Of text that follows
// what `before` is the sum of.
[[nodiscard]] std::uint32_t checksum(std::string_view bytes, std::uint32_t before = 0);
// Of all bytes of a file; throws std::system_error.
[[nodiscard]] std::uint32_t checksumOf(const std::filesystem::path& file);

} // namespace bw::store
