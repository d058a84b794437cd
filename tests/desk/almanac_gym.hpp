// SPDX-License-Identifier: GPL-3.0-or-later
// Fourteen months from January 2026 to February 2027, without a block in August:
//   box-squat      every month; main lift from October on, so five months in a row in February
//   floor-press    January to March, main lift; the same again from December, as no main lift
//   towel-row      every second month
//   suitcase-carry February 2027 only: new then
//   formats        opposed and round-trip in turn, opposed in January 2027 and February 2027
#pragma once
#include "support/fixtures.hpp"

namespace bw::test {

inline Block almanacBlock(Month month, const std::vector<std::pair<const char*, bool>>& uses) {
    std::vector<Slot> slots;
    for (const auto& [id, main] : uses) {
        slots.push_back(slot(id, reps(5, 5)));
        slots.back().main = main;
    }
    return block(month.text(),
                 {section(SectionKind::Strength,
                          {group(rounds(2, 2), secondsRange(60, 60), std::move(slots))})});
}

inline Gym almanacGym() {
    Gym gym;
    gym.settings.name = "Tide Mill";
    gym.shelf.put(exercise("box-squat", Pattern::Squat));
    gym.shelf.put(exercise("floor-press", Pattern::HorizontalPush));
    gym.shelf.put(exercise("towel-row", Pattern::HorizontalPull));
    gym.shelf.put(exercise("suitcase-carry", Pattern::Carry));
    for (int m = 0; m < 14; ++m) {
        if (m == 7) continue;
        std::vector<std::pair<const char*, bool>> uses{{"box-squat", m >= 9}};
        if (m < 3 || m >= 11) uses.emplace_back("floor-press", m < 3);
        if (m % 2 == 0) uses.emplace_back("towel-row", false);
        if (m == 13) uses.emplace_back("suitcase-carry", false);
        Block b = almanacBlock(month("2026-01").plus(m), uses);
        b.format = m % 2 == 0 || m == 13 ? Format::Opposed : Format::RoundTrip;
        gym.put(std::move(b));
    }
    return gym;
}

} // namespace bw::test
