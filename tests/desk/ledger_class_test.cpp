// SPDX-License-Identifier: GPL-3.0-or-later
// The class grid in the real window, by keys.
#include "desk/bench/cell_editor.hpp"
#include "desk/frame/workspace.hpp"
#include "desk/ledger/day_bar.hpp"
#include "ledger_gym.hpp"
#include "support/catch.hpp"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QDateEdit>
#include <QHeaderView>
#include <QLineEdit>

using namespace bw;
using namespace bw::test;

namespace {
std::string here(LedgerDesk& d) {
    const QModelIndex now = d.grid().currentIndex();
    return std::to_string(now.row()) + ":" + std::to_string(now.column());
}
} // namespace

TEST_CASE("The grid has active members by the session's exercises that are counted") {
    LedgerDesk d;
    REQUIRE(d.model().rowCount() == 2);    // not Cy
    REQUIRE(d.model().columnCount() == 3); // not the plank, not the warm-up
    CHECK(d.model().headerData(0, Qt::Horizontal, Qt::DisplayRole).toString() ==
          QStringLiteral("B1\nfloor-press"));
    CHECK(d.words("class-words") == "week 2 · Low tide · 0 came");
    d.page->findChild<QAction*>(QStringLiteral("whole"))->trigger();
    d.settle();
    REQUIRE(d.model().columnCount() == 4);
    CHECK(d.model().headerData(0, Qt::Horizontal, Qt::DisplayRole).toString() ==
          QStringLiteral("A1\nbox-squat"));
}

TEST_CASE("A cell shows last time and the week's target, as they stood before the day") {
    LedgerDesk d;
    CHECK(d.text(0, 0, ClassModel::LastRole) == "42.5×5×3 2");
    const std::string aim = d.text(0, 0, ClassModel::AimRole);
    CHECK(aim.ends_with("×5 3")); // week 2 of the usual stair: 3 in reserve
    CHECK(d.text(1, 0, ClassModel::LastRole).empty());
    CHECK(d.text(1, 0, ClassModel::AimRole) == "as found ×5 3");
    d.go(0, 0);
    d.keys("60x5 0");
    d.press(Qt::Key_Return);
    CHECK(d.text(0, 0, ClassModel::AimRole) == aim);
    CHECK(d.text(0, 0, Qt::AccessibleTextRole).find("last 42.5×5×3 2 on Thu 5 Nov 2026") !=
          std::string::npos);
}

TEST_CASE("Typing enters sets, Enter goes down, Tab to the right; each is one step of undo") {
    LedgerDesk d;
    d.go(0, 0);
    d.keys("45x5x2 2; 45x4 1");
    d.press(Qt::Key_Return);
    CHECK(here(d) == "1:0");
    CHECK(d.text(0, 0) == "45×5×2 2; 45×4 1");
    CHECK(d.stored("m-001", "floor-press") == "45×5×2 2; 45×4 1");
    CHECK(d.words("class-words") == "week 2 · Low tide · 1 came");
    d.keys("30x5");
    d.press(Qt::Key_Tab);
    CHECK(here(d) == "1:1");
    CHECK(d.stored("m-002", "floor-press") == "30×5");
    d.keys("20x8");
    d.press(Qt::Key_Backtab);
    CHECK(here(d) == "1:0");
    d.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(d.stored("m-002", "towel-row").empty());
    CHECK(d.text(1, 1).empty());
    CHECK(d.text(1, 0) == "30×5");
    d.press(Qt::Key_Y, Qt::ControlModifier);
    CHECK(d.text(1, 1) == "20×8");
}

TEST_CASE("= repeats last time exactly, Delete takes the sets away") {
    LedgerDesk d;
    const Mass odd = Mass::fromLb(95).value();
    for (LiftResult& r : d.file->results) r.load = odd;
    d.page->showDay(day("2026-11-11")); // read again
    d.go(0, 0);
    d.keys("=");
    REQUIRE(d.file->results.size() == 9);
    CHECK(d.file->results.back().load == odd);
    CHECK(d.file->results.back().date == day("2026-11-11"));
    CHECK(here(d) == "0:0");
    d.press(Qt::Key_Delete);
    CHECK(d.file->results.size() == 6);
    CHECK(d.text(0, 0).empty());
    d.go(1, 0);
    d.keys("="); // there is no last time
    CHECK(d.file->results.size() == 6);
    CHECK(d.words("sentence").find("no last time") != std::string::npos);
    d.press(Qt::Key_Escape);
    CHECK(d.text(1, 0).empty());
}

TEST_CASE("Text that is not understood says why and stays typed") {
    LedgerDesk d;
    d.go(0, 0);
    d.keys("forty");
    d.press(Qt::Key_Return);
    auto* editor = d.grid().findChild<CellEditor*>();
    REQUIRE(editor);
    CHECK(editor->isVisible());
    CHECK(editor->text() == QStringLiteral("forty"));
    CHECK(d.words("sentence").find("“forty” is no set") != std::string::npos);
    CHECK(here(d) == "0:0");
    d.go(1, 1); // leaves the line by another way: the words stay in their cell
    CHECK(d.text(0, 0) == "forty");
    CHECK_FALSE(d.text(0, 0, ClassModel::TroubleRole).empty());
    CHECK(d.stored("m-001", "floor-press").empty());
    d.go(0, 0);
    d.keys("40x5");
    d.press(Qt::Key_Return);
    CHECK(d.text(0, 0) == "40×5");
    CHECK(d.text(0, 0, ClassModel::TroubleRole).empty());
}

