// SPDX-License-Identifier: GPL-3.0-or-later
// The Shelf in the real window, by keys.
#include "blockwright/model/shelf_search.hpp"
#include "desk/bench/bench_page.hpp"
#include "desk/bench/cell_editor.hpp"
#include "desk/bench/exercise_editor.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/workspace.hpp"
#include "shelf_gym.hpp"
#include "support/catch.hpp"

#include <QAccessible>
#include <QHeaderView>
#include <QLineEdit>

namespace bw::test {

TEST_CASE("Alt+4 leads to the Shelf: everything offered, by name, and all of the first") {
    ShelfDesk d;
    CHECK(d.names() == "Box squat, Front squat, Goblet squat, Overhead press, Towel row");
    CHECK(d.here() == "Box squat");
    CHECK(d.table->hasFocus());
    d.press(Qt::Key_Down);
    d.press(Qt::Key_Down);
    CHECK(d.here() == "Goblet squat");
    CHECK(d.line("name") == "Goblet squat");
    CHECK(d.line("trains") == "squat");
    CHECK(d.line("for") == "strength-heavy");
    CHECK(d.line("demands") == "knee 2");
    CHECK(d.line("kit") == "kettlebell");
    CHECK(d.line("pace") == "3 s/rep");
    CHECK(d.line("cues") == "Elbows inside the knees");
    CHECK(d.line("none harder") == "not said");
    CHECK(d.line("used in") == "November 2026 · A1, main lift");
    const auto cell = [&](int column) {
        return d.table->currentIndex().siblingAtColumn(column).data().toString().toStdString();
    };
    CHECK(cell(ShelfLine::Roles) == "heavy");
    CHECK(cell(ShelfLine::Last) == "Nov 2026");
    CHECK(cell(ShelfLine::Months) == "3");
}

TEST_CASE("Words narrow the table with each key; letters typed in the table go to the filter") {
    ShelfDesk d;
    d.keys("sq");
    CHECK(d.filter->hasFocus());
    CHECK(d.names() == "Box squat, Front squat, Goblet squat");
    CHECK(d.filter->text() == "sq");
    d.keys("uat ba");
    CHECK(d.names() == "Front squat"); // its barbell
    d.press(Qt::Key_Return);
    CHECK(d.table->hasFocus());
    CHECK(d.here() == "Front squat");
    d.find("flute");
    CHECK(d.names().empty());
    CHECK(d.words("shelf-none").find("No exercise fits all of these words.") == 0);
    CHECK(d.entry->model()->rowCount() == 0);
    d.find("");
    CHECK(d.words("shelf-none").empty());
    CHECK(d.here() == "Box squat"); // the first again
}

TEST_CASE("Right takes the rest of a word") {
    ShelfDesk d;
    d.find("ket");
    CHECK(d.filter->rest() == "tlebell");
    d.press(Qt::Key_Right);
    CHECK(d.filter->text() == "kettlebell");
    CHECK(d.names() == "Goblet squat");
    CHECK(d.filter->rest().isEmpty());
}

TEST_CASE("A column sorts by its heading, and by key; again, the other way round") {
    ShelfDesk d;
    d.press(Qt::Key_Down);
    d.press(Qt::Key_Down);
    for (int i = 0; i < ShelfLine::Months; ++i) d.press(Qt::Key_Right);
    d.press(Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier);
    // By months; those never used stand last, both ways.
    CHECK(d.names() == "Front squat, Towel row, Goblet squat, Box squat, Overhead press");
    CHECK(d.here() == "Goblet squat");
    d.press(Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier);
    CHECK(d.names() == "Goblet squat, Front squat, Towel row, Box squat, Overhead press");
    QHeaderView* head = d.table->horizontalHeader();
    QTest::mouseClick(head->viewport(), Qt::LeftButton, {},
                      QPoint(head->sectionViewportPosition(ShelfLine::Last) + 10, 5));
    d.settle();
    CHECK(d.names() == "Front squat, Towel row, Goblet squat, Box squat, Overhead press");
}

TEST_CASE("A line is opened, written and undone by keys, and undo leads back to it") {
    ShelfDesk d;
    d.goToLine("demands");
    d.press(Qt::Key_Return);
    d.keys("knee 1, grip 1");
    d.press(Qt::Key_Return);
    CHECK(d.line("demands") == "grip 1, knee 1");
    CHECK(d.at("box-squat").demands[Demand::Grip] == 1);
    CHECK(d.window.actions().find("undo")->text() == "&Undo: demands of Box squat");
    d.press(Qt::Key_Escape);
    CHECK(d.table->hasFocus());
    d.press(Qt::Key_Down);
    CHECK(d.here() == "Front squat");
    d.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(d.here() == "Box squat");
    CHECK(d.line("demands") == "none");
    CHECK(d.at("box-squat").demands == Demands{});
}

TEST_CASE("What is not understood stays typed, and the line below says what is") {
    ShelfDesk d;
    d.goToLine("trains");
    d.keys("sqat"); // typing opens the line, and takes the place of what was there
    d.press(Qt::Key_Return);
    auto* editor = d.entry->findChild<CellEditor*>();
    REQUIRE(editor);
    CHECK(editor->text() == "sqat");
    CHECK(editor->inTrouble());
    CHECK(d.words("shelf-notice").find("“sqat” is not understood: write squat, hinge,") !=
          std::string::npos);
    CHECK(d.at("box-squat").patterns[Pattern::Squat] == Share::whole());
    editor->selectAll();
    d.keys("hinge 20, squat");
    CHECK(d.words("shelf-notice").empty());
    d.press(Qt::Key_Return);
    CHECK(d.line("trains") == "squat 80 %, hinge 20 %");
}

TEST_CASE("A full disk keeps the exercise as it was and says so") {
    ShelfDesk d;
    d.file->full = true;
    d.goToLine("skill");
    d.press(Qt::Key_F2);
    d.keys("3");
    d.press(Qt::Key_Return);
    CHECK(d.words("shelf-notice").find("The disk is full.") != std::string::npos);
    CHECK(d.line("skill") == "1 (anyone)");
}

TEST_CASE("Cues are added at the end, and go when they are emptied") {
    ShelfDesk d;
    d.find("goblet");
    d.goToLine("cues");
    d.press(Qt::Key_Down);
    CHECK(d.entry->currentIndex().data().toString() == "add a cue");
    d.keys("Look ahead");
    d.press(Qt::Key_Return);
    CHECK(d.entry->hasFocus());
    CHECK(d.entry->currentIndex().data().toString() == "Look ahead");
    CHECK(d.at("goblet-squat").cues ==
          std::vector<std::string>{"Elbows inside the knees", "Look ahead"});
    d.goToLine("cues");
    d.press(Qt::Key_Delete);
    CHECK(d.at("goblet-squat").cues == std::vector<std::string>{"Look ahead"});
    CHECK(d.line("cues") == "Look ahead");
}

TEST_CASE("Enter on a month opens it on the Bench, at the slot") {
    ShelfDesk d;
    d.find("goblet");
    d.goToLine("used in");
    d.press(Qt::Key_Down); // October
    d.press(Qt::Key_Down); // September
    d.press(Qt::Key_Return);
    CHECK(d.work().page() == &d.work().bench());
    CHECK(d.shown().month == month("2026-09"));
    CHECK(d.work().draft().place() == Place{0, 0, 1});
}

TEST_CASE("A new exercise is asked for its name, and stands on the Shelf with all its lines") {
    ShelfDesk d;
    d.press(Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
    d.keys("box squat");
    d.press(Qt::Key_Return);
    CHECK(d.gym().shelf.size() == 6); // there is one of that name: the line says so and stays
    auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    REQUIRE(line);
    line->selectAll();
    d.keys("Kneeling cable row");
    d.press(Qt::Key_Return);
    CHECK(d.here() == "Kneeling cable row");
    CHECK(d.line("trains") == "horizontal pull"); // by its name
    CHECK(d.entry->hasFocus());
    d.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(d.gym().shelf.size() == 6);
}

TEST_CASE("A name being asked for is left with Esc, and nothing is added") {
    ShelfDesk d;
    d.press(Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
    d.keys("Step-up");
    d.press(Qt::Key_Escape);
    CHECK(d.table->hasFocus());
    CHECK(d.gym().shelf.size() == 6);
}

TEST_CASE("A copy is asked for another name and has everything else") {
    ShelfDesk d;
    d.find("goblet");
    d.press(Qt::Key_Return);
    d.press(Qt::Key_D, Qt::ControlModifier);
    d.press(Qt::Key_End);
    d.keys(", slow");
    d.press(Qt::Key_Return);
    CHECK(d.here() == "Goblet squat, slow");
    Exercise same = d.at("goblet-squat-slow");
    same.id = ex("goblet-squat");
    same.name = "Goblet squat";
    CHECK(same == d.at("goblet-squat"));
}

TEST_CASE(
    "A retired exercise leaves the table and every list, stays in its months, and comes back") {
    ShelfDesk d;
    d.find("goblet");
    d.press(Qt::Key_Return);
    d.press(Qt::Key_R, Qt::ControlModifier);
    CHECK(d.at("goblet-squat").retired);
    CHECK(d.names().empty());
    CHECK(d.words("shelf-notice").find("Goblet squat is retired: no longer offered") == 0);
    CHECK(searchShelf(d.gym(), "goblet", {}).empty());
    CHECK(d.gym().block(month("2026-11"))->sections[0].groups[0].slots[0].exercise ==
          ex("goblet-squat"));
    d.find("retired");
    CHECK(d.names() == "Goblet squat, Old press");
    d.press(Qt::Key_Return);
    d.press(Qt::Key_R, Qt::ControlModifier); // the same key brings it back
    CHECK_FALSE(d.at("goblet-squat").retired);
    CHECK(d.names() == "Old press");
    d.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(d.at("goblet-squat").retired);
}

TEST_CASE("The family is walked by arrows, and each of it has a name to be read out") {
    ShelfDesk d;
    d.find("goblet");
    d.press(Qt::Key_Return);
    d.press(Qt::Key_Tab);
    auto* node = qobject_cast<FamilyNode*>(QApplication::focusWidget());
    REQUIRE(node);
    CHECK_FALSE(node->who().kin.has_value());
    std::vector<std::string> names;
    for (FamilyNode* each : d.family->nodes())
        names.push_back(
            QAccessible::queryAccessibleInterface(each)->text(QAccessible::Name).toStdString());
    CHECK(names == std::vector<std::string>{"Goblet squat, of this family", "easier: Box squat",
                                            "Add: easier", "Add: harder", "swap: Front squat",
                                            "Add: swap"});
    const auto said = [] { return QApplication::focusWidget()->accessibleName().toStdString(); };
    d.press(Qt::Key_Down);
    CHECK(said() == "swap: Front squat");
    d.press(Qt::Key_Up);
    CHECK(said() == "Goblet squat, of this family");
    d.press(Qt::Key_Right);
    CHECK(said() == "Add: harder");
    d.press(Qt::Key_Left);
    d.press(Qt::Key_Left);
    CHECK(said() == "easier: Box squat");
    d.press(Qt::Key_Return); // goes there, though the filter hides it
    CHECK(d.here() == "Box squat");
    CHECK(d.filter->text().isEmpty());
    CHECK(said() == "Box squat, of this family");
    d.press(Qt::Key_Escape);
    CHECK(d.table->hasFocus());
}

TEST_CASE("Kin is added by a part of its name, on both sides, and taken out with Delete") {
    ShelfDesk d;
    d.find("goblet");
    d.press(Qt::Key_Return);
    d.press(Qt::Key_Tab);
    d.press(Qt::Key_Right);
    d.press(Qt::Key_Return);
    auto* editor = d.family->findChild<ExerciseEditor*>();
    REQUIRE(editor);
    QTest::keyClicks(editor, "front");
    d.settle();
    d.press(Qt::Key_Return); // a swap of it already
    CHECK(d.words("shelf-notice").find("Front squat stands in this family already") !=
          std::string::npos);
    CHECK(d.at("goblet-squat").harder.empty());
    d.press(Qt::Key_Down);
    d.press(Qt::Key_Delete);
    CHECK(d.at("goblet-squat").swaps.empty());
    d.press(Qt::Key_Right);
    d.press(Qt::Key_Return);
    editor = d.family->findChild<ExerciseEditor*>();
    REQUIRE(editor);
    QTest::keyClicks(editor, "front");
    d.settle();
    d.press(Qt::Key_Return);
    CHECK(d.at("goblet-squat").harder == std::vector{ex("front-squat")});
    CHECK(d.at("front-squat").easier == std::vector{ex("goblet-squat")});
    d.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(d.at("front-squat").easier.empty());
}

TEST_CASE("The Shelf is there before the first month, and an empty one says what to do") {
    Gym gym;
    gym.settings.name = "Tide Mill";
    ShelfDesk d(gym);
    CHECK(d.words("shelf-none").find("The Shelf is empty. Ctrl+Shift+N adds an exercise") == 0);
    d.press(Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
    d.keys("Lunge");
    d.press(Qt::Key_Return);
    CHECK(d.names() == "Lunge");
    CHECK(d.line("trains") == "lunge");
    CHECK(d.line("used in") == "no month yet");
}

} // namespace bw::test
