// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shelf_search.hpp"
#include "edit/block_verbs.hpp"
#include "edit/shelf_verbs.hpp"
#include "memory_file.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

namespace bw::test {

namespace {
struct ShelfGym {
    ShelfGym() {
        Gym gym;
        Exercise goblet = exercise("goblet-squat", Pattern::Squat);
        goblet.easier = {ex("box-squat")};
        goblet.cues = {"Elbows inside the knees"};
        Exercise box = exercise("box-squat", Pattern::Squat);
        box.harder = {ex("goblet-squat")};
        for (const Exercise& e : {goblet, box, exercise("front-squat", Pattern::Squat)})
            gym.shelf.put(e);
        gym.put(block("2026-09", {section(SectionKind::Strength,
                                          {group(rounds(2, 2), secondsRange(60, 60),
                                                 {slot("goblet-squat", reps(5, 5))})})}));
        auto owned = std::make_unique<MemoryFile>(std::move(gym));
        file = owned.get();
        open = OpenGym::over(std::move(owned)).value();
    }
    const Exercise& at(std::string_view id) { return *open->gym().shelf.find(ex(id)); }
    // Everything of the Shelf; entries are shared, so this costs little.
    [[nodiscard]] std::vector<Exercise> all() const {
        std::vector<Exercise> out;
        for (const auto& e : open->gym().shelf.entries()) out.push_back(*e);
        return out;
    }
    template <class Do> void doUndoRedo(Do does) {
        const auto before = all();
        REQUIRE(does(*open));
        const auto after = all();
        CHECK_FALSE(before == after);
        REQUIRE(*open->undo());
        CHECK(before == all());
        REQUIRE(*open->redo());
        CHECK(after == all());
        std::vector<Exercise> stored;
        for (const auto& e : file->stored.shelf.entries()) stored.push_back(*e);
        CHECK(stored == after);
        REQUIRE(*open->undo());
    }
    MemoryFile* file = nullptr;
    std::unique_ptr<OpenGym> open;
};
const ExerciseId kGoblet = ex("goblet-squat"), kFront = ex("front-squat");
} // namespace

TEST_CASE("Each verb of the Shelf is done, undone and done again") {
    ShelfGym s;
    s.doUndoRedo([](auto& g) { return *writeField(g, kGoblet, ExerciseField::Demands, "knee 2"); });
    s.doUndoRedo([](auto& g) { return *writeField(g, kGoblet, ExerciseField::Name, "Cup squat"); });
    s.doUndoRedo([](auto& g) { return *writeCue(g, kGoblet, 0, ""); });
    s.doUndoRedo([](auto& g) { return *writeCaution(g, kGoblet, 0, "Stop on pain"); });
    s.doUndoRedo([](auto& g) { return *setRetired(g, kGoblet, true); });
    s.doUndoRedo([](auto& g) { return *addKin(g, kGoblet, Kin::Harder, kFront); });
    s.doUndoRedo([](auto& g) { return *addKin(g, kGoblet, Kin::Swap, kFront); });
    s.doUndoRedo([](auto& g) { return *removeKin(g, kGoblet, Kin::Easier, ex("box-squat")); });
    s.doUndoRedo([](auto& g) { return addExercise(g, "Pause squat", Pattern::Squat).ok(); });
    s.doUndoRedo([](auto& g) { return copyExercise(g, kGoblet, "Slow squat").ok(); });
}

TEST_CASE("What is as it was, or is nowhere, is no step") {
    ShelfGym s;
    CHECK_FALSE(*writeField(*s.open, kGoblet, ExerciseField::Skill, "1"));
    CHECK_FALSE(*writeCue(*s.open, kGoblet, 0, "Elbows inside the knees"));
    CHECK_FALSE(*setRetired(*s.open, kGoblet, false));
    CHECK_FALSE(*setRetired(*s.open, ex("gone"), true));
    CHECK_FALSE(*removeKin(*s.open, kGoblet, Kin::Swap, kFront));
    CHECK(s.open->undoText() == nullptr);
}

TEST_CASE("Easier and harder are written on both sides, a swap on one") {
    ShelfGym s;
    REQUIRE(*addKin(*s.open, kGoblet, Kin::Harder, kFront));
    CHECK(s.at("goblet-squat").harder == std::vector{kFront});
    CHECK(s.at("front-squat").easier == std::vector{kGoblet});
    CHECK(addKin(*s.open, kGoblet, Kin::Swap, kFront).why().english() ==
          "front-squat stands in this family already: take it out there first.");
    CHECK_FALSE(addKin(*s.open, kGoblet, Kin::Swap, kGoblet).ok());
    REQUIRE(*removeKin(*s.open, kFront, Kin::Easier, kGoblet));
    CHECK(s.at("goblet-squat").harder.empty());
    REQUIRE(*addKin(*s.open, kGoblet, Kin::Swap, kFront));
    CHECK(s.at("front-squat").swaps.empty());
}

TEST_CASE("A pace that a month's dose stands on can't be taken away, and says where") {
    ShelfGym s;
    REQUIRE(*writeField(*s.open, kGoblet, ExerciseField::Measure, "seconds"));
    const auto did = writeField(*s.open, kGoblet, ExerciseField::Pace, "none");
    REQUIRE_FALSE(did.ok());
    CHECK(
        did.why().english() ==
        "2026-09 has a dose of it that could not be timed any more: keep that pace, or change the "
        "dose first.");
    REQUIRE(*setDose(*s.open, {month("2026-09"), {0, 0, 0}}, secondsDose(30, 30)));
    CHECK(*writeField(*s.open, kGoblet, ExerciseField::Pace, "none"));
}

TEST_CASE("A copy has everything but the name, is not retired, and stands in the same family") {
    ShelfGym s;
    REQUIRE(*setRetired(*s.open, kGoblet, true));
    CHECK_FALSE(copyExercise(*s.open, kGoblet, "BOX-SQUAT").ok());
    const auto id = copyExercise(*s.open, kGoblet, " Slow squat ");
    REQUIRE(id.ok());
    CHECK(*id == ex("slow-squat"));
    Exercise expected = s.at("goblet-squat");
    expected.id = *id;
    expected.name = "Slow squat";
    expected.retired = false;
    CHECK(s.at("slow-squat") == expected);
    CHECK(s.at("box-squat").harder == std::vector{kGoblet, *id});
}

TEST_CASE("What is retired is no longer found while typing, and stays in its month") {
    ShelfGym s;
    const std::size_t before = searchShelf(s.open->gym(), "squat", {}).size();
    const Block month9 = *s.open->gym().block(month("2026-09"));
    REQUIRE(*setRetired(*s.open, kGoblet, true));
    CHECK(searchShelf(s.open->gym(), "squat", {}).size() == before - 1);
    CHECK(*s.open->gym().block(month("2026-09")) == month9);
    CHECK(addExercise(*s.open, "Goblet-squat", Pattern::Squat).why().english() ==
          "“Goblet-squat” is on the Shelf, retired: bring it back, or write another name.");
    REQUIRE(*setRetired(*s.open, kGoblet, false));
    CHECK(searchShelf(s.open->gym(), "squat", {}).size() == before);
}

TEST_CASE("Every field of the Shelf that comes with the program is read back as it is written") {
    Gym gym;
    layOver(gym, shippedShelf());
    REQUIRE(gym.shelf.size() > 250);
    for (const auto& entry : gym.shelf.entries())
        for (int f = 0; f <= static_cast<int>(ExerciseField::NoHarder); ++f) {
            const auto field = static_cast<ExerciseField>(f);
            const auto back = withField(gym, *entry, field, fieldText(gym, *entry, field));
            INFO(entry->id.text() << ": " << fieldText(gym, *entry, field));
            REQUIRE(back.ok());
            REQUIRE(*back == *entry);
        }
}

TEST_CASE("A file that can't take the change leaves the Shelf as it was") {
    ShelfGym s;
    const auto before = s.all();
    s.file->full = true;
    CHECK_FALSE(writeField(*s.open, kGoblet, ExerciseField::Skill, "3").ok());
    CHECK_FALSE(addExercise(*s.open, "Pause squat", Pattern::Squat).ok());
    CHECK(s.all() == before);
}

} // namespace bw::test
