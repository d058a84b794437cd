// SPDX-License-Identifier: GPL-3.0-or-later
// The beam beside the sheet: what it weighs, and the way from a tally to its rows.
#include "desk/bench/beam_panel.hpp"
#include "desk/bench/beam_view.hpp"
#include "desk/bench/fold_head.hpp"
#include "desk/bench/sheet_model.hpp"
#include "desk/bench/tally_list.hpp"
#include "desk/bench/tally_model.hpp"
#include "desk/rail_gym.hpp"
#include "edit/block_verbs.hpp"
#include "edit/finding_verbs.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>

using namespace bw;
using namespace bw::test;

namespace {
BeamWeighing weighing(double over, double under) { return {{over, under}, {0.5, 2, true}}; }

// Sets of a session in the gym of the rail, averaged over a stair of low, open, open, open:
//   squat  0.25 x 2 in the warm-up + (2 + 3 x 2.5) / 4     press  (2 + 3 x 2.5) / 4     row  2
constexpr double kSquat = 2.875, kPress = 2.375, kRow = 2;

struct Desk : RailGym {
    Desk() : panel(nullptr) {
        side.resize(320, 700);
        panel = new BeamPanel(*draft, &side);
        auto* column = new QVBoxLayout(&side);
        column->addStretch(1);
        column->addWidget(panel);
        view = panel->findChild<BeamView*>();
        list = panel->findChild<TallyList*>();
        side.show();
        side.activateWindow();
        (void)QTest::qWaitForWindowActive(&side);
    }
    QModelIndex tally(Pattern p) const { return list->model()->index(static_cast<int>(p), 0); }
    FoldHead* head(const char* name) const {
        return panel->findChild<FoldHead*>(QLatin1String(name));
    }

    FrameDesk::Home home; // what it remembers
    QWidget side;
    BeamPanel* panel;
    BeamView* view;
    TallyList* list;
};
} // namespace

TEST_CASE("A beam is even at one to one, leans by the logarithm, and is down at five to two") {
    CHECK(weighing(3, 3).tilt() == Approx(0));
    CHECK(weighing(2.5, 1).tilt() == Approx(1));
    CHECK(weighing(1, 2.5).tilt() == Approx(-1));
    CHECK(weighing(9, 1).tilt() == 1);
    CHECK(weighing(2, 1).tilt() == Approx(-weighing(1, 2).tilt()));
    CHECK(weighing(1, 0).tilt() == 1); // nothing on the other side
    CHECK(weighing(0, 1).tilt() == -1);
    CHECK(weighing(0, 0).tilt() == 0);
}

TEST_CASE("Within the band, its ends included; nothing at all is within, one side alone is not") {
    CHECK(weighing(2, 1).within());
    CHECK(weighing(1, 2).within());
    CHECK_FALSE(weighing(2.01, 1).within());
    CHECK_FALSE(weighing(1, 0).within());
    CHECK_FALSE(weighing(0, 1).within());
    CHECK(weighing(0, 0).within());
}

TEST_CASE("The heavier side goes down") {
    const BeamGeometry g = BeamGeometry::of(QRectF(0, 0, 160, 100), QFont());
    CHECK(g.end(1, -50).y() > g.pivot.y());
    CHECK(g.end(1, 50).y() < g.pivot.y());
    CHECK(g.end(0, 50).y() == Approx(g.pivot.y()));
}

TEST_CASE("The beams weigh the month by this gym's bands, and say so in words") {
    RailGym gym;
    REQUIRE(*setLimit(*gym.open, "push-pull.block", LimitValue{1.2, 1.4, true}));
    const Gym& g = gym.open->gym();
    const auto scales = beamScales(g, gym.stored(), balancesOf(g, gym.stored()));
    REQUIRE(scales.size() == 2);
    CHECK(scales[0].month.ratio.over == Approx(kPress));
    CHECK(scales[0].month.ratio.under == Approx(kRow));
    CHECK(scales[0].month.band == LimitValue{1.2, 1.4, true});
    CHECK_FALSE(scales[0].month.within());
    CHECK(scales[0].monthText().toStdString() == "▲ month 1.19 in 1.2–1.4");
    CHECK(scales[0].windowText() == "no months before");
    CHECK(scales[0].spoken().toStdString() ==
          "This month: push 2.4 sets, pull 2.0 sets; ratio 1.19, band 1.2–1.4: outside its band. "
          "There are no months before.");
    CHECK(scales[1].month.ratio.over == Approx(kSquat));
    CHECK(scales[1].month.ratio.under == 0);
    CHECK(scales[1].monthText().toStdString() == "▲ month – in 0.5–2");
}

