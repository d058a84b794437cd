// SPDX-License-Identifier: GPL-3.0-or-later
// Sets typed in and tables brought in: done, undone and done again, in memory and in a real file.
#include "edit/gym_verbs.hpp"
#include "edit/member_verbs.hpp"
#include "edit/memory_file.hpp"
#include "edit/result_verbs.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
const MemberId kAnn = MemberId::parse("m-001").value(), kBo = MemberId::parse("m-002").value();
Date day(std::string_view text) { return Date::parse(text).value(); }
const LiftDay kToday{kAnn, day("2026-09-10"), ex("squat")};

Gym gymOfTwo() {
    Gym gym;
    gym.shelf.put(exercise("squat", Pattern::Squat));
    gym.shelf.put(exercise("row", Pattern::HorizontalPull));
    gym.put(Member{kAnn, "Ann", {}, true, {}});
    gym.put(Member{kBo, "Bo", {}, true, {}});
    return gym;
}
std::vector<LiftedSet> sets(std::string_view text) { return *parseSets(text, MassUnit::Kg); }

struct Book {
    Book() {
        auto owned = std::make_unique<MemoryFile>(gymOfTwo());
        file = owned.get();
        open = OpenGym::over(std::move(owned)).value();
    }
    std::string now(const LiftDay& day = kToday) {
        std::vector<LiftedSet> out;
        const auto sets = setsOf(*file, day);
        for (const LiftResult& r : *sets) out.push_back({r.reps, r.rir, r.load});
        return setsText(out, MassUnit::Kg);
    }
    MemoryFile* file;
    std::unique_ptr<OpenGym> open;
};

LiftResult result(const MemberId& m, std::string_view date, int set, int reps) {
    return {m, day(date), ex("squat"), set, reps, {}, Mass::fromKg(40).value(), {}};
}
} // namespace

TEST_CASE("sets are put in, changed and taken away, each as one step there and back") {
    Book b;
    REQUIRE(*setSets(*b.open, kToday, sets("40x5x3 2")));
    CHECK(b.now() == "40×5×3 2");
    CHECK(b.open->undoText()->english() == "Ann: squat");
    REQUIRE(*setSets(*b.open, kToday, sets("40x5 2; 45x4 1")));
    CHECK(b.now() == "40×5 2; 45×4 1");
    REQUIRE(*setSets(*b.open, kToday, {}));
    CHECK(b.now().empty());
    REQUIRE(*b.open->undo());
    CHECK(b.now() == "40×5 2; 45×4 1");
    REQUIRE(*b.open->undo());
    CHECK(b.now() == "40×5×3 2");
    REQUIRE(*b.open->undo());
    CHECK(b.now().empty());
    CHECK_FALSE(*b.open->undo());
    REQUIRE(*b.open->redo());
    REQUIRE(*b.open->redo());
    CHECK(b.now() == "40×5 2; 45×4 1");
}

TEST_CASE("the same sets again are no step, and other days, members and exercises stay") {
    Book b;
    const LiftDay others[] = {{kAnn, day("2026-09-09"), ex("squat")},
                              {kAnn, day("2026-09-11"), ex("squat")},
                              {kBo, kToday.date, ex("squat")},
                              {kAnn, kToday.date, ex("row")}};
    for (const LiftDay& other : others) REQUIRE(*setSets(*b.open, other, sets("30x5")));
    REQUIRE(*setSets(*b.open, kToday, sets("40x5")));
    CHECK_FALSE(*setSets(*b.open, kToday, sets("40x5")));
    REQUIRE(*setSets(*b.open, kToday, {}));
    for (const LiftDay& other : others) CHECK(b.now(other) == "30×5");
}

TEST_CASE("what else is stored with a set stays with it") {
    Book b;
    LiftResult kept = result(kAnn, "2026-09-10", 1, 5);
    kept.extras.json = R"({"belt":true})";
    b.file->results = {kept};
    REQUIRE(*setSets(*b.open, kToday, sets("42.5x5; 42.5x5")));
    CHECK(setsOf(*b.file, kToday)->front().extras == kept.extras);
    REQUIRE(*b.open->undo());
    CHECK(b.file->results == std::vector{kept});
}

TEST_CASE("a full disk leaves the sets as they were, and nothing to undo") {
    Book b;
    REQUIRE(*setSets(*b.open, kToday, sets("40x5")));
    b.file->full = true;
    CHECK_FALSE(setSets(*b.open, kToday, sets("45x5")).ok());
    CHECK(b.now() == "40×5");
    b.file->full = false;
    REQUIRE(*b.open->undo());
    CHECK_FALSE(*b.open->undo());
}

