// SPDX-License-Identifier: GPL-3.0-or-later
// Made-up athletes whose true strength is known. Their strength grows towards a ceiling, wanders,
// and sinks in weeks off; each has a curve of their own from loads to repetitions, a form of the
// day, and errs in saying how many were in reserve. Nothing of it is taken from the ledger, and the
// same seed gives the same athletes on every machine.
#pragma once
#include "blockwright/model/member.hpp"

#include <cstdint>
#include <vector>

namespace bw::test {

struct Look {
    Date date;
    double truth; // kg that could be lifted once on an ordinary day
    std::vector<LiftResult> sets;
};

// Their days in the gym over a year, in one exercise.
[[nodiscard]] std::vector<Look> athlete(std::uint32_t seed, std::uint32_t number);

} // namespace bw::test