TEST_CASE("With months before, the window has its figures beside the month's") {
    Gym gym = railGymOf(20);
    Block before = *gym.latest();
    before.month = month("2026-08");
    before.sections[1].groups[0].slots.pop_back(); // no press
    gym.put(before);
    const Block& now = *gym.block(month("2026-09"));
    const auto scale = beamScales(gym, now, balancesOf(gym, now))[0];
    CHECK(scale.windowMonths == 2);
    CHECK(scale.window.ratio.over == Approx(kPress / 2));
    CHECK(scale.windowText().toStdString() == "● 2 months 0.59 in 0.75–1.25");
}

TEST_CASE("Tallies are a sound list, with the numbers of the balance, and spoken") {
    RailGym gym;
    TallyModel model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    QSignalSpy changed(&model, &TallyModel::dataChanged);
    const Balances balances = balancesOf(gym.open->gym(), gym.stored());
    model.show(balances, 1);
    CHECK(changed.count() == 1);
    model.show(balances, 1);
    CHECK(changed.count() == 1);
    REQUIRE(model.rowCount() == static_cast<int>(kCount<Pattern>));
    const QModelIndex squat = model.index(static_cast<int>(Pattern::Squat));
    CHECK(squat.data(TallyModel::MonthRole).toDouble() == Approx(kSquat));
    CHECK(squat.data(TallyModel::WindowRole).isNull());
    CHECK(squat.data(Qt::AccessibleTextRole).toString() == "squat: 2.9 sets a session");
    model.show(balances, 3);
    CHECK(squat.data(Qt::AccessibleTextRole).toString() ==
          "squat: 2.9 sets a session, 2.9 over 3 months");
}

TEST_CASE("A click on a tally marks the rows that feed it with what each brings") {
    Desk desk;
    QSignalSpy picked(desk.panel, &BeamPanel::picked);
    QTest::mouseClick(desk.list->viewport(), Qt::LeftButton, {},
                      desk.list->visualRect(desk.tally(Pattern::Squat)).center());
    const std::map<Place, QString> wanted{{{0, 0, 0}, "0.5"}, {{1, 0, 0}, "2.4"}};
    CHECK(desk.draft->marks() == wanted);
    CHECK(desk.draft->place() == Place{0, 0, 0});
    CHECK(picked.isEmpty());
    SheetModel sheet(*desk.draft);
    int marked = 0;
    for (int row = 0; row < sheet.rowCount(); ++row) {
        const QVariant mark = sheet.index(row, 0).data(SheetModel::MarkRole);
        if (mark.isNull()) continue;
        ++marked;
        CHECK(wanted.at(sheet.rows()[static_cast<std::size_t>(row)].place) == mark.toString());
    }
    CHECK(marked == 2);
}

TEST_CASE("Enter on a tally goes to its rows, Space marks them, arrows only walk") {
    Desk desk;
    QSignalSpy picked(desk.panel, &BeamPanel::picked);
    desk.list->setFocus();
    desk.list->setCurrentIndex(desk.tally(Pattern::HorizontalPush));
    CHECK(desk.draft->marks().empty());
    QTest::keyClick(desk.list, Qt::Key_Space);
    CHECK(desk.draft->marks().size() == 1);
    CHECK(desk.draft->place() == Place{1, 0, 1});
    CHECK(picked.isEmpty());
    QTest::keyClick(desk.list, Qt::Key_Down);
    CHECK(desk.list->currentIndex() == desk.tally(Pattern::VerticalPush));
    QTest::keyClick(desk.list, Qt::Key_Return); // nothing feeds it
    CHECK(desk.draft->marks().empty());
    CHECK(picked.isEmpty());
    desk.list->setCurrentIndex(desk.tally(Pattern::HorizontalPull));
    QTest::keyClick(desk.list, Qt::Key_Return);
    CHECK(desk.draft->place() == Place{1, 1, 0});
    CHECK(picked.count() == 1);
}

