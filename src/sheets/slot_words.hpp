// SPDX-License-Identifier: GPL-3.0-or-later
// One slot of the draft in words, as the hand-held sheets name it.
#pragma once
#include "blockwright/model/place.hpp"
#include "sheets/sheet_words.hpp"

#include <QStringList>

#include <functional>

namespace bw {

[[nodiscard]] QString slotLabel(const Block& block, Place slot);      // "D1"
[[nodiscard]] QString printedDose(const Dose& dose, Sides sides);     // "10/side"
[[nodiscard]] QString slotDose(const Shelf& shelf, const Slot& slot); // "5"; empty in open slots
[[nodiscard]] QString slotPlan(const Shelf& shelf, const Slot& slot); // "5 · 31X1 · 1–3 in reserve"
[[nodiscard]] QString roundsAndRest(const Group& group); // "2–3 rounds, rest 60–90 s"
[[nodiscard]] QString openSlotWords(const Slot& slot);   // "open: strength-long, hinge"
[[nodiscard]] QString printedDemand(Demand demand);      // "overhead"
[[nodiscard]] QString rirWords(double reps);             // "2 in reserve"

// Every group of a section that has slots, in order.
void eachGroup(const Block& block, int section,
               const std::function<void(const Group&, Place)>& visit);

} // namespace bw
