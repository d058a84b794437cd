// SPDX-License-Identifier: GPL-3.0-or-later
// The Floor driven by keys, and what it says.
#include "desk/floor/finish_chart.hpp"
#include "desk/floor/floor_lanes.hpp"
#include "desk/floor/floor_page.hpp"
#include "desk/floor/floor_words.hpp"
#include "desk/floor/wait_table.hpp"
#include "desk/floor_gym.hpp"
#include "support/catch.hpp"

#include <QAbstractItemModelTester>
#include <QAccessible>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>

#include <numeric>
#include <set>

using namespace bw;
using namespace bw::test;

namespace {
struct FloorDesk : FloorGym {
    explicit FloorDesk(Gym gym = queueGym())
        : FloorGym(std::move(gym)), page(*draft, runner, nullptr) {
        page.resize(1100, 600);
        page.show();
        page.activateWindow();
        (void)QTest::qWaitForWindowActive(&page);
        REQUIRE(played());
    }
    template <class W> W& part(const char* name) {
        W* found = page.findChild<W*>(QLatin1String(name));
        REQUIRE(found != nullptr);
        return *found;
    }
    FloorLanes& lanes() { return *page.findChild<FloorLanes*>(); }
    QString summary() { return part<QLabel>("floor-summary").accessibleName(); }
    QPushButton* applies(const QString& text) {
        for (auto* b : page.findChildren<QPushButton*>())
            if (b->isVisible() && b->accessibleName().contains(text)) return b;
        return nullptr;
    }
    void press(Qt::Key key) { QTest::keyClick(&lanes(), key); }

    FloorPage page;
};

int pieces(const LanePlan& plan) {
    int n = 0;
    for (const Lane& lane : plan.lanes) n += static_cast<int>(lane.pieces.size());
    return n;
}
} // namespace

TEST_CASE("The page says what the engine says") {
    FloorDesk desk;
    FloorOptions options;
    const FloorAnswer said = desk.answer(options);
    CHECK(desk.runner.wanted().answer->finishes == said.finishes);
    CHECK(desk.runner.wanted().answer->timeline == said.timeline);
    CHECK(desk.summary() == floorSummary(desk.runner.wanted()));
    CHECK(desk.summary().contains("end by " + floorClock(said.finish.p50)));
    CHECK(desk.summary().contains(floorClock(said.kit.front().wait.mean) + " for Sled"));
    options.members = 8;
    desk.part<QSpinBox>("floor-members").setValue(8);
    REQUIRE(desk.played());
    CHECK(desk.runner.wanted().answer->timeline == desk.answer(options).timeline);
    CHECK(desk.lanes().plan().lanes.size() == 8);
    CHECK(desk.summary().contains("8 members"));
    CHECK(desk.runner.usual().answer->members == 6); // the draft is judged by the gym's places
}

TEST_CASE("Start and mix ask for what they say") {
    FloorDesk desk;
    FloorOptions options;
    desk.part<QComboBox>("floor-start").setCurrentText("spread");
    desk.part<QComboBox>("floor-mix").setCurrentText("all the same, no chance");
    REQUIRE(desk.played());
    options.start = StartSpread{};
    options.steady = true;
    CHECK(desk.runner.wanted().answer->timeline == desk.answer(options).timeline);
    CHECK(desk.runner.wanted().answer->runs == 1);
    QTest::keyClick(&desk.part<QComboBox>("floor-start"), Qt::Key_End); // heads per group
    QTest::keyClicks(&desk.part<QLineEdit>("floor-heads"), "2 + 4");
    REQUIRE(desk.played());
    options.start = StartCounts{{2, 4}};
    CHECK(desk.runner.wanted().answer->timeline == desk.answer(options).timeline);
}

