// SPDX-License-Identifier: GPL-3.0-or-later
// What is found again at the next start: place, month, week, window and the parts of a page.
#include "desk/bench/bench_page.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/kept_view.hpp"
#include "desk/frame/remembered.hpp"
#include "desk/frame/workspace.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QGuiApplication>
#include <QMenu>
#include <QMenuBar>
#include <QScreen>
#include <QSplitter>
#include <QTest>

#include <fstream>

namespace bw::test {

namespace {
std::unique_ptr<OpenGym> gymFor() {
    return OpenGym::over(std::make_unique<MemoryFile>(threeMonths())).value();
}
QMenu* menuNamed(const QMenuBar& bar, const char* title) {
    for (QMenu* menu : bar.findChildren<QMenu*>())
        if (menu->title().remove(u'&') == QLatin1String(title)) return menu;
    throw std::runtime_error("no such menu");
}
} // namespace

TEST_CASE("Place, month and week are those of the last time, for the same gym file") {
    FrameDesk d;
    d.openSmallGym();
    d.press(Qt::Key_PageUp, Qt::ControlModifier);
    d.press(Qt::Key_1, Qt::ControlModifier);
    d.press(Qt::Key_3, Qt::AltModifier);
    d.window.close();
    MainWindow next;
    next.take(gymFor());
    CHECK(next.workspace()->page()->inherits("bw::StairPage"));
    CHECK(next.workspace()->draft().month()->text() == "2026-10");
    CHECK(next.workspace()->draft().week().number() == 1);
    CHECK_FALSE(keptView(d.home.folder / "other.bwgym"));
}

TEST_CASE("A month, week or place that is not there any more changes nothing") {
    FrameDesk d;
    d.openSmallGym();
    QWidget* bench = d.work().page();
    d.work().goBackTo({QStringLiteral("place-cellar"), month("1999-01"), 6});
    CHECK(d.work().page() == bench);
    CHECK(d.work().draft().month()->text() == "2026-11");
    CHECK(d.work().draft().week().number() == 2);
}

TEST_CASE("A part of a page that was dragged has its width again") {
    FrameDesk d;
    d.openSmallGym();
    auto* split = d.work().bench().findChild<QSplitter*>();
    const int before = split->sizes().value(1);
    QSplitterHandle* handle = split->handle(1);
    QTest::mousePress(handle, Qt::LeftButton, {}, handle->rect().center());
    QTest::mouseMove(handle, handle->rect().center() - QPoint(60, 0));
    QTest::mouseRelease(handle, Qt::LeftButton, {}, handle->rect().center() - QPoint(60, 0));
    d.settle();
    const int dragged = split->sizes().value(1);
    REQUIRE(dragged > before + 30);
    MainWindow next;
    next.showNormal();
    next.resize(d.window.size());
    d.settle();
    REQUIRE(next.size() == d.window.size());
    next.take(gymFor());
    d.settle();
    d.settle();
    CHECK(std::abs(next.workspace()->bench().findChild<QSplitter*>()->sizes().value(1) - dragged) <
          4);
}

TEST_CASE("A window is where it was, and on a screen when that one has gone") {
    FrameDesk d;
    d.window.setGeometry(40, 50, 700, 560);
    d.settle();
    d.window.close();
    {
        MainWindow next;
        CHECK(next.geometry() == QRect(40, 50, 700, 560));
        next.move(9000, 7000); // a screen that will be taken away
        next.show();
        d.settle();
        next.close();
    }
    MainWindow last;
    const QRect screen = QGuiApplication::primaryScreen()->availableGeometry();
    CHECK(screen.intersected(last.geometry()).width() > 300);
    CHECK(screen.intersected(last.geometry()).height() > 200);
}

TEST_CASE("A window that was maximised is so again") {
    FrameDesk d;
    d.window.showMaximized();
    d.settle();
    d.window.close();
    MainWindow next;
    CHECK((next.windowState() & Qt::WindowMaximized) != 0);
}

TEST_CASE("A recent file that has gone since the window was opened is not offered") {
    FrameDesk d;
    for (const char* name : {"here.bwgym", "gone.bwgym"}) {
        std::ofstream(d.home.folder / name) << "x";
        Remembered::opened(d.home.folder / name);
    }
    MainWindow window;
    std::filesystem::remove(d.home.folder / "gone.bwgym");
    QMenu* gym = menuNamed(*window.menuBar(), "Gym");
    Q_EMIT gym->aboutToShow();
    const QList<QAction*> offered = menuNamed(*window.menuBar(), "Open recent")->actions();
    REQUIRE(offered.size() == 1);
    CHECK(offered.front()->text().contains(QLatin1String("here.bwgym")));
}

} // namespace bw::test
