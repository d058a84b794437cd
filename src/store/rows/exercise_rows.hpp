// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/model/shelf.hpp"
#include "store/sqlite/database.hpp"

namespace bw::store {

// A new exercise goes to the end of the shelf; a known one keeps its place.
void putExercise(sqlite::Database& db, const Exercise& exercise);
void removeExercise(sqlite::Database& db, const ExerciseId& id);
[[nodiscard]] Shelf readShelf(sqlite::Database& db);

} // namespace bw::store
