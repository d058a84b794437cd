// SPDX-License-Identifier: GPL-3.0-or-later
// All or nothing: what is done until commit() is undone when the transaction goes without it.
#pragma once
#include "store/sqlite/database.hpp"

namespace bw::sqlite {

class Transaction {
public:
    // Read: later changes of others stay unseen. Write: keeps others from writing from now on.
    enum class Kind { Read, Write };
    Transaction(Database& db, Kind kind);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    // Throws when it could not be made to last; then all is undone.
    void commit();

private:
    Database& db_;
};

} // namespace bw::sqlite
