// SPDX-License-Identifier: GPL-3.0-or-later
// The Almanac in the real window, by keys.
#include "almanac_gym.hpp"
#include "desk/almanac/almanac_page.hpp"
#include "desk/almanac/almanac_view.hpp"
#include "desk/bench/bench_page.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/workspace.hpp"
#include "edit/month_verbs.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QApplication>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QTest>

namespace bw::test {

namespace {
struct AlmanacDesk : FrameDesk {
    explicit AlmanacDesk(Gym gym = almanacGym()) {
        auto owned = std::make_unique<MemoryFile>(std::move(gym));
        file = owned.get();
        window.take(OpenGym::over(std::move(owned)));
        settle();
        press(Qt::Key_5, Qt::AltModifier);
        page = qobject_cast<AlmanacPage*>(work().page());
        if (!page) throw std::runtime_error("Alt+5 leads elsewhere");
    }
    AlmanacView& turns() { return page->table(0); }
    AlmanacView& exercises() { return page->table(1); }
    AlmanacView& ratios() { return page->table(2); }
    // The line and month under the cursor of the table that has the focus.
    std::string here() {
        for (AlmanacView* view : {&turns(), &exercises(), &ratios()})
            if (view->hasFocus())
                return (view->almanac().line(view->currentIndex().row()).name + QLatin1Char(' '))
                           .toStdString() +
                       page->month()->text();
        return "nowhere";
    }
    QPushButton& start() { return *page->findChild<QPushButton*>(); }
    QLineEdit& filter() { return *page->findChild<QLineEdit*>(); }

