// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sqlite/database.hpp"

#include <array>
#include <sqlite3.h>

namespace bw::sqlite {

namespace {
constexpr int kPatienceMillis = 5'000; // for another connection's transaction to end

// The path as the file: address that SQLite reads options from.
std::string address(const std::filesystem::path& path, std::string_view options) {
    static constexpr std::string_view kHex = "0123456789ABCDEF";
    const std::string whole = std::filesystem::absolute(path).string();
    std::string out = "file:";
    for (const char c : whole) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte > 0x20 && byte < 0x7f && c != '%' && c != '?' && c != '#') {
            out += c;
            continue;
        }
        out += '%';
        out += kHex[byte >> 4];
        out += kHex[byte & 15];
    }
    return out.append(options);
}
} // namespace

Database::Database(const std::filesystem::path& path, Mode mode, bool fold) {
    const int access = mode == Mode::Write ? SQLITE_OPEN_READWRITE : SQLITE_OPEN_READONLY;
    const std::string name = address(path, mode == Mode::Frozen ? "?immutable=1" : "");
    sqlite3* db = nullptr;
    startStatement();
    const int code = sqlite3_open_v2(name.c_str(), &db, access | SQLITE_OPEN_URI, nullptr);
    handle_.reset(db); // there even on failure, to be closed
    if (code != SQLITE_OK) throw Failure::of(db, code);
    foldOnClose(fold);
    sqlite3_extended_result_codes(db, 1);
    sqlite3_busy_timeout(db, kPatienceMillis);
    sqlite3_db_config(db, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    script("PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON; PRAGMA foreign_keys = ON;"
           "PRAGMA secure_delete = ON; PRAGMA temp_store = MEMORY; PRAGMA synchronous = FULL;");
}

void Database::Close::operator()(sqlite3* db) const { sqlite3_close_v2(db); }

void Database::script(std::string_view sql) {
    while (!sql.empty()) {
        Statement statement(handle_.get(), sql, &sql);
        while (statement.any() && statement.step()) {
        }
    }
}

bool Database::settled() const { return sqlite3_get_autocommit(handle_.get()) != 0; }

// Not through Statement: taking back must work when statements are made to fail.
void Database::undo() { sqlite3_exec(handle_.get(), "ROLLBACK", nullptr, nullptr, nullptr); }

void Database::foldOnClose(bool on) {
    sqlite3_db_config(handle_.get(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, on ? 0 : 1, nullptr);
}

Statement& Database::kept(std::string_view sql) {
    if (const auto it = kept_.find(sql); it != kept_.end()) return it->second;
    return kept_.try_emplace(std::string(sql), handle_.get(), sql).first->second;
}

} // namespace bw::sqlite
