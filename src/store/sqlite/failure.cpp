// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sqlite/failure.hpp"

#include <sqlite3.h>

namespace bw::sqlite {

namespace {
thread_local std::optional<int> statementsLeft;
thread_local int failingCode = SQLITE_FULL;
} // namespace

Failure::Failure(int code, int systemError, const std::string& detail)
    : std::runtime_error(detail), code_(code), systemError_(systemError) {}

Failure Failure::of(sqlite3* db, int code) {
    if (!db) return {code, 0, sqlite3_errstr(code)};
    const bool sameFault = (sqlite3_errcode(db) & 0xff) == (code & 0xff);
    const std::string detail = sameFault ? sqlite3_errmsg(db) : sqlite3_errstr(code);
    return {code, sqlite3_system_errno(db), detail};
}

void failAfter(std::optional<int> count, int code) {
    statementsLeft = count;
    failingCode = code;
}

void startStatement() {
    if (!statementsLeft) return;
    if (*statementsLeft == 0) throw Failure(failingCode, 0, sqlite3_errstr(failingCode));
    --*statementsLeft;
}

} // namespace bw::sqlite
