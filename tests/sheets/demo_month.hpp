// SPDX-License-Identifier: GPL-3.0-or-later
// The demonstration gym with its latest month, what its members lifted, and what the rule book
// says.
#pragma once
#include "sheets/sheet_layout.hpp"

#include <memory>

namespace bw::test {

struct DemoMonth {
    explicit DemoMonth(Gym loaded, std::vector<LiftResult> results = {});
    [[nodiscard]] SheetMatter matter() const { return {gym, *block, ledger.get(), &verdict}; }

    Gym gym;
    Gym::BlockPtr block;
    std::unique_ptr<Ledger> ledger;
    CheckResult verdict;
};

[[nodiscard]] const DemoMonth& demoMonth();

// As randomMonth() of low_tide.hpp, with members of long names, flags and results, and kit.
[[nodiscard]] DemoMonth randomGym(std::uint32_t seed, int longest, int members);

} // namespace bw::test
