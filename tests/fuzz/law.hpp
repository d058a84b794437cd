// SPDX-License-Identifier: GPL-3.0-or-later
// A reader under test takes any bytes; what it must keep to is a law. One that is broken ends the
// program, so that the fuzzer keeps the bytes, and so that a replay of them fails.
#pragma once
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string_view>

// The name is the fuzzer's: https://llvm.org/docs/LibFuzzer.html. Always answers 0.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace bw::fuzz {

inline std::string_view textOf(const std::uint8_t* data, std::size_t size) {
    return {reinterpret_cast<const char*>(data), size};
}

inline void law(bool holds, const char* sentence) {
    if (holds) return;
    std::fprintf(stderr, "does not hold: %s\n", sentence);
    std::abort();
}

} // namespace bw::fuzz
