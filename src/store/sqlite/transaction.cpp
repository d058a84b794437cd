// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sqlite/transaction.hpp"

namespace bw::sqlite {

Transaction::Transaction(Database& db, Kind kind) : db_(db) {
    db_.run(kind == Kind::Write ? "BEGIN IMMEDIATE" : "BEGIN");
}

Transaction::~Transaction() {
    if (!db_.settled()) db_.undo(); // else committed, or undone by SQLite itself
}

void Transaction::commit() { db_.run("COMMIT"); }

} // namespace bw::sqlite