TEST_CASE("Head counts that can't be read, or fit nowhere, are told, and mended") {
    FloorDesk desk;
    desk.part<QComboBox>("floor-start").setCurrentText("heads per group");
    CHECK(desk.part<QLabel>("floor-trouble").text().contains("Write how many start"));
    desk.part<QLineEdit>("floor-heads").setText("two");
    CHECK(desk.part<QLabel>("floor-trouble").text().contains("“two”"));
    desk.part<QLineEdit>("floor-heads").setText("1 1 1 1");
    REQUIRE(desk.played());
    CHECK(desk.part<QLabel>("floor-trouble").text().contains("No section has 4 groups"));
    desk.part<QLineEdit>("floor-heads").setText("3, 3");
    REQUIRE(desk.played());
    CHECK(desk.lanes().isVisible());
    CHECK(desk.summary().contains("by head count"));
}

TEST_CASE("Every piece of every lane is reached by key, and told") {
    FloorDesk desk;
    FloorLanes& lanes = desk.lanes();
    lanes.setFocus();
    desk.press(Qt::Key_Home);
    std::set<const LanePiece*> reached;
    for (std::size_t lane = 0; lane < lanes.plan().lanes.size(); ++lane) {
        desk.press(Qt::Key_Home);
        for (std::size_t n = 0; n < lanes.plan().lanes[lane].pieces.size(); ++n) {
            reached.insert(lanes.piece());
            CHECK(lanes.words() == desk.part<QLabel>("floor-piece").text());
            CHECK(lanes.accessibleName() == "Lanes. " + lanes.words());
            desk.press(Qt::Key_Right);
        }
        desk.press(Qt::Key_Down);
    }
    CHECK(static_cast<int>(reached.size()) == pieces(lanes.plan()));
}

TEST_CASE("Words of a piece name member, clock, place, exercise and round") {
    FloorDesk desk;
    FloorLanes& lanes = desk.lanes();
    desk.press(Qt::Key_Home);
    CHECK(lanes.words().startsWith("Member 1 · 3:00–3:"));
    CHECK(lanes.words().endsWith("A1 squat, round 1"));
    desk.press(Qt::Key_W);
    CHECK(lanes.words().endsWith("waits for Sled, to do B1 Sled push"));
    CHECK(lanes.piece()->kind == LanePiece::Kind::Wait);
    desk.press(Qt::Key_Down);
    CHECK(lanes.lane() == 1);
    desk.press(Qt::Key_End);
    CHECK(lanes.piece() == &lanes.plan().lanes[1].pieces.back());
}

TEST_CASE("Up and Down stay at the same time, and a new answer keeps the place") {
    FloorDesk desk;
    FloorLanes& lanes = desk.lanes();
    for (int i = 0; i < 6; ++i) desk.press(Qt::Key_Right);
    const LanePiece from = *lanes.piece();
    desk.press(Qt::Key_Down);
    const Millis middle = from.from + (from.to - from.from) / 2;
    CHECK(lanes.piece()->from <= middle);
    const int lane = lanes.lane();
    const Millis at = lanes.piece()->from;
    desk.retitle("the same class");
    REQUIRE(desk.played());
    CHECK(lanes.lane() == lane);
    CHECK(lanes.piece()->from == at);
}

TEST_CASE("By kit, the lanes show who has it and how many wait for it, to the second") {
    FloorDesk desk;
    QTest::keyClick(&desk.part<QComboBox>("floor-order"), Qt::Key_Down);
    const LanePlan& plan = desk.lanes().plan();
    REQUIRE(plan.lanes.size() == 2); // the line, and the one sled
    const FloorAnswer said = desk.answer();
    CHECK(plan.lanes[1].pieces.size() == said.holds.size());
    Millis before{0}, waited{0}, expected{0};
    for (const LanePiece& piece : plan.lanes[1].pieces) {
        CHECK(piece.from >= before); // one at a time
        before = piece.to;
        CHECK(piece.place == Place{1, 0, 0});
    }
    for (const LanePiece& piece : plan.lanes[0].pieces)
        waited += piece.count * (piece.to - piece.from);
    for (const FloorRow& row : said.timeline)
        if (row.doing == FloorDoing::Wait) expected += row.to - row.from;
    CHECK(waited == expected);
    desk.press(Qt::Key_Down);
    desk.press(Qt::Key_Home);
    CHECK(desk.lanes().words().startsWith("Sled, 1 of 1 · "));
    CHECK(desk.lanes().words().endsWith("member 1, B1"));
    desk.press(Qt::Key_W);
    CHECK(desk.lanes().words().endsWith("wait") == desk.lanes().words().contains("members"));
}