TEST_CASE("a table is one step that undo takes out again, with the figures it replaced") {
    Book b;
    const std::vector<LiftResult> before{result(kAnn, "2026-09-01", 1, 5)};
    b.file->results = before;
    const auto change =
        changeBy(*b.file, {result(kAnn, "2026-09-01", 1, 6), result(kBo, "2026-09-01", 1, 8),
                           result(kBo, "2026-09-03", 1, 8)});
    REQUIRE(change->fresh.size() == 2);
    REQUIRE(change->changed.size() == 1);
    REQUIRE(*importResults(*b.open, *change));
    const auto after = b.file->results;
    CHECK(after.size() == 3);
    CHECK(b.open->undoText()->english() == "results from a table: 3 sets");
    REQUIRE(*b.open->undo());
    CHECK(b.file->results == before);
    REQUIRE(*b.open->redo());
    CHECK(b.file->results == after);
    CHECK_FALSE(*importResults(*b.open, ResultsChange{}));
}

TEST_CASE("members come, change and go by steps; ids tell nothing of the name") {
    Book b;
    Member cas = newMember(b.open->gym(), "Cas").value();
    CHECK(cas.id.text() == "m-003");
    const auto before = b.open->gym().members;
    REQUIRE(*putMember(*b.open, cas));
    cas.flags = {{Demand::Knee, FlagLevel::Limit, "left", {}}};
    REQUIRE(*putMember(*b.open, cas));
    CHECK(b.open->undoText()->english() == "flags of Cas");
    cas.active = false;
    REQUIRE(*putMember(*b.open, cas));
    CHECK(b.open->undoText()->english() == "Cas comes no more");
    CHECK_FALSE(*putMember(*b.open, cas));
    const auto after = b.open->gym().members;
    for (int i = 0; i < 3; ++i) REQUIRE(*b.open->undo());
    CHECK(b.open->gym().members == before);
    CHECK(b.file->stored.members == before);
    for (int i = 0; i < 3; ++i) REQUIRE(*b.open->redo());
    CHECK(b.open->gym().members == after);
    CHECK_FALSE(newMember(b.open->gym(), " ").ok());
    cas.name = std::string(201, 'x');
    CHECK_FALSE(putMember(*b.open, cas).ok());
    cas.name = "Cas";
    cas.flags.front().note = std::string(2001, 'x');
    CHECK_FALSE(putMember(*b.open, cas).ok());
}

TEST_CASE("one member goes out complete, as a bundle another gym can take") {
    Book b;
    b.file->results = {result(kAnn, "2026-09-01", 1, 5), result(kBo, "2026-09-01", 1, 8)};
    const auto bundle = bundleOfMember(*b.open, kAnn);
    REQUIRE(bundle.ok());
    Gym other;
    other.shelf.put(exercise("squat", Pattern::Squat));
    const auto read = readBundle(writeBundle(*bundle), &other);
    REQUIRE(read.bundle.has_value());
    CHECK(read.bundle->members == std::vector{*b.open->gym().findMember(kAnn)});
    CHECK(read.bundle->results == std::vector{b.file->results.front()});
    CHECK_FALSE(bundleOfMember(*b.open, MemberId::parse("m-009").value()).ok());
}

TEST_CASE("an erased member is in no byte of the gym file, and undo does not bring them back") {
    const TempFolder folder;
    const auto path = folder / "gym.bwgym";
    const auto bytes = [&] {
        std::string all;
        for (const auto& file : std::filesystem::directory_iterator(folder.path()))
            all += readText(file.path());
        return all;
    };
    auto open = createGym(path).value();
    Gym gym = gymOfTwo();
    REQUIRE(*putExercise(*open, *gym.shelf.find(ex("squat"))));
    Member odd = newMember(open->gym(), "Xerxina Quillfeather").value();
    odd.flags = {{Demand::Knee, FlagLevel::Avoid, "Zygomorph note", {}}};
    REQUIRE(*putMember(*open, odd));
    REQUIRE(*putMember(*open, newMember(open->gym(), "Bo").value()));
    REQUIRE(*setSets(*open, {odd.id, kToday.date, kToday.exercise}, sets("40x5x3 2")));
    REQUIRE(bytes().find("Quillfeather") != std::string::npos);
    const auto traces = tracesOf(open->file(), odd.id);
    CHECK(traces->results == 3);
    CHECK(traces->first == kToday.date);
    REQUIRE(*eraseMember(*open, odd.id));
    CHECK(tracesOf(open->file(), odd.id)->results == 0);
    CHECK(open->gym().members.size() == 1);
    CHECK(bytes().find("Quillfeather") == std::string::npos);
    CHECK(bytes().find("Zygomorph") == std::string::npos);
    CHECK_FALSE(*open->undo());
    CHECK_FALSE(*eraseMember(*open, odd.id));
}
