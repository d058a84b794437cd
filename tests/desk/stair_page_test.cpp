// SPDX-License-Identifier: GPL-3.0-or-later
// The Stair in the real window: moved by keys, by mouse and by typing.
#include "desk/frame/workspace.hpp"
#include "desk/stair/stair_page.hpp"
#include "desk/stair/stair_view.hpp"
#include "desk/stair/week_table.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QAction>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QTest>

namespace bw::test {

namespace {
struct StairDesk : FrameDesk {
    StairDesk() : file(&openSmallGym()) {
        press(Qt::Key_3, Qt::AltModifier);
        page = qobject_cast<StairPage*>(work().page());
        if (!page) throw std::runtime_error("Alt+3 leads elsewhere");
        view = page->findChild<StairView*>();
        press(Qt::Key_Home);
    }
    [[nodiscard]] const Block& stored() { return *gym().block(month("2026-11")); }
    [[nodiscard]] double rir(int week) {
        return stored().stair.at(std::size_t(week - 1)).rir.reps();
    }
    [[nodiscard]] double seen(int week) {
        return shown().stair.at(std::size_t(week - 1)).rir.reps();
    }
    [[nodiscard]] std::uint64_t steps() { return work().gym().revision(); }
    [[nodiscard]] QPoint tread(int week) {
        const auto step =
            view->geometryNow().step(week - 1, shown().stair.at(std::size_t(week - 1)).rir);
        return {static_cast<int>(step.center().x()), static_cast<int>(step.top())};
    }
    [[nodiscard]] int yOf(double reps) {
        return static_cast<int>(view->geometryNow().yOf(Rir::of(reps).value()));
    }
    QLineEdit* editor() { return view->findChild<QLineEdit*>(); }