TEST_CASE("A full disk says so and keeps what was typed in its cell") {
    LedgerDesk d;
    d.go(0, 0);
    d.file->full = true;
    d.keys("40x5 2");
    d.press(Qt::Key_Return);
    CHECK(d.notice() == QStringLiteral("The disk is full."));
    CHECK(d.text(0, 0) == "40×5 2");
    CHECK_FALSE(d.text(0, 0, ClassModel::TroubleRole).empty());
    CHECK(d.stored("m-001", "floor-press").empty());
}

TEST_CASE("A flag puts the substitute into the cell, and results go to it") {
    LedgerDesk d;
    CHECK(d.text(1, 2, ClassModel::InsteadRole) == "low-press");
    CHECK(d.text(0, 2, ClassModel::InsteadRole).empty());
    d.go(1, 2);
    CHECK(d.words("sentence").find("high-press asks 3 of 3") != std::string::npos);
    d.keys("20x5");
    d.press(Qt::Key_Return);
    CHECK(d.stored("m-002", "low-press") == "20×5");
    CHECK(d.stored("m-002", "high-press").empty());
}

TEST_CASE("What was done of the drafted exercise all the same is shown, and can be changed") {
    LedgerDesk d;
    d.file->results.push_back(lifted("m-002", "2026-11-12", "high-press", 1, 5, 20, 2));
    d.page->showDay(day("2026-11-12"));
    d.settle();
    CHECK(d.text(1, 2) == "20×5 2");
    CHECK(d.text(1, 2, ClassModel::InsteadRole).empty());
}

TEST_CASE("The week follows the date; a day without a month says what to do") {
    LedgerDesk d;
    auto* date = d.page->findChild<QDateEdit*>();
    date->setFocus();
    date->setDate(QDate(2026, 11, 26));
    d.settle();
    CHECK(d.words("class-words") == "week 4 · Low tide · 0 came");
    d.page->showDay(day("2026-12-01"));
    d.settle();
    CHECK(d.model().columnCount() == 0);
    CHECK(d.grid().accessibleDescription().contains(QStringLiteral("December 2026 has no block")));
    CHECK(d.work().draft().month() == month("2026-11")); // the Bench stays where it is
}

TEST_CASE("Members are found by letters, and those who came can be seen alone") {
    LedgerDesk d;
    auto* find = d.page->findChild<QLineEdit*>(QStringLiteral("find-member"));
    d.type(*find, QStringLiteral("b"));
    REQUIRE(d.model().rowCount() == 1);
    CHECK(d.model().member(0)->name == "Bo");
    d.press(Qt::Key_Return);
    CHECK(d.grid().hasFocus());
    d.keys("30x5");
    d.press(Qt::Key_Return);
    CHECK(d.stored("m-002", "floor-press") == "30×5");
    find->clear();
    d.page->findChild<QAction*>(QStringLiteral("only-came"))->trigger();
    d.settle();
    REQUIRE(d.model().rowCount() == 1);
    CHECK(d.model().headerData(0, Qt::Vertical, ClassModel::CameRole).toBool());
}

TEST_CASE("Who comes no more is in the grid on a day they came") {
    LedgerDesk d;
    d.file->results.push_back(lifted("m-003", "2026-11-12", "floor-press", 1, 5, 20, 2));
    d.page->showDay(day("2026-11-12"));
    d.settle();
    CHECK(d.model().rowCount() == 3);
}

TEST_CASE("An edit of the draft is in the grid when it is seen again, results are not lost") {
    LedgerDesk d;
    d.go(0, 0);
    d.keys("45x5");
    d.press(Qt::Key_Return);
    d.press(Qt::Key_1, Qt::AltModifier);
    REQUIRE(*setExercise(d.work().gym(), {month("2026-11"), {1, 0, 1}}, ex("box-squat")));
    d.press(Qt::Key_6, Qt::AltModifier);
    CHECK(d.model().headerData(1, Qt::Horizontal, Qt::DisplayRole).toString() ==
          QStringLiteral("B2\nbox-squat"));
    CHECK(d.text(0, 0) == "45×5");
}

TEST_CASE("The class model keeps the contract of item models, while days and results change") {
    LedgerDesk d;
    QAbstractItemModelTester tester(&d.model(),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    d.go(0, 0);
    d.keys("45x5");
    d.press(Qt::Key_Return);
    d.page->showDay(day("2026-11-12"));
    d.page->showDay(day("2026-12-12"));
    d.page->showDay(day("2026-11-10"));
    d.settle();
    CHECK(d.text(0, 0) == "45×5");
}

TEST_CASE("Only what is shown is read: each row once, and nothing while another place is on show") {
    Gym gym = ledgerGym();
    for (int m = 4; m < 304; ++m)
        gym.put(Member{who("m-" + std::to_string(m)), "Member " + std::to_string(m), {}, true, {}});
    LedgerDesk d(std::move(gym));
    REQUIRE(d.model().rowCount() == 302);
    int read = 0;
    for (const MemberId& id : d.model().members()) read += d.model().day()->row(id) ? 1 : 0;
    CHECK(read > 0);
    CHECK(read < 60);
    d.press(Qt::Key_1, Qt::AltModifier);
    const int before = d.file->queries;
    REQUIRE(*setSets(d.work().gym(), {who("m-001"), day("2026-11-10"), ex("towel-row")},
                     {{5, {}, {}}}));
    CHECK(d.file->queries <= before + 2); // the verb's own
}
