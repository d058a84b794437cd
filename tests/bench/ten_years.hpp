// SPDX-License-Identifier: GPL-3.0-or-later
// The gym file of the benchmarks: ten years of one gym, as its coach would have left it. 120 months
// to December 2026, the last still to come; 40 to 60 members at a time and those who left; three
// million sets, stored month after month through the store's own verbs. The same bytes of content
// on every machine.
#pragma once
#include <filesystem>

namespace bw::test {

inline constexpr int kYearsMonths = 120, kYearsSets = 3'000'000;

// $BLOCKWRIGHT_BENCH_CACHE, else $XDG_CACHE_HOME/blockwright-bench, else
// ~/.cache/blockwright-bench. The file is made there by the first who asks, in a process of its own
// (so ask before there is a thread), which takes a minute or more and says so; ends the program
// when it can't be made. Copy it before it is changed.
[[nodiscard]] std::filesystem::path tenYears();

} // namespace bw::test