TEST_CASE("By the load, members wait for the sled that they can push") {
    Gym gym = queueGym(3);
    KitItem sled = *gym.findKit(kit("sled"));
    for (const int kg : {10, 20, 40}) sled.loads[Mass::fromKg(kg).value()] = 1;
    gym.put(sled);
    for (const char* id : {"ada", "bo", "cy", "di", "eve", "flo"})
        gym.put(Member{MemberId::parse(id).value(), id, {}, true, {}});
    FloorDesk desk(gym);
    for (const Member& m : gym.members)
        desk.file->results.push_back({m.id,
                                      Date::parse("2026-08-31").value(),
                                      ex("sled-push"),
                                      1,
                                      40,
                                      {},
                                      Mass::fromKg(40).value(),
                                      {}});
    const MeanTime any = desk.runner.wanted().answer->wait.mean;
    QTest::keyClick(&desk.part<QCheckBox>("floor-loads"), Qt::Key_Space);
    REQUIRE(desk.played());
    CHECK(desk.runner.wanted().answer->wait.mean > any); // the one of 10 kg is too light for all
    QTest::keyClick(&desk.part<QCheckBox>("floor-loads"), Qt::Key_Space);
    REQUIRE(desk.played());
    CHECK(desk.runner.wanted().answer->wait.mean == any);
}

TEST_CASE("The lanes account for all of a member's time between opening and closing") {
    FloorDesk desk;
    const LanePlan& plan = desk.lanes().plan();
    for (const Lane& lane : plan.lanes) {
        Millis at = plan.opening;
        for (const LanePiece& piece : lane.pieces) {
            CHECK(piece.from == at);
            at = piece.to;
        }
        CHECK(at == plan.sections.back().to);
    }
    CHECK(plan.finish - plan.sections.back().to == desk.open->gym().settings.closing);
}

TEST_CASE("Enter leads from a piece to its rows, a wall of kit to the slot that lacks it") {
    FloorDesk desk;
    QSignalSpy picked(&desk.page, &FloorPage::picked);
    desk.press(Qt::Key_W);
    desk.press(Qt::Key_Return);
    CHECK(picked.count() == 1);
    CHECK(desk.draft->place() == Place{1, 0, 0});
    desk.draft->setPlace({});
    desk.setSled(0);
    REQUIRE(desk.played());
    CHECK_FALSE(desk.lanes().isVisible());
    CHECK(desk.summary() == "The class can't be played.");
    CHECK(desk.part<QLabel>("floor-trouble").text().contains("can never be served"));
    QPushButton* toRows = desk.page.findChild<QPushButton*>(QStringLiteral("floor-to-rows"));
    REQUIRE(toRows != nullptr);
    QTest::keyClick(toRows, Qt::Key_Space);
    CHECK(desk.draft->place() == Place{1, 0, 0});
    CHECK(picked.count() == 2);
}

TEST_CASE("Zoom widens the minutes around what is seen, and fits again") {
    FloorDesk desk;
    FloorLanes& lanes = desk.lanes();
    CHECK(lanes.zoom() == 1);
    for (int i = 0; i < 30; ++i) desk.press(Qt::Key_Plus);
    CHECK(lanes.zoom() == 12);
    desk.press(Qt::Key_End);
    CHECK_FALSE(lanes.grab().isNull());
    desk.press(Qt::Key_0);
    CHECK(lanes.zoom() == 1);
}

