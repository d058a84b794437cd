// SPDX-License-Identifier: GPL-3.0-or-later
// Random bits by counter: the same key and counter give the same bits, in whatever order they are
// asked. Philox4x32-10 of Salmon, Moraes, Dror, Shaw, "Parallel random numbers: as easy as 1, 2,
// 3", SC'11.
#pragma once
#include <array>
#include <cstdint>

namespace bw {

using PhiloxCounter = std::array<std::uint32_t, 4>;
using PhiloxKey = std::array<std::uint32_t, 2>;

[[nodiscard]] constexpr PhiloxCounter philox(PhiloxCounter c, PhiloxKey k) {
    constexpr std::uint64_t kM0 = 0xD2511F53, kM1 = 0xCD9E8D57;
    constexpr std::uint32_t kW0 = 0x9E3779B9, kW1 = 0xBB67AE85;
#pragma GCC unroll 10
    for (int round = 0; round < 10; ++round) {
        const std::uint64_t p0 = kM0 * c[0], p1 = kM1 * c[2];
        c = {static_cast<std::uint32_t>(p1 >> 32) ^ c[1] ^ k[0], static_cast<std::uint32_t>(p1),
             static_cast<std::uint32_t>(p0 >> 32) ^ c[3] ^ k[1], static_cast<std::uint32_t>(p0)};
        k = {k[0] + kW0, k[1] + kW1};
    }
    return c;
}

// 32 bits as a number in [0, 1), and as one in (0, 1) that is the same distance from both ends.
[[nodiscard]] constexpr double unitFrom(std::uint32_t bits) { return bits * 0x1p-32; }
[[nodiscard]] constexpr double openUnitFrom(std::uint32_t bits) { return (bits + 0.5) * 0x1p-32; }

} // namespace bw
