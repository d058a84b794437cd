// SPDX-License-Identifier: GPL-3.0-or-later
// How a gym file comes to be and comes up to date. All throw what trouble.hpp words.
#pragma once
#include "store/files.hpp"
#include "store/migrations.hpp"
#include "store/sqlite/database.hpp"

#include <filesystem>

namespace bw::store {

// A new, empty gym file that has gone through all the steps; all of it is there, or nothing.
void makeGymFile(const std::filesystem::path& path, const Migrations& steps);
// A file of its own with everything in the database, which must not be there yet.
void copyInto(sqlite::Database& db, const std::filesystem::path& path);
// Into the empty file everything that the database holds, read back to see that it is sound.
void fill(FileInTheMaking& file, sqlite::Database& from);
// Takes the database from version `from` through the steps that it lacks: all of them, or none.
void migrate(sqlite::Database& db, int from, const Migrations& steps);

} // namespace bw::store
