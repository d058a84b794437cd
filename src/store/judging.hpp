// SPDX-License-Identifier: GPL-3.0-or-later
// Is this a gym file, and a sound one? All throw what trouble.hpp words.
#pragma once
#include "store/migrations.hpp"
#include "store/sqlite/database.hpp"

#include <filesystem>

namespace bw::store {

// Judged by its first bytes, so that SQLite never touches what is not ours or too new.
void refuseForeign(const std::filesystem::path& path, const Migrations& steps);
// The version of the open file; throws for one that is newer, or has none.
[[nodiscard]] int versionOf(sqlite::Database& db, const std::filesystem::path& path,
                            const Migrations& steps);
// Throws when a structure of the file is damaged.
void requireSound(sqlite::Database& db, const std::filesystem::path& path);
// Likewise, of all tables but the results, which are nearly all of a large file.
void requireSoundGym(sqlite::Database& db, const std::filesystem::path& path);
// Both in one: the version of a file that is sound throughout as far as SQLite can tell.
[[nodiscard]] int soundVersion(sqlite::Database& db, const std::filesystem::path& path,
                               const Migrations& steps);
// How to look at a file without any right to change it.
[[nodiscard]] sqlite::Database::Mode lookingMode(const std::filesystem::path& path);
// Is there something beside the file that ends so and is not empty?
[[nodiscard]] bool leftOver(const std::filesystem::path& path, const char* ending);

} // namespace bw::store
