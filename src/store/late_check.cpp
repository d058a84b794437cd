// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/late_check.hpp"

#include "store/judging.hpp"
#include "store/sqlite_gym_file.hpp"
#include "store/trouble.hpp"

namespace bw::store {

namespace {
Result<bool> look(const std::filesystem::path& path) {
    return answered<Result<bool>>(path, [&] {
        sqlite::Database db(path, sqlite::Database::Mode::Read, false);
        requireSound(db, path);
        return true;
    });
}
} // namespace

LateCheck::LateCheck(const std::filesystem::path& path)
    : sound_(std::async(std::launch::async, [path] { return look(path); })) {}

bool LateCheck::ended() const {
    return sound_.wait_for(std::chrono::seconds(0)) == std::future_status::ready;
}

std::optional<Result<bool>> lookedThrough(const GymFile& file) {
    const auto* stored = dynamic_cast<const SqliteGymFile*>(&file);
    return stored ? stored->lookedThrough() : Result<bool>(true);
}

} // namespace bw::store
