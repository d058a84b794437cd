// SPDX-License-Identifier: GPL-3.0-or-later
// The fields of an exercise in the language of the window, and back: the engine reads and writes
// its own words only. In English nothing changes on the way.
#pragma once
#include "blockwright/model/exercise_text.hpp"

#include <QStringList>

namespace bw {

[[nodiscard]] QString shownField(ExerciseField field, const std::string& text);
[[nodiscard]] QStringList shownWords(const Gym& gym, ExerciseField field); // that can stand there
[[nodiscard]] std::string typedField(const Gym& gym, ExerciseField field, const QString& typed);

} // namespace bw