    MemoryFile* file = nullptr;
    AlmanacPage* page = nullptr;
};
} // namespace

TEST_CASE("Alt+5 leads to the Almanac, at the month on show") {
    AlmanacDesk d;
    CHECK(d.here() == "box-squat 2027-02");
    d.press(Qt::Key_PageUp, Qt::ControlModifier); // another month on show
    CHECK(d.here() == "box-squat 2027-01");
}

TEST_CASE("Arrows walk over cells, and from one table into the next") {
    AlmanacDesk d;
    d.press(Qt::Key_Left);
    d.press(Qt::Key_Left);
    CHECK(d.here() == "box-squat 2026-12");
    d.press(Qt::Key_Up);
    CHECK(d.here() == "squat 2026-12"); // a heading
    d.press(Qt::Key_Up);
    CHECK(d.here() == "new exercises 2026-12");
    d.press(Qt::Key_Up);
    CHECK(d.here() == "round-trip 2026-12");
    d.press(Qt::Key_Down);
    d.press(Qt::Key_Down);
    d.press(Qt::Key_Down);
    CHECK(d.here() == "box-squat 2026-12");
    for (int i = 0; i < 7; ++i) d.press(Qt::Key_Down); // over three more pairs
    CHECK(d.here() == "push : pull 2026-12");
    d.press(Qt::Key_Down);
    d.press(Qt::Key_Down); // the last line of all
    CHECK(d.here() == "knee : hip 2026-12");
    CHECK(d.work().draft().month() == month("2027-02")); // looking is not going there
}

TEST_CASE("Enter opens the month on the Bench, at the exercise of the line") {
    AlmanacDesk d;
    d.press(Qt::Key_Left);
    d.press(Qt::Key_Down);
    d.press(Qt::Key_Down);
    REQUIRE(d.here() == "floor-press 2027-01");
    d.press(Qt::Key_Return);
    CHECK(d.work().page() == &d.work().bench());
    CHECK(d.shown().month == month("2027-01"));
    CHECK(d.work().draft().place() == Place{0, 0, 1});
}

TEST_CASE("A click on a month's heading opens it; a month without a block says so and stays") {
    AlmanacDesk d;
    QHeaderView* months = d.turns().horizontalHeader();
    const auto click = [&](int column) {
        const QPoint at(months->sectionViewportPosition(column) + months->sectionSize(column) / 2,
                        months->height() / 2);
        QTest::mouseClick(months->viewport(), Qt::LeftButton, {}, at);
        d.settle();
    };
    click(7);
    CHECK(d.work().page() == d.page);
    click(5);
    CHECK(d.work().page() == &d.work().bench());
    CHECK(d.shown().month == month("2026-06"));
}

TEST_CASE("The next month starts from the cursor's month: one step, then the Bench") {
    AlmanacDesk d;
    for (int i = 0; i < 3; ++i) d.press(Qt::Key_Left);
    REQUIRE(d.here() == "box-squat 2026-11");
    CHECK(d.start().text().toStdString() == "&Start March 2027 from November 2026");
    d.press(Qt::Key_S, Qt::AltModifier); // a button pressed by its key takes a moment
    CHECK(QTest::qWaitFor([&] { return d.work().page() == &d.work().bench(); }));
    REQUIRE(d.shown().month == month("2027-03"));
    CHECK(d.shown().sections == d.gym().block(month("2026-11"))->sections);
    int stale = 0;
    for (const Finding& f : d.work().draft().verdict().findings)
        if (f.rule == "staleness" && slotAt(d.shown(), f.place)) {
            ++stale;
            CHECK(d.work().draft().marks().count(f.place) == 1);
        }
    CHECK(stale > 0);
    CHECK(d.work().draft().marks().size() >= static_cast<std::size_t>(stale));
    d.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK_FALSE(d.gym().block(month("2027-03")));
}

TEST_CASE("The Month menu starts the next month from the one on show") {
    AlmanacDesk d;
    d.work().draft().showMonth(month("2026-05"));
    QAction* copy = d.window.actions().find(QStringLiteral("copy-shown"));
    REQUIRE(copy);
    copy->trigger();
    REQUIRE(d.shown().month == month("2027-03"));
    CHECK(d.shown().sections == d.gym().block(month("2026-05"))->sections);
}

TEST_CASE("No month starts from one without a block, nor in a file that can't be written") {
    AlmanacDesk d;
    for (int i = 0; i < 6; ++i) d.press(Qt::Key_Left);
    REQUIRE(d.here() == "box-squat 2026-08");
    CHECK_FALSE(d.start().isEnabled());
    d.press(Qt::Key_Left);
    CHECK(d.start().isEnabled());
    d.file->full = true;
    d.start().click();
    d.settle();
    CHECK(d.notice() == QStringLiteral("The disk is full."));
    CHECK(d.work().page() == d.page);
    CHECK(d.gym().blocks.size() == 13);
}

TEST_CASE("The filter takes words at once and keeps the cursor on its line and month") {
    AlmanacDesk d;
    d.press(Qt::Key_Left);
    for (int i = 0; i < 2; ++i) d.press(Qt::Key_Down);
    REQUIRE(d.here() == "floor-press 2027-01");
    d.press(Qt::Key_F, Qt::AltModifier);
    REQUIRE(QApplication::focusWidget() == &d.filter());
    d.type(d.filter(), QStringLiteral("horizontal"));
    CHECK(d.exercises().almanac().rowCount() == 4); // two headings, two exercises
    d.exercises().setFocus();
    CHECK(d.here() == "floor-press 2027-01");
    const auto sentence = [&d] {
        return d.page->findChild<QLabel*>(QStringLiteral("sentence"))->text();
    };
    CHECK(sentence().startsWith(QStringLiteral("floor-press, January 2027: used")));
    d.filter().setText(QStringLiteral("banana"));
    CHECK(sentence().isEmpty());
    CHECK(d.exercises().almanac().rowCount() == 0);
    d.turns().setFocus();
    for (int i = 0; i < 9; ++i) d.press(Qt::Key_Down); // past the empty table
    CHECK(d.here() == "knee : hip 2027-01");
}

TEST_CASE("The three tables scroll through the months together, the names stay") {
    Gym gym = almanacGym();
    for (int m = 14; m < 120; ++m)
        gym.put(almanacBlock(month("2026-01").plus(m), {{"box-squat", false}}));
    AlmanacDesk d(std::move(gym));
    auto* span = d.page->findChild<QComboBox*>();
    CHECK(d.exercises().almanac().columnCount() == 24);
    span->setCurrentIndex(span->count() - 1);
    d.settle();
    REQUIRE(d.exercises().almanac().columnCount() == 120);
    QScrollBar* bar = d.exercises().horizontalScrollBar();
    CHECK(bar->value() == bar->maximum()); // at the month on show, the latest
    const int names = d.exercises().verticalHeader()->width();
    d.press(Qt::Key_Home, Qt::NoModifier, &d.exercises());
    CHECK(d.page->month() == month("2026-01"));
    for (AlmanacView* view : {&d.turns(), &d.exercises(), &d.ratios()}) {
        CHECK(view->horizontalScrollBar()->value() == 0);
        CHECK(view->columnViewportPosition(3) == d.turns().columnViewportPosition(3));
        CHECK(view->verticalHeader()->width() == names);
    }
}

TEST_CASE("An edit of the month on show is in the Almanac when it is seen again") {
    AlmanacDesk d;
    d.press(Qt::Key_1, Qt::AltModifier);
    REQUIRE(*removeMonth(d.work().gym(), month("2027-02")));
    d.press(Qt::Key_5, Qt::AltModifier);
    CHECK(d.exercises().almanac().columnCount() == 13);
    CHECK(d.here() == "box-squat 2027-01");
    d.press(Qt::Key_Z, Qt::ControlModifier); // while it is seen
    CHECK(d.exercises().almanac().columnCount() == 14);
}

} // namespace bw::test
