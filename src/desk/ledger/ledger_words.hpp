// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in and beside a cell of the class grid, in words.
#pragma once
#include "desk/ledger/class_day.hpp"

#include <QDate>
#include <QString>

namespace bw {

[[nodiscard]] QDate qDate(Date date);
[[nodiscard]] Date dateOf(QDate date);    // 1900 to 2999, as the date line allows
[[nodiscard]] QString dayText(Date date); // "Tue 3 Nov 2026"
[[nodiscard]] QString setsWords(const std::vector<LiftedSet>& sets, MassUnit unit);
// As short as a typed set: "37.5×5 3", "find ×5 4", "8–10"; empty where the week says nothing.
[[nodiscard]] QString aimWords(const WeekTarget& aim, MassUnit unit);
// "Marit Oyelaran · D1 Front squat · last 36×5×3 2 on Tue 3 Nov 2026 · target 37.5 kg: …"
[[nodiscard]] QString cellSentence(const ClassDay& day, const Member& member,
                                   const ClassColumn& column, const ClassCell& cell);
[[nodiscard]] QString demandName(Demand demand);      // "overhead"
[[nodiscard]] QString flagLevelName(FlagLevel level); // "avoid"
[[nodiscard]] QString flagWords(const Flag& flag);    // "limit overhead"
[[nodiscard]] QString exerciseName(const Gym& gym, const ExerciseId& id);

} // namespace bw
