// SPDX-License-Identifier: GPL-3.0-or-later
// The lists are read in step with the exercises: all are in order of the exercise's key.
#include "store/rows/exercise_rows.hpp"
#include "store/rows/reading.hpp"

namespace bw::store {

namespace {
using sqlite::Rows;
using sqlite::Statement;

Rate rate(const Statement& row, int column) {
    return need(Rate::fromBillionths(row.integer(column)));
}

Exercise readHead(const Statement& r) {
    const Pace::Rates rates{ifAny(r, 6, rate), ifAny(r, 7, rate), ifAny(r, 8, rate)};
    return {.id = id<ExerciseId>(r, 1),
            .name = r.string(2),
            .patterns = {},
            .planes = {},
            .muscles = {},
            .sides = word<Sides>(r, 3),
            .roles = {},
            .demands = {},
            .skill = small(r, 4),
            .pace = need(Pace::of(word<Measure>(r, 5), rates)),
            .setup = millis(r, 9),
            .needs = {},
            .load = id<LoadId>(r, 10),
            .easier = {},
            .harder = {},
            .swaps = {},
            .noEasier = r.string(11),
            .noHarder = r.string(12),
            .cues = {},
            .cautions = {},
            .retired = r.flag(13),
            .extras = {r.string(14)}};
}

// exercise, list, word, share
void readShares(Rows& r, std::int64_t key, Exercise& e) {
    std::vector<std::pair<Pattern, Share>> patterns;
    std::vector<std::pair<Plane, Share>> planes;
    for (; r.at(key); r.next()) {
        const auto list = r->text(1);
        if (list == "pattern")
            patterns.emplace_back(word<Pattern>(*r, 2), share(*r, 3));
        else if (list == "plane")
            planes.emplace_back(word<Plane>(*r, 2), share(*r, 3));
        else
            e.muscles.emplace(id<MuscleId>(*r, 2), share(*r, 3));
    }
    if (!patterns.empty()) e.patterns = need(Shares<Pattern>::of(patterns));
    if (!planes.empty()) e.planes = need(Shares<Plane>::of(planes));
}

void readDemands(Rows& r, std::int64_t key, Exercise& e) {
    for (; r.at(key); r.next()) need(e.demands.set(word<Demand>(*r, 1), small(*r, 2)));
}

// exercise, list, line
void readLines(Rows& r, std::int64_t key, Exercise& e) {
    for (; r.at(key); r.next()) {
        const auto list = r->text(1);
        if (list == "role")
            e.roles.push_back(id<RoleId>(*r, 2));
        else if (list == "cue")
            e.cues.push_back(r->string(2));
        else if (list == "caution")
            e.cautions.push_back(r->string(2));
        else
            (list == "easier"   ? e.easier
             : list == "harder" ? e.harder
                                : e.swaps)
                .push_back(id<ExerciseId>(*r, 2));
    }
}

// exercise, choice; and exercise, choice, kit, count, extras
void readNeeds(Rows& choices, Rows& needs, std::int64_t key, Exercise& e) {
    for (; choices.at(key); choices.next()) {
        auto& together = e.needs.emplace_back();
        for (; needs.at(key, choices->integer(1)); needs.next())
            together.push_back({id<KitId>(*needs, 2), small(*needs, 3), {needs->string(4)}});
    }
}

struct Lists {
    explicit Lists(sqlite::Database& db)
        : shares(
              db.query("SELECT exercise, list, word, share FROM exercise_share ORDER BY 1, 2, 3")),
          demands(db.query("SELECT exercise, demand, level FROM exercise_demand ORDER BY 1, 2")),
          lines(db.query("SELECT exercise, list, line FROM exercise_line ORDER BY 1, 2, at")),
          choices(db.query("SELECT exercise, at FROM exercise_choice ORDER BY 1, 2")),
          needs(db.query("SELECT exercise, choice, kit, count, extras FROM exercise_need "
                         "ORDER BY 1, 2, at")) {}
    void read(std::int64_t key, Exercise& e) {
        readShares(shares, key, e);
        readDemands(demands, key, e);
        readLines(lines, key, e);
        readNeeds(choices, needs, key, e);
    }
    void end() const {
        for (const Rows* rows : {&shares, &demands, &lines, &choices, &needs}) exhausted(*rows);
    }
    Rows shares, demands, lines, choices, needs;
};
} // namespace

Shelf readShelf(sqlite::Database& db) {
    Shelf shelf;
    Lists lists(db);
    for (auto r = db.query("SELECT key, id, name, sides, skill, measure, seconds_per_rep, "
                           "metres_per_second, kcal_per_minute, setup_ms, load, no_easier, "
                           "no_harder, retired, extras FROM exercise ORDER BY key");
         r.any(); r.next()) {
        Exercise e = readHead(*r);
        lists.read(r->integer(0), e);
        shelf.put(std::move(e));
    }
    lists.end();
    return shelf;
}

} // namespace bw::store
