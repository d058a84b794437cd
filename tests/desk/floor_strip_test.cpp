// SPDX-License-Identifier: GPL-3.0-or-later
// The strip over the Minute rail, and the window around the Floor.
#include "desk/floor/floor_strip.hpp"
#include "desk/floor/floor_words.hpp"
#include "desk/floor_gym.hpp"
#include "desk/frame/status_line.hpp"
#include "desk/frame/workspace.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QLabel>
#include <QLocale>
#include <QSignalSpy>

namespace bw::test {

namespace {
struct Strip : FloorGym {
    explicit Strip(Gym gym = queueGym())
        : FloorGym(std::move(gym)), rail(*draft, nullptr), strip(*draft, runner, rail) {
        rail.resize(1000, rail.sizeHint().height());
        rail.show();
        REQUIRE(played());
    }
    MinuteRail rail;
    FloorStrip strip;
};
} // namespace

TEST_CASE("The strip shows when each section and the class end, to the scale of the rail") {
    Strip desk;
    const FloorAnswer said = desk.answer();
    REQUIRE(desk.strip.ends().size() == 3);
    CHECK(desk.strip.ends()[0].times == said.sections[0].end);
    CHECK(desk.strip.ends()[1].times == said.sections[1].end);
    CHECK(desk.strip.ends()[2].times == said.finish);
    CHECK(desk.strip.ends()[1].planned == desk.rail.plan().pieces[2].end);
    CHECK(desk.rail.xOf(said.finish.p90) <= desk.rail.xOf(desk.rail.plan().span));
    CHECK(desk.rail.stripRect().toAlignedRect() == desk.strip.geometry());
}

TEST_CASE("The strip is read end by end, and Enter leads to the Floor") {
    Strip desk;
    QSignalSpy wanted(&desk.strip, &FloorStrip::floorWanted);
    desk.strip.setFocus();
    QTest::keyClick(&desk.strip, Qt::Key_Home);
    CHECK(desk.strip.accessibleName().startsWith("Floor. Warm-up ends at "));
    QTest::keyClick(&desk.strip, Qt::Key_Right);
    CHECK(desk.strip.accessibleName().startsWith("Floor. Strength ends at "));
    QTest::keyClick(&desk.strip, Qt::Key_End);
    CHECK(desk.strip.accessibleName() == "Floor. " + floorSummary(desk.runner.usual()));
    QTest::keyClick(&desk.strip, Qt::Key_Return);
    CHECK(wanted.count() == 1);
}

TEST_CASE("A section that has gone is not shown beside the plan of another") {
    Strip desk;
    desk.draft->preview([](Block& b) { b.sections.erase(b.sections.begin()); });
    for (const auto& end : desk.strip.ends()) CHECK(end.place != Place{0});
    CHECK_FALSE(desk.strip.grab().isNull());
    REQUIRE(desk.played());
    CHECK(desk.strip.ends().size() == 2);
}

TEST_CASE("The strip says in words that kit is short, and shows nothing else") {
    Strip desk(queueGym(0));
    CHECK(desk.strip.ends().empty());
    CHECK(desk.strip.accessibleName().contains("can never be served"));
    CHECK_FALSE(desk.strip.grab().isNull());
}

TEST_CASE("A class far beyond the end widens the scale by half at most") {
    Strip desk;
    const ExactTime plan = desk.rail.plan().span;
    desk.rail.showFloor(std::chrono::hours(5), {});
    CHECK(desk.rail.plan().span > plan);
    CHECK(desk.rail.plan().span <= plan + plan / 2);
    desk.rail.showFloor({}, {});
    CHECK(desk.rail.plan().span <= plan);
}

TEST_CASE("Alt+2 shows the Floor, and the strip leads there") {
    FrameDesk d;
    d.openSmallGym();
    d.press(Qt::Key_2, Qt::AltModifier);
    CHECK(d.work().page()->inherits("bw::FloorPage"));
    d.press(Qt::Key_1, Qt::AltModifier);
    auto& strip = *d.window.findChild<FloorStrip*>();
    QTest::keyClick(&strip, Qt::Key_Return);
    CHECK(d.work().page()->inherits("bw::FloorPage"));
}

TEST_CASE("The status line says how many classes were played") {
    FrameDesk d;
    d.openSmallGym();
    auto& words = d.part<QLabel>("floor-line");
    REQUIRE(QTest::qWaitFor([&] { return !d.work().floor().behind(); }, 20'000));
    d.settle();
    CHECK(words.text() == "Floor: " + QLocale().toString(1000) + " classes played");
}

TEST_CASE("The window closes while classes are played") {
    for (int i = 0; i < 5; ++i) {
        FrameDesk d;
        d.openSmallGym();
        d.press(Qt::Key_2, Qt::AltModifier);
        QTest::qWait(i * 15);
        CHECK(d.window.close());
    }
}

} // namespace bw::test