    MemoryFile* file;
    StairPage* page = nullptr;
    StairView* view = nullptr;
};
} // namespace

TEST_CASE("Alt+3 leads to the Stair, with all of it in words") {
    StairDesk d;
    CHECK(QApplication::focusWidget() == d.view);
    CHECK(d.view->accessibleName() ==
          QStringLiteral("Stair. Week 1 of 4: learn, low rounds, 4 in reserve, RPE 6."));
    for (const char* week : {"Week 1 of 4: learn", "Week 2 of 4: build, open rounds, 3 in reserve",
                             "Week 4 of 4: challenge"})
        CHECK(d.view->accessibleDescription().contains(QLatin1String(week)));
}

TEST_CASE("Up asks more of a week and Down less, each one step to undo") {
    StairDesk d;
    const auto before = d.steps();
    d.press(Qt::Key_Up);
    CHECK(d.rir(1) == 3);
    d.press(Qt::Key_Right);
    d.press(Qt::Key_Down, Qt::ShiftModifier);
    CHECK(d.rir(2) == 3.5);
    CHECK(d.steps() == before + 2);
    d.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(d.rir(2) == 3);
    CHECK(d.rir(1) == 3);
    d.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(d.rir(1) == 4);
    d.press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    CHECK(d.rir(1) == 3);
}

TEST_CASE("A step ends at nothing left in reserve and at ten") {
    StairDesk d;
    for (int i = 0; i < 6; ++i) d.press(Qt::Key_Up);
    CHECK(d.rir(1) == 0);
    const auto before = d.steps();
    d.press(Qt::Key_Up);
    CHECK(d.steps() == before);
    for (int i = 0; i < 12; ++i) d.press(Qt::Key_Down);
    CHECK(d.rir(1) == 10);
}

TEST_CASE("R goes through the rounds of the week, I through what it is for") {
    StairDesk d;
    const auto step = [&] { return d.stored().stair.front(); };
    d.press(Qt::Key_R);
    CHECK(step().rounds == RoundsMode::Open);
    d.press(Qt::Key_R);
    CHECK(step().rounds == RoundsMode::High);
    d.press(Qt::Key_R);
    CHECK(step().rounds == RoundsMode::Low);
    d.press(Qt::Key_I);
    CHECK(step().intent == Intent::Build);
    CHECK(step().rir == Rir::of(4).value());
    CHECK(d.stored().stair[1] == defaultStair()[1]);
}

TEST_CASE("What is left is typed: previewed with each key, stored by Enter") {
    StairDesk d;
    const auto before = d.steps();
    d.press(Qt::Key_2);
    REQUIRE(d.editor());
    CHECK(d.seen(1) == 2);
    QTest::keyClicks(d.editor(), ".5");
    CHECK(d.seen(1) == 2.5);
    CHECK(d.rir(1) == 4);
    CHECK(d.steps() == before);
    d.press(Qt::Key_Return);
    CHECK(d.rir(1) == 2.5);
    CHECK(d.steps() == before + 1);
    CHECK_FALSE(d.editor());
    CHECK(QApplication::focusWidget() == d.view);
}

TEST_CASE("Escape leaves the week as it was") {
    StairDesk d;
    d.press(Qt::Key_1);
    CHECK(d.seen(1) == 1);
    d.press(Qt::Key_Escape);
    CHECK(d.seen(1) == 4);
    CHECK_FALSE(d.editor());
}

TEST_CASE("What is typed for one week is never kept for another") {
    StairDesk d;
    const auto before = d.steps();
    d.press(Qt::Key_1);
    d.press(Qt::Key_3, Qt::ControlModifier);
    CHECK_FALSE(d.editor());
    CHECK(d.work().draft().week() == week(3));
    CHECK(d.shown().stair == d.stored().stair);
    d.press(Qt::Key_Return);
    REQUIRE(d.editor());
    CHECK(d.editor()->text() == QStringLiteral("2"));
    d.press(Qt::Key_PageUp, Qt::ControlModifier);
    CHECK_FALSE(d.editor());
    CHECK(d.steps() == before);
}

TEST_CASE("A stair of two weeks is typed in its last, whatever week is on show") {
    StairDesk d;
    d.press(Qt::Key_End);
    REQUIRE(d.work()
                .gym()
                .change({{"two weeks", {}},
                         {PutBlock{[&] {
                             auto b = std::make_shared<Block>(d.stored());
                             b->stair.resize(2);
                             return b;
                         }()}},
                         {},
                         {}})
                .ok());
    d.press(Qt::Key_1);
    REQUIRE(d.editor());
    d.press(Qt::Key_Return);
    CHECK(d.rir(2) == 1);
}

TEST_CASE("What is typed is kept on the way to another place") {
    StairDesk d;
    d.press(Qt::Key_1);
    d.press(Qt::Key_1, Qt::AltModifier);
    CHECK(d.rir(1) == 1);
    CHECK(d.seen(1) == 1);
}

TEST_CASE("Letters of the stair's keys can't act while a number is typed") {
    StairDesk d;
    const auto before = d.steps();
    d.press(Qt::Key_F2);
    REQUIRE(d.editor());
    d.press(Qt::Key_R);
    d.press(Qt::Key_Up);
    CHECK(d.steps() == before);
    CHECK(d.editor());
}

TEST_CASE("What is no effort stays open, says why, and is dropped when it is left") {
    StairDesk d;
    auto& sentence = d.part<QLabel>("stair-sentence");
    d.press(Qt::Key_F2);
    d.editor()->selectAll();
    QTest::keyClicks(d.editor(), "1-3");
    CHECK(sentence.text().contains(QStringLiteral("one figure")));
    d.press(Qt::Key_Return);
    REQUIRE(d.editor());
    d.editor()->selectAll();
    QTest::keyClicks(d.editor(), "44");
    d.press(Qt::Key_Return);
    CHECK(d.editor());
    d.page->findChild<QWidget*>(QStringLiteral("stair-slots"))->setFocus();
    d.settle();
    CHECK_FALSE(d.editor());
    CHECK(d.rir(1) == 4);
    CHECK(d.seen(1) == 4);
}

TEST_CASE("A dragged step is previewed in halves and stored once, on release") {
    StairDesk d;
    const auto before = d.steps();
    const QPoint from = d.tread(3);
    QTest::mousePress(d.view, Qt::LeftButton, {}, from);
    CHECK(d.work().draft().week() == week(3));
    for (const double to : {2.5, 3.0, 4.5}) {
        QTest::mouseMove(d.view, {from.x(), d.yOf(to)});
        CHECK(d.seen(3) == to);
    }
    CHECK(d.rir(3) == 2);
    CHECK(d.steps() == before);
    QTest::mouseRelease(d.view, Qt::LeftButton, {}, {from.x(), d.yOf(4.5)});
    d.settle();
    CHECK(d.rir(3) == 4.5);
    CHECK(d.steps() == before + 1);
    d.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(d.rir(3) == 2);
}

TEST_CASE("A step that is dragged back, or let go by Escape, is no step") {
    StairDesk d;
    const auto before = d.steps();
    const QPoint from = d.tread(2);
    QTest::mousePress(d.view, Qt::LeftButton, {}, from);
    QTest::mouseMove(d.view, {from.x(), d.yOf(6)});
    CHECK(d.seen(2) == 6);
    QTest::mouseMove(d.view, from);
    QTest::mouseRelease(d.view, Qt::LeftButton, {}, from);
    CHECK(d.seen(2) == 3);
    QTest::mousePress(d.view, Qt::LeftButton, {}, from);
    QTest::mouseMove(d.view, {from.x(), d.yOf(6)});
    d.press(Qt::Key_Escape);
    CHECK(d.seen(2) == 3);
    QTest::mouseRelease(d.view, Qt::LeftButton, {}, from);
    CHECK(d.steps() == before);
}

TEST_CASE("A click on the rounds of a step offers all three") {
    StairDesk d;
    const auto at =
        d.view->geometryNow()
            .line(3, d.stored().stair[3].rir, StairGeometry::Line::Rounds, d.view->font())
            .toAlignedRect()
            .topLeft() +
        QPoint(6, 6);
    QTest::mouseMove(d.view, at);
    QTest::mouseClick(d.view, Qt::LeftButton, {}, at);
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    REQUIRE(menu);
    REQUIRE(menu->actions().size() == 3);
    CHECK(menu->actions()[1]->isChecked());
    menu->actions()[2]->trigger();
    menu->close();
    CHECK(d.stored().stair[3].rounds == RoundsMode::High);
}

TEST_CASE("On a full disk the stair stays, and the coach is told") {
    StairDesk d;
    d.file->full = true;
    d.press(Qt::Key_Up);
    CHECK(d.rir(1) == 4);
    CHECK(d.seen(1) == 4);
    CHECK(d.notice().contains(QStringLiteral("full")));
    const QPoint from = d.tread(1);
    QTest::mousePress(d.view, Qt::LeftButton, {}, from);
    QTest::mouseMove(d.view, {from.x(), d.yOf(7)});
    QTest::mouseRelease(d.view, Qt::LeftButton, {}, {from.x(), d.yOf(7)});
    CHECK(d.seen(1) == 4);
}

TEST_CASE("The tables follow the step while it moves, and lead to its week") {
    StairDesk d;
    auto& loads = d.part<WeekTable>("stair-loads");
    auto& slots = d.part<WeekTable>("stair-slots");
    const auto cell = [](WeekTable& table, int row, int week) {
        return table.model()->index(row, WeekModel::kFirstWeek + week - 1).data().toString();
    };
    CHECK(cell(loads, 1, 1) == QStringLiteral("6.0"));
    CHECK(cell(slots, 0, 1) == QStringLiteral("2 · 4 left"));
    d.press(Qt::Key_1); // typed, not stored
    CHECK(cell(loads, 1, 1) == QStringLiteral("9.0"));
    CHECK(cell(slots, 0, 1) == QStringLiteral("2 · 1 left"));
    d.press(Qt::Key_Escape);
    slots.setFocus();
    d.press(Qt::Key_Down);
    d.press(Qt::Key_Right);
    d.press(Qt::Key_Right);
    CHECK(d.work().draft().week() == week(3));
    CHECK(d.work().draft().place() == Place{0, 0, 1});
    CHECK(d.part<QLabel>("stair-sentence").text() ==
          QStringLiteral("Week 3, A2 towel-row: 2–3 rounds of 8–10 with 2 in reserve."));
    d.press(Qt::Key_Home);
    CHECK(
        d.part<QLabel>("stair-sentence").text().startsWith(QStringLiteral("Week 3, A2 towel-row")));
    d.press(Qt::Key_Return);
    CHECK(d.work().page() != d.page);
}

TEST_CASE("A stair that falls is told beside it") {
    StairDesk d;
    d.press(Qt::Key_End);
    for (int i = 0; i < 4; ++i) d.press(Qt::Key_Down); // week 4 easier than the others
    CHECK(d.view->accessibleDescription().contains(QStringLiteral("▲")));
}

TEST_CASE("The limits of the loads are said beside them") {
    StairDesk d;
    const QString caveats = d.part<QLabel>("stair-caveats").text();
    CHECK(caveats.contains(QStringLiteral("for information")));
    CHECK(caveats.contains(QStringLiteral("monotony is always 0.87")));
}

} // namespace bw::test