TEST_CASE(
    "The sides of the beams are walked by arrows, and lead to the rows of all their patterns") {
    Desk desk;
    QSignalSpy picked(desk.panel, &BeamPanel::picked);
    desk.view->setFocus();
    CHECK(desk.view->accessibleName().contains("Enter goes to the rows of push."));
    QTest::keyClick(desk.view, Qt::Key_Right);
    CHECK(desk.view->accessibleName().contains("Enter goes to the rows of pull."));
    QTest::keyClick(desk.view, Qt::Key_Return);
    CHECK(desk.draft->place() == Place{1, 1, 0});
    CHECK(picked.count() == 1);
    QTest::keyClick(desk.view, Qt::Key_Right);
    QTest::keyClick(desk.view, Qt::Key_Space);
    CHECK(desk.draft->marks().size() == 2); // knee: squats in warm-up and strength
    for (int i = 0; i < 9; ++i) QTest::keyClick(desk.view, Qt::Key_Left);
    CHECK(desk.view->accessibleName().contains("Enter goes to the rows of push."));
    QTest::mouseClick(desk.view, Qt::LeftButton, {}, {desk.view->width() - 20, 30}); // hip: none
    CHECK(desk.draft->marks().empty());
}

TEST_CASE("Marks go when the coach goes elsewhere, and when the block changes") {
    Desk desk;
    const std::map<Place, QString> rows{{{1, 0, 0}, "2.4"}};
    desk.draft->mark(rows, {1, 0, 0});
    desk.draft->setPlace({1, 0, 0}); // there already
    CHECK(desk.draft->marks() == rows);
    SECTION("elsewhere") { desk.draft->setPlace({0, 0, 0}); }
    SECTION("an edit") { REQUIRE(*removeAt(*desk.open, {month("2026-09"), {0, 0, 0}})); }
    CHECK(desk.draft->marks().empty());
}

TEST_CASE("The beam follows the draft while a cell is typed in") {
    Desk desk;
    const QString before = desk.view->accessibleDescription();
    desk.draft->preview([](Block& b) { b.sections[1].groups[1].rounds = rounds(4, 4); });
    CHECK(desk.view->accessibleDescription() != before);
    CHECK(desk.view->accessibleDescription().contains("pull 4.0 sets"));
    desk.draft->endPreview();
    CHECK(desk.view->accessibleDescription() == before);
}

TEST_CASE("Short of room the tallies fold first, then the beams; what the coach chose stays") {
    Desk desk;
    CHECK(desk.view->isVisible());
    CHECK(desk.list->isVisible());
    desk.side.resize(320, 400);
    QCoreApplication::processEvents();
    CHECK(desk.view->isVisible());
    CHECK_FALSE(desk.list->isVisible());
    desk.side.resize(320, 300);
    QCoreApplication::processEvents();
    CHECK_FALSE(desk.view->isVisible());
    QTest::keyClick(desk.head("beam-head"), Qt::Key_Space);
    CHECK(desk.view->isVisible());
    QTest::mouseClick(desk.head("tally-head"), Qt::LeftButton);
    CHECK(desk.list->isVisible());
    desk.side.resize(320, 310);
    QCoreApplication::processEvents();
    CHECK(desk.list->isVisible());
    BeamPanel again(*desk.draft, &desk.side);
    CHECK(again.findChild<FoldHead*>(QStringLiteral("tally-head"))->isChecked());
}

TEST_CASE("Without a month the beam is empty and nothing can be picked") {
    Gym bare;
    RailGym gym(bare);
    QWidget side;
    BeamPanel panel(*gym.draft, &side);
    auto* view = panel.findChild<BeamView*>();
    QTest::keyClick(view, Qt::Key_Return);
    QTest::keyClick(view, Qt::Key_Right);
    CHECK(view->patternsAt({20, 20}).empty());
    CHECK(gym.draft->marks().empty());
}
