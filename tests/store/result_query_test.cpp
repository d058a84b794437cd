// SPDX-License-Identifier: GPL-3.0-or-later
#include "gyms.hpp"
#include "store/rows/result_query.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <algorithm>
#include <map>
#include <tuple>

using namespace bw;
using namespace bw::test;

namespace {
MemberId member(int n) { return memberId("m-" + std::to_string(n)); }
ExerciseId lift(int n) { return ex("lift-" + std::to_string(n)); }

// Five members, four exercises, 60 days; sets of a day in falling order.
std::vector<LiftResult> fill(GymFile& file) {
    Draw draw(21);
    std::vector<Change> changes;
    for (int m = 0; m < 5; ++m) changes.emplace_back(PutMember{drawMember(draw, member(m).text())});
    std::vector<LiftResult> results;
    for (int d = 0; d < 60; ++d)
        for (int m = 0; m < 5; ++m)
            for (int set = 2; set > 0; --set) {
                LiftResult r = drawResult(draw, member(m));
                r.date = date("2026-01-01").plusDays(d);
                r.exercise = lift((d + m) % 4);
                r.set = set;
                results.push_back(r);
            }
    for (const auto& r : results) changes.emplace_back(PutResult{r});
    put(file, changes);
    return results;
}

auto orderOf(const LiftResult& r) { return std::tie(r.member, r.exercise, r.date, r.set); }
bool before(const LiftResult& a, const LiftResult& b) { return orderOf(a) < orderOf(b); }

std::vector<LiftResult> asked(GymFile& file, const ResultQuery& query) {
    std::vector<LiftResult> out;
    CHECK(file.eachResultOf(query,
                            [&](const LiftResult& r) {
                                out.push_back(r);
                                return true;
                            })
              .ok());
    return out;
}

template <class T> bool takes(const std::vector<T>& list, const T& x) {
    return list.empty() || std::find(list.begin(), list.end(), x) != list.end();
}
} // namespace

TEST_CASE("a query takes exactly the results of its members, exercises and days") {
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    const auto all = fill(*file);
    for (const auto& members : {std::vector<MemberId>{}, {member(3)}, {member(4), member(0)}})
        for (const auto& exercises : {std::vector<ExerciseId>{},
                                      {lift(2)},
                                      {lift(3), lift(0)},
                                      {ex("a"), ex("b"), ex("c"), lift(1), lift(2)}})
            for (const auto& [from, until] :
                 {std::pair{std::optional<Date>{}, std::optional<Date>{}},
                  {date("2026-02-01"), {}},
                  {{}, date("2026-02-01")},
                  {date("2026-01-20"), date("2026-02-01")}}) {
                std::vector<LiftResult> expected;
                for (const LiftResult& r : all)
                    if (takes(members, r.member) && takes(exercises, r.exercise) &&
                        (!from || r.date >= *from) && (!until || r.date <= *until))
                        expected.push_back(r);
                REQUIRE(!expected.empty());
                auto seen = asked(*file, {members, exercises, from, until});
                std::map<std::pair<MemberId, ExerciseId>, Date> last;
                for (const LiftResult& r : seen) {
                    const auto [it, fresh] = last.emplace(std::pair{r.member, r.exercise}, r.date);
                    CHECK((fresh || it->second <= r.date));
                    it->second = r.date;
                }
                std::sort(seen.begin(), seen.end(), before);
                std::sort(expected.begin(), expected.end(), before);
                CHECK(seen == expected);
            }
}

TEST_CASE("a query for nobody and nothing that is there takes no results") {
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    fill(*file);
    CHECK(asked(*file, {{memberId("nobody")}, {}, {}}).empty());
    CHECK(asked(*file, {{}, {ex("nothing")}, {}}).empty());
    CHECK(asked(*file, {{memberId("nobody"), member(1)}, {lift(1), ex("nothing")}, {}}).size() ==
          30);
}

TEST_CASE("a visitor of a query that has seen enough sees no more, and the file goes on") {
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    const auto all = fill(*file);
    for (const ResultQuery& query : {ResultQuery{}, ResultQuery{{}, {lift(1)}, {}}}) {
        int seen = 0;
        CHECK(file->eachResultOf(query, [&](const LiftResult&) { return ++seen < 7; }).ok());
        CHECK(seen == 7);
    }
    put(*file, {RemoveMember{member(1)}});
    CHECK(asked(*file, {}).size() == all.size() - 120);
}

TEST_CASE("the newest result is known without reading all") {
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    CHECK_FALSE(file->newestResult()->has_value());
    fill(*file);
    CHECK(file->newestResult().value() == date("2026-03-01"));
}

TEST_CASE(
    "lines and days of a member are found along what they are sorted by, and sorted no more") {
    const TempFolder folder;
    (void)made(folder / "a.bwgym");
    sqlite::Database db(folder / "a.bwgym", sqlite::Database::Mode::Read);
    const auto planOf = [&](std::string_view sql) {
        std::string plan;
        for (auto r = db.query("EXPLAIN QUERY PLAN " + std::string(sql)); r.any(); r.next())
            plan += r->string(3);
        return plan;
    };
    CHECK(planOf(store::kResultsInLineOf) ==
          "SEARCH result USING COVERING INDEX result_by_exercise (lifted=? AND member=? AND day>? "
          "AND day<?)");
    CHECK(planOf(store::kResultsOfMember) ==
          "SEARCH result USING PRIMARY KEY (member=? AND day>? AND day<?)");
}
