// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/writing.hpp"

#include "store/rows/block_rows.hpp"
#include "store/rows/exercise_rows.hpp"
#include "store/rows/kit_rows.hpp"
#include "store/rows/member_rows.hpp"
#include "store/rows/result_rows.hpp"
#include "store/rows/settings_rows.hpp"

namespace bw::store {

namespace {
class Writer {
public:
    explicit Writer(sqlite::Database& db) : db_(db), results_(db) {}

    void operator()(const PutSettings& c) { putSettings(db_, c.settings); }
    void operator()(const PutKit& c) { putKit(db_, c.item); }
    void operator()(const RemoveKit& c) { removeKit(db_, c.id); }
    void operator()(const PutExercise& c) { putExercise(db_, *c.exercise); }
    void operator()(const RemoveExercise& c) { removeExercise(db_, c.id); }
    void operator()(const PutBlock& c) { putBlock(db_, *c.block); }
    void operator()(const RemoveBlock& c) { removeBlock(db_, c.month); }
    void operator()(const PutMember& c) { putMember(db_, c.member); }
    void operator()(const RemoveMember& c) {
        removeMember(db_, c.id);
        results_.forgetMembers();
    }
    void operator()(const PutResult& c) { results_.put(c.result); }
    void operator()(const RemoveResult& c) { results_.remove(c.member, c.date, c.exercise, c.set); }

private:
    sqlite::Database& db_;
    ResultWriter results_;
};
} // namespace

void write(sqlite::Database& db, const std::vector<Change>& changes) {
    Writer writer(db);
    for (const Change& change : changes) std::visit(writer, change);
}

} // namespace bw::store
