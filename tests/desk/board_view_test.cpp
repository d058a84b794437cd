// SPDX-License-Identifier: GPL-3.0-or-later
// The board driven by keys, with a clock that the test sets.
#include "desk/board/board_view.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/workspace.hpp"
#include "desk/rail_gym.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QApplication>
#include <QPushButton>
#include <QTest>

using namespace bw;
using namespace bw::test;

namespace {
struct OnTheWall : RailGym {
    explicit OnTheWall(Gym gym = railGymOf(20))
        : RailGym(std::move(gym)), view(*draft, nullptr, [this] { return now; }) {
        view.resize(1280, 720);
        view.show();
        (void)QTest::qWaitForWindowExposed(&view);
    }
    void press(Qt::Key key) { QTest::keyClick(&view, key); }
    void wait(int seconds) { now += std::chrono::seconds(seconds); }
    [[nodiscard]] int elapsed() const { // seconds; -1: not started
        const auto time = view.moment().time.elapsed;
        return time ? static_cast<int>(time->count() / 1000) : -1;
    }
    [[nodiscard]] std::string section() const {
        return view.board().sections[view.moment().section].part.name.toStdString();
    }

    Millis now{1'000'000};
    BoardView view;
};
} // namespace

TEST_CASE("The clock of a section counts from the key that started it") {
    OnTheWall wall;
    CHECK(wall.section() == "Warm-up");
    wall.wait(30);
    CHECK(wall.elapsed() == -1);
    wall.press(Qt::Key_Space);
    CHECK(wall.section() == "Warm-up");
    wall.wait(75);
    CHECK(wall.elapsed() == 75);
    wall.press(Qt::Key_Right);
    CHECK(wall.section() == "Strength");
    CHECK(wall.elapsed() == 0);
    wall.wait(20);
    CHECK(wall.elapsed() == 20);
}

TEST_CASE("Going back finds the earlier clock still going, and on again the later one") {
    OnTheWall wall;
    wall.press(Qt::Key_Left); // nothing before the first
    CHECK(wall.section() == "Warm-up");
    wall.press(Qt::Key_Space);
    wall.wait(60);
    wall.press(Qt::Key_Space);
    wall.wait(10);
    wall.press(Qt::Key_Left);
    CHECK(wall.section() == "Warm-up");
    CHECK(wall.elapsed() == 70);
    wall.press(Qt::Key_Right);
    CHECK(wall.section() == "Strength");
    CHECK(wall.elapsed() == 10);
    for (int i = 0; i < 9; ++i) wall.press(Qt::Key_Right); // nothing after the last
    CHECK(wall.section() == "Strength");
}

TEST_CASE("A pause stops the clocks, and R starts the section's anew") {
    OnTheWall wall;
    wall.press(Qt::Key_P); // nothing to pause yet
    CHECK_FALSE(wall.view.moment().time.paused);
    wall.press(Qt::Key_Space);
    wall.wait(40);
    wall.press(Qt::Key_P);
    wall.wait(100);
    CHECK(wall.view.moment().time.paused);
    CHECK(wall.elapsed() == 40);
    wall.press(Qt::Key_P);
    wall.wait(5);
    CHECK_FALSE(wall.view.moment().time.paused);
    CHECK(wall.elapsed() == 45);
    wall.press(Qt::Key_R);
    wall.wait(3);
    CHECK(wall.elapsed() == 3);
}

TEST_CASE("The planned time is the one that the Bench shows for the week") {
    OnTheWall wall; // rail_gym.hpp: warm-up 78 s; strength 60 s of talk, 247.5 s, 90 s rest, 120 s
    const auto& sections = wall.view.board().sections;
    REQUIRE(sections.size() == 2);
    CHECK(sections[0].part.planned == Millis{78'000});
    CHECK(sections[1].part.planned == Millis{518'000}); // 517.5 s to the even second
}

TEST_CASE("L shows the loads of the section and the exercises again") {
    Gym gym = railGymOf(20);
    gym.put(Member{MemberId::parse("m-1").value(), "Marit", {}, true, {}});
    OnTheWall wall(std::move(gym));
    const QImage rows = wall.view.grab().toImage();
    wall.press(Qt::Key_L);
    CHECK(wall.view.moment().loads);
    CHECK(wall.view.grab().toImage() != rows);
    wall.press(Qt::Key_L);
    CHECK_FALSE(wall.view.moment().loads);
    CHECK(wall.view.grab().toImage() == rows);
}

TEST_CASE("The board reads itself out: section, time, exercises, what comes next") {
    OnTheWall wall;
    wall.press(Qt::Key_Space);
    wall.wait(88);
    wall.press(Qt::Key_P);
    wall.press(Qt::Key_P);
    CHECK(wall.view.accessibleName().toStdString() ==
          "Board: Warm-up, section 1 of 2. 1:28, planned 1:18, 0:10 over");
    CHECK(wall.view.accessibleDescription().contains("A1 squat, 8"));
    CHECK(wall.view.accessibleDescription().contains("Next: Strength"));
}

TEST_CASE("The picture follows the clock and the draft") {
    OnTheWall wall;
    wall.press(Qt::Key_Space);
    const QImage before = wall.view.grab().toImage();
    wall.wait(1);
    CHECK(wall.view.grab().toImage() != before);
    wall.now -= std::chrono::seconds(1);
    CHECK(wall.view.grab().toImage() == before);
    wall.draft->preview([](Block& b) { b.sections[0].groups[0].slots[0].dose = reps(3, 3); });
    CHECK(wall.view.grab().toImage() != before);
    CHECK(wall.elapsed() == 0);
}

TEST_CASE("Without a month the board says so, and every key but leaving does nothing") {
    OnTheWall wall{Gym{}};
    for (const Qt::Key key : {Qt::Key_Space, Qt::Key_Left, Qt::Key_P, Qt::Key_R, Qt::Key_L})
        wall.press(key);
    CHECK(wall.view.accessibleName() == "Board. This month has nothing to show yet.");
    wall.press(Qt::Key_Escape);
    CHECK_FALSE(wall.view.isVisible());
}

TEST_CASE("F11 opens the board over the whole screen, Esc goes back to the page") {
    FrameDesk d;
    d.openSmallGym();
    QWidget* page = d.work().page();
    d.press(Qt::Key_F11);
    auto* board = d.window.findChild<BoardView*>();
    REQUIRE(board != nullptr);
    CHECK(board->isFullScreen());
    QTest::keyClick(board, Qt::Key_Escape);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    CHECK(d.window.findChild<BoardView*>() == nullptr);
    CHECK(d.work().page() == page);
}

TEST_CASE("The Sheets open the board too") {
    FrameDesk d;
    d.openSmallGym();
    d.press(Qt::Key_7, Qt::AltModifier);
    for (auto* button : d.work().page()->findChildren<QPushButton*>())
        if (button->text() == QStringLiteral("Sh&ow on the wall")) button->click();
    auto* board = d.window.findChild<BoardView*>();
    REQUIRE(board != nullptr);
    QTest::keyClick(board, Qt::Key_F11);
    CHECK_FALSE(board->isVisible());
}

TEST_CASE("Every sheet as PDF is in the menu, and asks for a folder") {
    FrameDesk d;
    d.openSmallGym();
    int asked = 0;
    prompts().openFolder = [&](QWidget*, const QString&, const QString&) {
        ++asked;
        return std::optional<QString>();
    };
    d.window.actions().find(QStringLiteral("save-all-pdf"))->trigger();
    CHECK(asked == 1);
    CHECK(d.work().page()->inherits("bw::SheetsPage"));
}
