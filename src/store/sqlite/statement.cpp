// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sqlite/statement.hpp"

#include <sqlite3.h>
#include <utility>

namespace bw::sqlite {

Statement::Statement(sqlite3* db, std::string_view sql, std::string_view* rest) : db_(db) {
    const char* tail = nullptr;
    check(sqlite3_prepare_v2(db, sql.data(), static_cast<int>(sql.size()), &handle_, &tail));
    if (rest) *rest = sql.substr(static_cast<std::size_t>(tail - sql.data()));
}
Statement::~Statement() { sqlite3_finalize(handle_); }
Statement::Statement(Statement&& other) noexcept
    : db_(other.db_), handle_(std::exchange(other.handle_, nullptr)),
      running_(std::exchange(other.running_, false)) {}

bool Statement::step() {
    if (!running_) startStatement();
    running_ = true;
    const int code = sqlite3_step(handle_);
    if (code == SQLITE_ROW) return true;
    running_ = false;
    if (code != SQLITE_DONE) throw Failure::of(db_, code);
    return false;
}

// What sqlite3_reset returns is the fault that step() has thrown already.
void Statement::reset() {
    running_ = false;
    sqlite3_reset(handle_);
    sqlite3_clear_bindings(handle_);
}

std::int64_t Statement::integer(int column) const { return sqlite3_column_int64(handle_, column); }
double Statement::real(int column) const { return sqlite3_column_double(handle_, column); }
bool Statement::null(int column) const {
    return sqlite3_column_type(handle_, column) == SQLITE_NULL;
}
std::string_view Statement::text(int column) const {
    const auto* bytes = reinterpret_cast<const char*>(sqlite3_column_text(handle_, column));
    if (!bytes) return {};
    return {bytes, static_cast<std::size_t>(sqlite3_column_bytes(handle_, column))};
}

void Statement::bindOne(int index, std::int64_t value) {
    check(sqlite3_bind_int64(handle_, index, value));
}
void Statement::bindOne(int index, double value) {
    check(sqlite3_bind_double(handle_, index, value));
}
void Statement::bindOne(int index, std::string_view value) {
    const char* bytes = value.data() ? value.data() : ""; // a null pointer would bind NULL
    check(sqlite3_bind_text64(handle_, index, bytes, value.size(), SQLITE_TRANSIENT, SQLITE_UTF8));
}
void Statement::bindNull(int index) { check(sqlite3_bind_null(handle_, index)); }

void Statement::check(int code) const {
    if (code != SQLITE_OK) throw Failure::of(db_, code);
}

} // namespace bw::sqlite
