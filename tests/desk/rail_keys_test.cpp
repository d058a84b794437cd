// SPDX-License-Identifier: GPL-3.0-or-later
// The minute rail driven by keys and pointer, and what it tells a screen reader.
#include "desk/bench/minute_rail.hpp"
#include "desk/bench/minute_rail_words.hpp"
#include "desk/rail_gym.hpp"
#include "sheets/ink.hpp"
#include "support/catch.hpp"

#include <QAccessible>
#include <QHelpEvent>
#include <QSignalSpy>
#include <QTest>
#include <QToolTip>

using namespace bw;
using namespace bw::test;

namespace {
struct Rail : RailGym {
    explicit Rail(int classMinutes = 20) : Rail(railGymOf(classMinutes)) {}
    explicit Rail(Gym gym) : RailGym(std::move(gym)), rail(*draft, nullptr) {
        rail.resize(1000, rail.sizeHint().height());
        rail.show();
        rail.activateWindow();
        rail.setFocus();
        (void)QTest::qWaitForWindowActive(&rail);
    }
    void press(Qt::Key key) { QTest::keyClick(&rail, key); }
    RailGeometry geometry() const { return railGeometry(rail.rect(), rail.plan(), rail.font()); }
    QPoint middleOf(std::size_t piece) const {
        return geometry()
            .pieceRect(rail.plan().pieces[piece])
            .adjusted(0, 0, 0, -24)
            .center()
            .toPoint();
    }
    QString tipAt(QPoint point) {
        QToolTip::hideText();
        (void)QTest::qWaitFor([] { return !QToolTip::isVisible(); });
        QHelpEvent help(QEvent::ToolTip, point, rail.mapToGlobal(point));
        QCoreApplication::sendEvent(&rail, &help);
        return QToolTip::isVisible() ? QToolTip::text() : QString();
    }
    MinuteRail rail;
};

QColor over(QColor below, QColor above, double alpha) {
    const auto mix = [&](int b, int a) { return static_cast<int>(b + (a - b) * alpha); };
    return {mix(below.red(), above.red()), mix(below.green(), above.green()),
            mix(below.blue(), above.blue())};
}
} // namespace

TEST_CASE("Right and Left walk over the sections, and Enter goes to one") {
    Rail desk;
    QSignalSpy picked(&desk.rail, &MinuteRail::picked);
    CHECK(desk.rail.cursor() == Place{0});
    desk.press(Qt::Key_Right);
    CHECK(desk.rail.cursor() == Place{1});
    CHECK(desk.draft->place().isSession()); // walking alone moves nothing else
    desk.press(Qt::Key_Return);
    CHECK(desk.draft->place() == Place{1});
    CHECK(picked.count() == 1);
    desk.press(Qt::Key_Left);
    desk.press(Qt::Key_Left);
    CHECK(desk.rail.cursor() == Place{0});
    desk.press(Qt::Key_End);
    CHECK(desk.rail.cursor() == Place{1});
    desk.press(Qt::Key_Home);
    CHECK(desk.rail.cursor() == Place{0});
}

TEST_CASE("Down leads into the groups of a section, Up back to it") {
    Rail desk;
    desk.press(Qt::Key_Right);
    desk.press(Qt::Key_Down);
    CHECK(desk.rail.cursor() == Place{1, 0});
    desk.press(Qt::Key_Right);
    desk.press(Qt::Key_Space);
    CHECK(desk.draft->place() == Place{1, 1});
    desk.press(Qt::Key_Down); // nothing below a group
    CHECK(desk.rail.cursor() == Place{1, 1});
    desk.press(Qt::Key_Up);
    CHECK(desk.rail.cursor() == Place{1});
}

TEST_CASE("A click goes to the section, or to the group below its name") {
    Rail desk;
    QTest::mouseClick(&desk.rail, Qt::LeftButton, {}, desk.middleOf(2));
    CHECK(desk.draft->place() == Place{1});
    const QRectF c = desk.geometry().groupRect(desk.rail.plan().pieces[2].groups[1]);
    QTest::mouseClick(&desk.rail, Qt::LeftButton, {}, c.center().toPoint());
    CHECK(desk.draft->place() == Place{1, 1});
    QTest::mouseClick(&desk.rail, Qt::LeftButton, {}, desk.middleOf(0)); // the opening has no rows
    CHECK(desk.draft->place() == Place{1, 1});
}

TEST_CASE("The rail follows the place of the coach, from a slot to its group") {
    Rail desk;
    desk.draft->setPlace({1, 1, 0});
    CHECK(desk.rail.cursor() == Place{1, 1});
    desk.draft->setPlace({});
    CHECK(desk.rail.cursor() == Place{0});
}

