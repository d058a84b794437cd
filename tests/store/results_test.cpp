// SPDX-License-Identifier: GPL-3.0-or-later
#include "gyms.hpp"
#include "store/sqlite/database.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <algorithm>
#include <tuple>

using namespace bw;
using namespace bw::test;

namespace {
auto orderOf(const LiftResult& r) { return std::tie(r.member, r.date, r.exercise, r.set); }

// Members m-9 to m-0, so that order of the list and order of the id differ.
std::vector<LiftResult> fill(GymFile& file, Draw& draw, int count) {
    std::vector<Change> changes;
    for (int i = 9; i >= 0; --i)
        changes.emplace_back(PutMember{drawMember(draw, "m-" + std::to_string(i))});
    std::vector<LiftResult> results;
    for (int i = 0; i < count; ++i) {
        auto r = drawResult(draw, memberId("m-" + std::to_string(draw.number(0, 9))));
        r.date = date("2026-01-01").plusDays(static_cast<int>(draw.number(0, 5)));
        r.exercise = ex("lift-" + std::to_string(draw.number(0, 15)));
        const bool known = std::any_of(results.begin(), results.end(), [&](const LiftResult& old) {
            return orderOf(old) == orderOf(r);
        });
        if (!known) results.push_back(std::move(r));
    }
    for (const auto& r : results) changes.emplace_back(PutResult{r});
    put(file, changes);
    std::sort(results.begin(), results.end(),
              [](const auto& a, const auto& b) { return orderOf(a) < orderOf(b); });
    return results;
}

std::string planOf(const std::filesystem::path& path, const std::string& sql) {
    sqlite::Database db(path, sqlite::Database::Mode::Read);
    std::string plan;
    for (auto r = db.query("EXPLAIN QUERY PLAN " + sql); r.any(); r.next())
        plan += r->string(3) + "\n";
    return plan;
}
} // namespace

TEST_CASE("results come out in order of member, date, exercise and set") {
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    Draw draw(11);
    const auto results = fill(*file, draw, 800);
    CHECK(allResults(*file) == results);
}

TEST_CASE("results of one member are theirs and no one else's") {
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    Draw draw(12);
    auto results = fill(*file, draw, 300);
    std::erase_if(results, [](const LiftResult& r) { return r.member != memberId("m-4"); });
    REQUIRE(!results.empty());
    CHECK(file->resultsOf(memberId("m-4")).value() == results);
    CHECK(file->resultsOf(memberId("nobody")).value().empty());
}

TEST_CASE("a visitor that has seen enough sees no more") {
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    Draw draw(13);
    fill(*file, draw, 50);
    int seen = 0;
    CHECK(file->eachResult([&](const LiftResult&) { return ++seen < 7; }).ok());
    CHECK(seen == 7);
}

TEST_CASE("a result of the same member, date, exercise and set takes the place of the old one") {
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    Draw draw(14);
    auto results = fill(*file, draw, 50);
    auto& r = results[20];
    r.reps = 17;
    r.load.reset();
    put(*file, {PutResult{r}});
    CHECK(allResults(*file) == results);

    put(*file, {RemoveResult{r.member, r.date, r.exercise, r.set}});
    results.erase(results.begin() + 20);
    CHECK(allResults(*file) == results);
}

TEST_CASE("a member keeps their results when changed, and takes them along when removed") {
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    Draw draw(15);
    auto results = fill(*file, draw, 100);
    put(*file, {PutMember{drawMember(draw, "m-3")}});
    CHECK(allResults(*file) == results);
    put(*file, {RemoveMember{memberId("m-3")}});
    std::erase_if(results, [](const LiftResult& r) { return r.member == memberId("m-3"); });
    CHECK(allResults(*file) == results);
}

TEST_CASE("an exercise taken off the shelf leaves the results that name it") {
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    Draw draw(16);
    auto lifted = drawResult(draw, memberId("m-1"));
    lifted.exercise = ex("old-lift");
    put(*file, {PutMember{drawMember(draw, "m-1")},
                PutExercise{std::make_shared<Exercise>(exercise("old-lift", Pattern::Hinge))},
                PutResult{lifted}});
    put(*file, {RemoveExercise{ex("old-lift")}});
    CHECK(allResults(*file) == std::vector{lifted});
}

TEST_CASE("a result of someone who is no member is refused, and nothing of the list is stored") {
    const TempFolder folder;
    const auto file = made(folder / "a.bwgym");
    Draw draw(17);
    const auto answer =
        file->apply({PutKit{drawKit(draw, "sled")}, PutResult{drawResult(draw, memberId("m-1"))}});
    REQUIRE(!answer.ok());
    CHECK(answer.why().english() == "A result belongs to “m-1”, who is not a member of this gym. "
                                    "Nothing was stored. Add the member, then do it again.");
    CHECK(difference(file->load().value(), Gym{}).empty());
}

TEST_CASE("a member's and an exercise's results are found without reading all") {
    const TempFolder folder;
    (void)made(folder / "a.bwgym");
    CHECK(planOf(folder / "a.bwgym", "SELECT * FROM result WHERE member = 1") ==
          "SEARCH result USING PRIMARY KEY (member=?)\n");
    CHECK(planOf(folder / "a.bwgym", "SELECT * FROM result WHERE lifted = 1") ==
          "SEARCH result USING COVERING INDEX result_by_exercise (lifted=?)\n");
}
