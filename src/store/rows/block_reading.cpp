// SPDX-License-Identifier: GPL-3.0-or-later
// Each level is read in step with the one above it: all are in order of their place.
#include "store/rows/block_rows.hpp"
#include "store/rows/reading.hpp"

namespace bw::store {

namespace {
using sqlite::Rows;
using sqlite::Statement;

Rir rir(const Statement& row, int column) { return need(Rir::fromTenths(small(row, column))); }
Tempo tempo(const Statement& row, int column) { return need(Tempo::parse(row.text(column))); }

// measure in `column`, then lo and hi
Dose dose(const Statement& r, int column) {
    return need(Dose::of(word<Measure>(r, column), r.integer(column + 1), r.integer(column + 2)));
}

Acceptance acceptance(const Statement& r) {
    const auto real = [](const Statement& row, int column) { return row.real(column); };
    return {r.string(1),       r.string(2),       r.string(3),
            word<Level>(r, 4), ifAny(r, 5, real), {r.real(6), r.real(7), r.flag(8)},
            r.string(9),       {r.string(10)}};
}

struct BlockRows {
    explicit BlockRows(sqlite::Database& db)
        : stair(db.query("SELECT month, rounds, rir_tenths, intent, extras FROM stair_step "
                         "ORDER BY month, at")),
          sections(db.query("SELECT month, at, kind, talk_ms, budget_lo_ms, budget_hi_ms, start, "
                            "extras FROM section ORDER BY month, at")),
          heads(db.query("SELECT month, section, heads FROM section_heads "
                         "ORDER BY month, section, at")),
          groups(
              db.query("SELECT month, section, at, rounds_lo, rounds_hi, rest_lo_ms, rest_hi_ms, "
                       "extras FROM section_group ORDER BY month, section, at")),
          slots(db.query("SELECT month, section, in_group, at, exercise, role, measure, dose_lo, "
                         "dose_hi, tempo, rir_lo_tenths, rir_hi_tenths, main, locked, note, extras "
                         "FROM slot ORDER BY month, section, in_group, at")),
          patterns(db.query("SELECT month, section, in_group, slot, pattern FROM slot_pattern "
                            "ORDER BY month, section, in_group, slot, at")),
          accepted(db.query("SELECT month, rule, place, about, level, measured, limit_lo, "
                            "limit_hi, band, reason, extras FROM accepted ORDER BY month, at")) {}

    void read(std::int64_t month, Block& b) {
        for (b.stair.clear(); stair.at(month); stair.next())
            b.stair.push_back({word<RoundsMode>(*stair, 1),
                               rir(*stair, 2),
                               word<Intent>(*stair, 3),
                               {stair->string(4)}});
        for (; sections.at(month); sections.next()) b.sections.push_back(section(month));
        for (; accepted.at(month); accepted.next()) b.accepted.push_back(acceptance(*accepted));
    }
    void end() const {
        for (const Rows* r : {&stair, &sections, &heads, &groups, &slots, &patterns, &accepted})
            exhausted(*r);
    }

private:
    Section section(std::int64_t month) {
        const Statement& r = *sections;
        const auto at = r.integer(1);
        Section s;
        s.kind = word<SectionKind>(r, 2);
        s.talk = millis(r, 3);
        if (!r.null(4)) s.budget = range<Millis>(r, 4, millis);
        s.start = start(month, at, r.text(6));
        s.extras.json = r.string(7);
        for (; groups.at(month, at); groups.next()) s.groups.push_back(group(month, at));
        return s;
    }
    Start start(std::int64_t month, std::int64_t section, std::string_view how) {
        if (how == "together") return StartTogether{};
        if (how == "spread") return StartSpread{};
        StartCounts counts;
        for (; heads.at(month, section); heads.next()) counts.heads.push_back(small(*heads, 2));
        return counts;
    }
    Group group(std::int64_t month, std::int64_t section) {
        const Statement& r = *groups;
        const auto at = r.integer(2);
        Group g;
        g.rounds = range<int>(r, 3, small);
        g.rest = range<Millis>(r, 5, millis);
        g.extras.json = r.string(7);
        for (; slots.at(month, section, at); slots.next())
            g.slots.push_back(slot(month, section, at));
        return g;
    }
    Slot slot(std::int64_t month, std::int64_t section, std::int64_t group) {
        const Statement& r = *slots;
        const auto at = r.integer(3);
        Slot s;
        s.exercise = ifAny(r, 4, id<ExerciseId>);
        s.role = ifAny(r, 5, id<RoleId>);
        s.dose = ifAny(r, 6, dose);
        s.tempo = ifAny(r, 9, tempo);
        if (!r.null(10)) s.effort = range<Rir>(r, 10, rir);
        s.main = r.flag(12);
        s.locked = r.flag(13);
        s.note = r.string(14);
        s.extras.json = r.string(15);
        for (; patterns.at(month, section, group, at); patterns.next())
            s.patterns.push_back(word<Pattern>(*patterns, 4));
        return s;
    }

    Rows stair, sections, heads, groups, slots, patterns, accepted;
};
} // namespace

std::map<Month, Gym::BlockPtr> readBlocks(sqlite::Database& db) {
    std::map<Month, Gym::BlockPtr> blocks;
    BlockRows lists(db);
    for (auto r = db.query("SELECT month, title, format, visits_per_week, extras FROM block "
                           "ORDER BY month");
         r.any(); r.next()) {
        const Month month = monthFrom(r->integer(0));
        Block b{month, r->string(1),  ifAny(*r, 2, word<Format>), small(*r, 3), {}, {},
                {},    {r->string(4)}};
        lists.read(r->integer(0), b);
        blocks.emplace(month, std::make_shared<const Block>(std::move(b)));
    }
    lists.end();
    return blocks;
}

} // namespace bw::store
