// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/rows/member_rows.hpp"

#include "store/rows/reading.hpp"

namespace bw::store {

void putMember(sqlite::Database& db, const Member& m) {
    const auto key =
        db.number("INSERT INTO member (id, name, active, extras) VALUES (?, ?, ?, ?) "
                  "ON CONFLICT (id) DO UPDATE SET name = excluded.name, active = excluded.active, "
                  "extras = excluded.extras RETURNING key",
                  m.id.text(), m.name, m.active, m.extras.json);
    db.run("DELETE FROM member_flag WHERE member = ?", key);
    int at = 0;
    for (const Flag& f : m.flags)
        db.run("INSERT INTO member_flag VALUES (?, ?, ?, ?, ?, ?)", key, at++, wordOf(f.demand),
               wordOf(f.level), f.note, f.extras.json);
}

void removeMember(sqlite::Database& db, const MemberId& id) {
    db.run("DELETE FROM member WHERE id = ?", id.text());
}

std::vector<Member> readMembers(sqlite::Database& db) {
    std::vector<Member> members;
    auto flags = db.query("SELECT member, demand, level, note, extras FROM member_flag "
                          "ORDER BY member, at");
    for (auto r = db.query("SELECT key, id, name, active, extras FROM member ORDER BY key");
         r.any(); r.next()) {
        Member m{id<MemberId>(*r, 1), r->string(2), {}, r->flag(3), {r->string(4)}};
        for (; flags.at(r->integer(0)); flags.next())
            m.flags.push_back({word<Demand>(*flags, 1),
                               word<FlagLevel>(*flags, 2),
                               flags->string(3),
                               {flags->string(4)}});
        members.push_back(std::move(m));
    }
    exhausted(flags);
    return members;
}

} // namespace bw::store
