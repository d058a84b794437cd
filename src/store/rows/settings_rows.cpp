// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/rows/settings_rows.hpp"

#include "store/rows/reading.hpp"

namespace bw::store {

namespace {
void putLimits(sqlite::Database& db, const std::map<std::string, LimitValue>& limits) {
    db.run("DELETE FROM rule_limit");
    for (const auto& [name, limit] : limits)
        db.run("INSERT INTO rule_limit VALUES (?, ?, ?, ?)", name, limit.lo, limit.hi, limit.band);
}

void readWeights(sqlite::Database& db, SectionWeights& weights) {
    for (auto r = db.query("SELECT kind, share FROM section_weight"); r.any(); r.next())
        weights.of[static_cast<std::size_t>(word<SectionKind>(*r, 0))] = share(*r, 1);
}
} // namespace

void putSettings(sqlite::Database& db, const GymSettings& s) {
    db.run("INSERT OR REPLACE INTO setting VALUES (1, ?, ?, ?, ?, ?, ?, ?, ?)", s.name,
           wordOf(s.massUnit), wordOf(s.paper), s.classMinutes, s.places, s.opening.count(),
           s.closing.count(), s.extras.json);
    for (std::size_t i = 0; i < kCount<SectionKind>; ++i)
        db.run("INSERT OR REPLACE INTO section_weight VALUES (?, ?)",
               wordOf(static_cast<SectionKind>(i)), s.weights.of[i].billionths());
    putLimits(db, s.limits);
}

GymSettings readSettings(sqlite::Database& db) {
    GymSettings s;
    const auto r = db.query("SELECT name, mass_unit, paper, class_minutes, places, opening_ms, "
                            "closing_ms, extras FROM setting");
    if (!r.any()) return s;
    s.name = r->string(0);
    s.massUnit = word<MassUnit>(*r, 1);
    s.paper = word<Paper>(*r, 2);
    s.classMinutes = small(*r, 3);
    s.places = small(*r, 4);
    s.opening = millis(*r, 5);
    s.closing = millis(*r, 6);
    s.extras.json = r->string(7);
    readWeights(db, s.weights);
    for (auto l = db.query("SELECT name, lo, hi, band FROM rule_limit"); l.any(); l.next())
        s.limits[l->string(0)] = {l->real(1), l->real(2), l->flag(3)};
    return s;
}

} // namespace bw::store