TEST_CASE("Applying a start is one step, and can be undone") {
    FloorDesk desk;
    QPushButton* apply = desk.applies("Apply: Start with");
    REQUIRE(apply != nullptr);
    const Block before = desk.stored();
    const MeanTime together = desk.answer().finish.mean;
    QTest::keyClick(apply, Qt::Key_Space);
    CHECK(std::holds_alternative<StartCounts>(desk.stored().sections[1].start));
    REQUIRE(desk.played());
    CHECK(desk.runner.wanted().answer->finish.mean < together);
    REQUIRE(desk.open->undo().ok());
    CHECK(desk.stored() == before);
    CHECK(desk.open->undoText() == nullptr);
}

TEST_CASE("A change that can't be stored is told and changes nothing") {
    FloorDesk desk;
    QSignalSpy failed(&desk.page, &FloorPage::failed);
    QPushButton* apply = desk.applies("Apply: Start with");
    REQUIRE(apply != nullptr);
    const Block before = desk.stored();
    desk.file->full = true;
    QTest::keyClick(apply, Qt::Key_Space);
    CHECK(failed.count() == 1);
    CHECK(desk.stored() == before);
}

TEST_CASE("Waits are a table that a screen reader can read, the longest first") {
    FloorDesk desk;
    auto& table = *desk.page.findChild<WaitTable*>();
    const QAbstractItemModelTester tester(table.model());
    REQUIRE(table.model()->rowCount() == 1);
    const FloorKitUse& use = desk.runner.wanted().answer->kit.front();
    const auto text = [&](WaitColumn c, int role = Qt::DisplayRole) {
        return table.model()->index(0, static_cast<int>(c)).data(role).toString();
    };
    CHECK(text(WaitColumn::Kit) == "Sled");
    CHECK(text(WaitColumn::Mean) == floorClock(use.wait.mean));
    CHECK(text(WaitColumn::P90) == floorClock(use.wait.p90));
    CHECK(text(WaitColumn::Busy) == percent(use.busy));
    CHECK(text(WaitColumn::Bar, Qt::AccessibleTextRole).contains("Sled, 1 in the gym"));
}

TEST_CASE("Finishes are counted in bins with a border at the class end, none of them lost") {
    using std::chrono::minutes;
    const std::vector<Millis> finishes{minutes(58), minutes(60), minutes(60) + Millis(1),
                                       minutes(61)};
    const FinishChart::Bins bins = FinishChart::binsOf(finishes, minutes(60));
    CHECK(std::accumulate(bins.counts.begin(), bins.counts.end(), 0) == 4);
    CHECK((minutes(60) - bins.first) % bins.width == Millis(0));
    int over = 0;
    for (std::size_t i = 0; i < bins.counts.size(); ++i)
        if (bins.first + bins.width * static_cast<int>(i) >= minutes(60)) over += bins.counts[i];
    CHECK(over == 2); // ending on the minute is not over it
    CHECK(FinishChart::binsOf({}, minutes(60)).counts.empty());
    CHECK(FinishChart::binsOf({minutes(60)}, minutes(60)).counts == std::vector{1});
}

TEST_CASE("Out of sight the page asks for nothing") {
    FloorDesk desk;
    desk.page.hide();
    const FloorAnswer* before = desk.runner.wanted().answer.get();
    desk.retitle("unseen");
    REQUIRE(desk.played());
    CHECK(desk.runner.wanted().answer.get() == before);
    desk.page.show();
    REQUIRE(desk.played());
    CHECK(desk.runner.wanted().block->title == "unseen");
}

TEST_CASE("Forty members stand in lanes that scroll to where the keyboard is") {
    FloorDesk desk;
    desk.part<QComboBox>("floor-mix").setCurrentText("all the same, no chance");
    desk.part<QSpinBox>("floor-members").setValue(40);
    REQUIRE(desk.played());
    CHECK(desk.lanes().plan().lanes.size() == 40);
    desk.press(Qt::Key_Home);
    for (int i = 0; i < 39; ++i) desk.press(Qt::Key_Down);
    CHECK(desk.lanes().lane() == 39);
    CHECK(desk.lanes().words().startsWith("Member 40 "));
}
