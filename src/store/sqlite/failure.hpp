// SPDX-License-Identifier: GPL-3.0-or-later
// What SQLite refuses comes up as an exception; whoever owns the gym file words it for the coach.
// Here too is the seam by which tests make a statement fail.
#pragma once
#include <optional>
#include <stdexcept>
#include <string>

struct sqlite3;

namespace bw::sqlite {

class Failure : public std::runtime_error {
public:
    Failure(int code, int systemError, const std::string& detail);
    // Of what this connection reported last.
    static Failure of(sqlite3* db, int code);

    [[nodiscard]] int code() const { return code_ & 0xff; }        // SQLITE_FULL, SQLITE_BUSY, ...
    [[nodiscard]] int extendedCode() const { return code_; }       // SQLITE_IOERR_WRITE, ...
    [[nodiscard]] int systemError() const { return systemError_; } // errno; 0: none

private:
    int code_;
    int systemError_;
};

// For tests: the statement after the next `count` fails with `code`, and so does every later one
// until this is called again. Nothing: none fails. Of this thread only.
void failAfter(std::optional<int> count, int code = 13 /* SQLITE_FULL */);
// Called as each statement starts; throws when it is to fail.
void startStatement();

} // namespace bw::sqlite
