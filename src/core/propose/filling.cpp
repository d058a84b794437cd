// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/filling.hpp"

#include "blockwright/model/fitting.hpp"

namespace bw::proposing {

Filling::Filling(const SlotFact& open, const Exercise& exercise) : slot(*open.slot), fact(open) {
    slot.exercise = exercise.id;
    slot.dose = fittingDose(*open.slot, exercise, open.section->kind);
    fact.slot = &slot;
    fact.exercise = &exercise;
    fact.work = setWork(*slot.dose, slot.tempo, exercise);
}

} // namespace bw::proposing