TEST_CASE("The pointer tells planned, short, long and budget, of the opening too") {
    Rail desk;
    CHECK(desk.tipAt(desk.middleOf(2)) == pieceSentence(desk.rail.plan().pieces[2]));
    CHECK(desk.tipAt(desk.middleOf(0)) == "Opening: 3:00.");
    CHECK(desk.tipAt({3, 3}).isEmpty()); // no piece there
}

TEST_CASE("A screen reader hears what the rail is, its sum, and the piece under the cursor") {
    Rail desk;
    QAccessibleInterface* rail = QAccessible::queryAccessibleInterface(&desk.rail);
    REQUIRE(rail != nullptr);
    CHECK(rail->role() == QAccessible::Chart);
    CHECK(rail->text(QAccessible::Description) == railSummary(desk.rail.plan()));
    CHECK(rail->state().focusable);
    desk.press(Qt::Key_Right);
    CHECK(rail->text(QAccessible::Name).toStdString() ==
          "Minute rail. " + pieceSentence(desk.rail.plan().pieces[2]).toStdString());
}

TEST_CASE("The rail and its words change while a dose is typed") {
    Rail desk;
    desk.draft->preview([](Block& b) { b.sections[0].groups[0].rounds = rounds(3, 3); });
    CHECK(desk.rail.accessibleDescription().contains("Warm-up 2:12 in")); // 3 * 24 + 2 * 30 s
    desk.draft->endPreview();
    CHECK(desk.rail.accessibleDescription().contains("Warm-up 1:18 in"));
}

TEST_CASE("A cursor on a group that has gone returns to the first section") {
    Rail desk;
    desk.draft->setPlace({1, 1});
    desk.draft->preview([](Block& b) { b.sections[1].groups.pop_back(); });
    CHECK(desk.rail.cursor() == Place{0});
    desk.press(Qt::Key_Right);
    CHECK(desk.rail.cursor() == Place{1});
}

TEST_CASE("Without a month, and without sections, the rail says so and takes every key") {
    Gym bare;
    bare.settings.classMinutes = 20;
    const bool month = GENERATE(false, true);
    if (month) bare.put(block("2026-09", {}));
    Rail desk(bare);
    CHECK(desk.rail.plan().pieces.size() == (month ? 2 : 0));
    for (const Qt::Key key : {Qt::Key_Right, Qt::Key_Left, Qt::Key_Down, Qt::Key_Up, Qt::Key_Home,
                              Qt::Key_End, Qt::Key_Return})
        desk.press(key);
    CHECK(desk.rail.cursor().isSession());
    CHECK(desk.rail.accessibleName() == "Minute rail");
    CHECK_FALSE(desk.rail.grab().isNull());
}

TEST_CASE("What runs over is framed in the colour of the wall, and nothing is when all fits") {
    const auto framed = [](int classMinutes) {
        Rail desk(classMinutes);
        const RailGeometry g = desk.geometry();
        const QImage image = desk.rail.grab().toImage();
        const double x = g.x(desk.rail.plan().pieces.back().end) - 12;
        const double scale = image.devicePixelRatio();
        int count = 0;
        for (double y = g.bar.bottom() - 3; y <= g.bar.bottom(); y += 1 / scale)
            count += image.pixelColor(QPoint(int(x * scale), int(y * scale))) == inks().wall;
        return count > 0;
    };
    CHECK(framed(10));
    CHECK_FALSE(framed(20));
}

TEST_CASE("Every word on the rail keeps 4.5 or 7 to 1 on its ground in every theme") {
    for (const int set : {0, 1, 2, 3}) {
        const Inks& k = inksOf(set % 2 == 1, set >= 2);
        const double least = set >= 2 ? 7 : 4.5;
        for (std::size_t i = 0; i < kCount<SectionKind>; ++i) {
            INFO("set " << set << ", section " << i);
            CHECK(contrast(k.onSection[i], k.section[i]) >= least);
            CHECK(contrast(k.onSection[i], over(k.section[i], k.onSection[i], 0.1)) >= least);
            CHECK(contrast(k.onSection[i], over(k.section[i], Qt::white, 150 / 255.0)) >= least);
            CHECK(contrast(Qt::white, k.onSection[i]) >= least);
        }
        CHECK(contrast(k.ink, over(k.paper, k.line, k.highContrast ? 0.12 : 0.75)) >=
              least); // opening and closing
        CHECK(contrast(k.wall, k.paper) >= least);
        CHECK(contrast(k.quiet, k.paper) >= least);
    }
}
