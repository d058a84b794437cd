// SPDX-License-Identifier: GPL-3.0-or-later
// Months and weeks on show, months started and removed, undo across them; all by keys.
#include "desk/frame/actions.hpp"
#include "desk/frame/workspace.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QMenu>
#include <QToolButton>

namespace bw::test {

TEST_CASE("Ctrl+PageUp and PageDown step through the months there are, and stop at the ends") {
    FrameDesk d;
    d.openSmallGym();
    CHECK(d.shown().month == month("2026-11")); // the latest first
    d.press(Qt::Key_PageDown, Qt::ControlModifier);
    CHECK(d.shown().month == month("2026-11"));
    CHECK_FALSE(d.window.actions().find(QStringLiteral("next-month"))->isEnabled());
    d.press(Qt::Key_PageUp, Qt::ControlModifier);
    d.press(Qt::Key_PageUp, Qt::ControlModifier);
    CHECK(d.shown().month == month("2026-09"));
    CHECK_FALSE(d.window.actions().find(QStringLiteral("previous-month"))->isEnabled());
    CHECK(d.window.windowTitle().toStdString() == "September 2026 · Tide Mill · Blockwright");
}

TEST_CASE("The list of months shows all of them, newest first, and goes to the chosen one") {
    FrameDesk d;
    d.openSmallGym();
    QMenu* list = nullptr;
    for (QToolButton* b : d.work().findChildren<QToolButton*>())
        if (b->menu()) list = b->menu();
    REQUIRE(list);
    Q_EMIT list->aboutToShow();
    std::vector<std::string> months;
    for (QAction* a : list->actions())
        if (a->isCheckable()) months.push_back(a->text().toStdString());
    CHECK(months == std::vector<std::string>{"November 2026 · Tide of 2026-11",
                                             "October 2026 · Tide of 2026-10",
                                             "September 2026 · Tide of 2026-09"});
    list->actions().last()->trigger();
    CHECK(d.shown().month == month("2026-09"));
}

TEST_CASE("Ctrl+1 to 4 choose the week") {
    FrameDesk d;
    d.openSmallGym();
    CHECK(d.work().draft().week() == week(2));
    d.press(Qt::Key_4, Qt::ControlModifier);
    CHECK(d.work().draft().week() == week(4));
    d.press(Qt::Key_1, Qt::ControlModifier);
    CHECK(d.work().draft().week() == week(1));
    d.press(Qt::Key_5, Qt::ControlModifier); // this month has four
    CHECK(d.work().draft().week() == week(1));
}

TEST_CASE("The next month starts as a copy of the last, or empty, as the coach says") {
    FrameDesk d;
    d.openSmallGym();
    SECTION("closed without an answer") {
        d.press(Qt::Key_N, Qt::ControlModifier);
        CHECK(d.coach.asked.size() == 2);
        CHECK(d.gym().blocks.size() == 3);
    }
    SECTION("a copy") {
        d.coach.button = 0;
        d.press(Qt::Key_N, Qt::ControlModifier);
        REQUIRE(d.shown().month == month("2026-12"));
        CHECK(d.shown().sections == d.gym().block(month("2026-11"))->sections);
        CHECK(d.shown().title.empty());
    }
    SECTION("empty") {
        d.coach.button = 1;
        d.press(Qt::Key_N, Qt::ControlModifier);
        REQUIRE(d.shown().month == month("2026-12"));
        CHECK(d.shown().sections.size() == 4);
    }
}

TEST_CASE("Undo goes back to the month it changes, and says what it will undo") {
    FrameDesk d;
    d.openSmallGym();
    d.coach.button = 0;
    d.press(Qt::Key_N, Qt::ControlModifier);
    const QAction* undo = d.window.actions().find(QStringLiteral("undo"));
    CHECK(undo->text().endsWith(QStringLiteral("start 2026-12 from 2026-11")));
    d.press(Qt::Key_PageUp, Qt::ControlModifier);
    d.press(Qt::Key_PageUp, Qt::ControlModifier);
    CHECK(d.shown().month == month("2026-10"));
    d.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK_FALSE(d.gym().block(month("2026-12")));
    CHECK_FALSE(undo->isEnabled());
    d.press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    CHECK(d.shown().month == month("2026-12"));
}

TEST_CASE("A month is removed only when the coach says so, and comes back by undo") {
    FrameDesk d;
    d.openSmallGym();
    QAction* remove = d.window.actions().find(QStringLiteral("remove-month"));
    remove->trigger();
    CHECK(d.gym().blocks.size() == 3);
    d.coach.button = 0;
    remove->trigger();
    CHECK(d.gym().blocks.size() == 2);
    CHECK(d.shown().month == month("2026-10"));
    d.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(d.shown().month == month("2026-11"));
}

TEST_CASE("A gym without months says so and starts one at a key") {
    FrameDesk d;
    d.window.take(OpenGym::over(std::make_unique<MemoryFile>(Gym{})));
    d.settle();
    CHECK(d.work().draft().block() == nullptr);
    d.press(Qt::Key_Space); // the button has the focus
    REQUIRE(d.gym().blocks.size() == 1);
    CHECK(d.shown().sections.size() == 4);
}

TEST_CASE("What can't be stored is said above the page, and goes with the next change") {
    FrameDesk d;
    MemoryFile& file = d.openSmallGym();
    file.full = true;
    d.window.actions().find(QStringLiteral("copy-last"))->trigger();
    CHECK(d.notice() == QStringLiteral("The disk is full."));
    CHECK(d.coach.asked.isEmpty()); // no box
    CHECK(d.gym().blocks.size() == 3);
    file.full = false;
    d.window.actions().find(QStringLiteral("copy-last"))->trigger();
    CHECK(d.notice().isEmpty());
    CHECK(d.gym().blocks.size() == 4);
}

} // namespace bw::test
