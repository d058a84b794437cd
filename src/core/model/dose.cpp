// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/dose.hpp"

namespace bw {

std::int64_t Dose::most(Measure m) {
    switch (m) {
    case Measure::Reps: return 1'000;
    case Measure::Seconds: return 7'200'000;
    case Measure::Metres: return 20'000'000;
    case Measure::Kcal: return 5'000'000;
    }
    return 0;
}

Result<Dose> Dose::of(Measure measure, std::int64_t lo, std::int64_t hi) {
    const auto most = Dose::most(measure);
    if (lo <= 0 || hi <= 0 || lo > most || hi > most)
        return Message{
            "A dose must be above 0 and at most %1 %2.",
            {std::to_string(most / smallestPerUnit(measure)), std::string(wordOf(measure))}};
    auto range = Range<std::int64_t>::of(lo, hi);
    if (!range) return range.why();
    return Dose(measure, *range);
}

} // namespace bw
