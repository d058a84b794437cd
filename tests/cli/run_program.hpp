// SPDX-License-Identifier: GPL-3.0-or-later
// Runs the bwright that was built beside these tests, as a process of its own.
#pragma once
#include "interchange/bundle.hpp"

#include <filesystem>
#include <string>
#include <vector>

namespace bw::test {

struct Ran {
    int code = -1; // 128 + n when signal n ended it
    std::string out, err;
};

// Arguments are given as they stand, no shell between; output is kept below `folder`.
[[nodiscard]] Ran bwright(const std::filesystem::path& folder,
                          const std::vector<std::string>& arguments);
// Started, not waited for: interrupted after `milliseconds`, then waited for.
[[nodiscard]] Ran interrupted(const std::filesystem::path& folder,
                              const std::vector<std::string>& arguments, int milliseconds);

[[nodiscard]] std::string demoFile();
[[nodiscard]] const Bundle& demoBundle();
// A small gym of one month, 2026-09, with one strength pair; as a bundle.
[[nodiscard]] std::string smallBundle();

} // namespace bw::test
