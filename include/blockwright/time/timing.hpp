// SPDX-License-Identifier: GPL-3.0-or-later
// How long a draft takes when one person does it alone, without any queue: short (everything at its
// low end), long (high end), and planned for a week (middle dose and rest, that week's rounds).
//
//   set     occupies set-up + work           round    sum over its slots
//   group   n rounds + (n - 1) rests         section  talk + groups, the earlier group's rest
//   between session opening + sections + closing
//
// A slot's set is rounded to whole milliseconds (halves up), then added exactly; 2.5 rounds and
// half rests are kept in quarters of a millisecond. An open slot takes no time yet.
#pragma once
#include "blockwright/model/gym.hpp"

#include <cstdint>
#include <ratio>
#include <vector>

namespace bw {

using ExactTime = std::chrono::duration<std::int64_t, std::ratio<1, 4000>>;
[[nodiscard]] Millis roundHalvesUp(ExactTime t);
[[nodiscard]] double seconds(ExactTime t);

struct Figures {
    ExactTime low{}, high{}, planned{}; // "short" and "long" are taken words
    Figures& operator+=(const Figures& o);
    bool operator==(const Figures&) const = default;
};

struct GroupTime {
    Figures total;
    ExactTime roundPlanned{}; // one round, middle dose, rest not included
    ExactTime workPlanned{};  // of it, work alone without set-ups
};
struct SectionTime {
    Figures total; // talk included
    std::vector<GroupTime> groups;
};
struct SessionTime {
    Figures total;
    std::vector<SectionTime> sections;
    int openSlots = 0;
};

// Work of one set at pace 1 without set-up, for the low, middle and high dose. Whole milliseconds.
struct SetTime {
    Millis low{0}, middle{0}, high{0};
};
[[nodiscard]] SetTime setWork(const Dose& dose, const std::optional<Tempo>& tempo,
                              const Exercise& e);

// Rounds of a group in a week, doubled so that 2.5 stays whole: low 2*lo, high 2*hi, open lo+hi.
[[nodiscard]] int plannedRoundsDoubled(Range<int> rounds, RoundsMode mode);

// Exercises that the shelf does not have take no time.
[[nodiscard]] SessionTime timeSession(const GymSettings& gym, const Shelf& shelf,
                                      const Block& block, Week week);

} // namespace bw
