// SPDX-License-Identifier: GPL-3.0-or-later
// Gym and kit: what is typed there is stored at once, what can't be is said beside the cell, and
// what goes with kit is told.
#include "desk/bench/cell_editor.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/start_page.hpp"
#include "desk/frame/workspace.hpp"
#include "desk/gym/gym_lines.hpp"
#include "desk/gym/gym_page.hpp"
#include "desk/gym/gym_table.hpp"
#include "desk/gym/kit_groups.hpp"
#include "desk/gym/kit_model.hpp"
#include "desk/gym/kit_table.hpp"
#include "desk/rail_gym.hpp"
#include "edit/gym_verbs.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QTest>

#include <set>

using namespace bw;
using namespace bw::test;

namespace {
const KitId kBell = kit("kettlebell");

// A month with goblet squats, in a gym that owns bells but nothing that does instead.
Gym oneBell() {
    Gym gym;
    layOver(gym, shippedShelf());
    KitItem bells = *gym.findKit(kBell);
    bells.units = 8;
    gym.put(bells);
    gym.put(block("2026-09", {section(SectionKind::Strength,
                                      {group(rounds(2, 2), secondsRange(60, 60),
                                             {slot("goblet-squat", reps(8, 8)), Slot{}})})}));
    return gym;
}

struct Desk : RailGym {
    Desk() : Desk(oneBell()) {}
    explicit Desk(Gym gym) : RailGym(std::move(gym)), page(*draft, nullptr) {
        table = page.findChild<KitTable*>();
        model = page.findChild<KitModel*>();
        lines = page.findChild<GymTable*>();
        page.resize(1180, 640);
        page.show();
        page.activateWindow();
        (void)QTest::qWaitForWindowActive(&page);
        go("kettlebell");
    }
    void go(const char* id, int column = KitModel::Name) {
        table->setFocus();
        table->setCurrentIndex(model->index(model->rowOf(kit(id)), column));
    }
    void goLine(GymField field) {
        lines->setFocus();
        const auto* rows = page.findChild<GymLines*>();
        lines->setCurrentIndex(rows->index(rows->rowOf(field), GymLines::Label));
    }
    static CellEditor* type(QWidget* on, const char* text) {
        QTest::keyClick(on, Qt::Key_Return);
        auto* editor = on->findChild<CellEditor*>();
        REQUIRE(editor != nullptr);
        editor->selectAll();
        QTest::keyClicks(editor, text);
        return editor;
    }
    static void enter(CellEditor* editor) {
        QTest::keyClick(editor, Qt::Key_Return);
        QCoreApplication::processEvents(); // what is typed is taken from the loop
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    const KitItem& at(const char* id) const { return *open->gym().findKit(kit(id)); }
    QString shown(const char* label) const {
        const auto* found = page.findChild<QLabel*>(QLatin1String(label));
        return found && found->isVisible() ? found->text() : QString();
    }
    QString beside(const QWidget* view) const {
        const auto* found = view->findChild<QLabel*>(QStringLiteral("cell-trouble"));
        return found && found->isVisible() ? found->text() : QString();
    }

    GymPage page;
    KitTable* table;
    KitModel* model;
    GymTable* lines;
};
} // namespace

TEST_CASE("Every kind of kit stands in the table once, under a part, with who needs it") {
    Desk desk;
    QAbstractItemModelTester tester(desk.model,
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    std::set<std::string> seen;
    int heads = 0;
    for (int row = 0; row < desk.model->rowCount(); ++row) {
        const KitItem* item = desk.model->itemAt(row);
        if (item) CHECK(seen.insert(item->id.text()).second);
        if (desk.model->index(row, 0).data(kHeadRole).toBool()) ++heads;
    }
    CHECK(seen.size() == desk.open->gym().kit.size());
    CHECK(heads == static_cast<int>(kitGroups(desk.open->gym()).size()));
    CHECK(kitGroups(desk.open->gym()).back().kit.empty()); // all that is shipped has its part
    const int row = desk.model->rowOf(kBell);
    const KitUse use = kitUses(desk.open->gym().shelf).at(kBell);
    CHECK(desk.model->index(row, KitModel::Can).data().toInt() == use.can);
    CHECK(use.can > use.must);
    CHECK(desk.shown("gym-about").contains(QStringLiteral("In September 2026: A1.")));
}

TEST_CASE("Space ticks kit and unticks it, says what goes with it, and is one step") {
    Desk desk;
    QTest::keyClick(desk.table, Qt::Key_Space);
    CHECK(desk.at("kettlebell").units == 0);
    CHECK(desk.shown("gym-lost").contains(QStringLiteral("can't be done here now: ")));
    CHECK(desk.shown("gym-lost").contains(QStringLiteral("September 2026 stands on it in A1.")));
    REQUIRE(*desk.open->undo());
    CHECK(desk.at("kettlebell").units == 8);
    CHECK(desk.shown("gym-lost").isEmpty());
    desk.go("mat");
    QTest::keyClick(desk.table, Qt::Key_Space);
    CHECK(desk.at("mat").units == 12);
    CHECK(desk.file->stored.findKit(kit("mat"))->units == 12);
    CHECK(desk.shown("gym-lost").isEmpty());
}

TEST_CASE("A click anywhere on the box of a line ticks it once") {
    Desk desk;
    desk.page.resize(1600, 640);
    QCoreApplication::processEvents();
    desk.go("mat");
    const QRect cell = desk.table->visualRect(desk.table->currentIndex());
    for (const int x : {5, 12, 20})
        for (const int y : {2, cell.height() / 2, cell.height() - 3}) {
            const bool owned = desk.at("mat").units > 0;
            INFO(x << ", " << y);
            QTest::mouseClick(desk.table->viewport(), Qt::LeftButton, {},
                              cell.topLeft() + QPoint(x, y));
            CHECK((desk.at("mat").units > 0) != owned);
        }
}

TEST_CASE("A figure on a name is how many; weights are typed as a list; Enter goes down") {
    Desk desk;
    QTest::keyClick(desk.table, Qt::Key_6);
    auto* editor = desk.table->findChild<CellEditor*>();
    REQUIRE(editor);
    CHECK(editor->text() == QStringLiteral("6"));
    Desk::enter(editor);
    CHECK(desk.at("kettlebell").units == 6);
    CHECK(desk.table->currentIndex().row() == desk.model->rowOf(kBell) + 1);
    desk.go("kettlebell", KitModel::Loads);
    Desk::enter(Desk::type(desk.table, "8x2, 12x4, 16"));
    CHECK(desk.at("kettlebell").loads.size() == 3);
    CHECK(desk.at("kettlebell").units == 7);
    desk.go("kettlebell", KitModel::Claimed);
    QTest::keyClick(desk.table, Qt::Key_Space);
    CHECK(desk.at("kettlebell").claim == Claim::Set);
    CHECK(desk.at("kettlebell").units == 7);
    desk.go("kettlebell", KitModel::Loads);
    QTest::keyClick(desk.table, Qt::Key_Delete);
    CHECK(desk.at("kettlebell").loads.empty());
    desk.go("barbell", KitModel::Plates);
    Desk::enter(Desk::type(desk.table, "20x8, 1.25x4"));
    CHECK(desk.at("barbell").plates.size() == 2);
    for (int step = 0; step < 5; ++step) REQUIRE(*desk.open->undo());
    CHECK(desk.open->undoText() == nullptr);
    CHECK(desk.at("kettlebell").units == 8);
}

TEST_CASE("What can't be read keeps the cell open, says so beside it, and nothing is stored") {
    Desk desk;
    desk.go("kettlebell", KitModel::Loads);
    CellEditor* editor = Desk::type(desk.table, "8 or so");
    Desk::enter(editor);
    CHECK(editor->isVisible());
    CHECK(desk.beside(desk.table).contains(QStringLiteral("such as 8x2, 12x4, 16")));
    CHECK(desk.open->undoText() == nullptr);
    QTest::keyClick(editor, Qt::Key_Backspace);
    CHECK(desk.beside(desk.table).isEmpty());
    QTest::keyClick(editor, Qt::Key_Escape);
    CHECK(desk.at("kettlebell").loads.empty());
    desk.goLine(GymField::Places);
    editor = Desk::type(desk.lines, "many");
    Desk::enter(editor);
    CHECK(desk.beside(desk.lines).contains(QStringLiteral("from 1 to 400")));
    editor->selectAll();
    QTest::keyClicks(editor, "16");
    Desk::enter(editor);
    CHECK(desk.open->gym().settings.places == 16);
    CHECK(desk.beside(desk.lines).isEmpty());
}

TEST_CASE("A full disk is told beside the cell, and the kit stays as it was") {
    Desk desk;
    desk.file->full = true;
    QTest::keyClick(desk.table, Qt::Key_Space);
    CHECK(desk.beside(desk.table).contains(QStringLiteral("The disk is full.")));
    CHECK(desk.at("kettlebell").units == 8);
    CHECK(desk.shown("gym-lost").isEmpty());
}

TEST_CASE("The last line takes another kind of kit, and letters look for a name") {
    Desk desk;
    QApplication::setKeyboardInputInterval(60'000); // however slow the machine
    QTest::keyClick(desk.table, Qt::Key_S);
    QTest::keyClick(desk.table, Qt::Key_L);
    QTest::keyClick(desk.table, Qt::Key_E);
    CHECK(desk.model->itemAt(desk.table->currentIndex().row())->id == kit("sled-lane"));
    desk.table->setCurrentIndex(desk.model->index(desk.model->rowCount() - 1, 0));
    Desk::enter(Desk::type(desk.table, "Kettlebell"));
    CHECK(desk.beside(desk.table).contains(QStringLiteral("in the table already")));
    Desk::enter(Desk::type(desk.table, "Steel club"));
    CHECK(desk.at("steel-club").units == 1);
    QCoreApplication::processEvents();
    const KitItem* line = desk.model->itemAt(desk.table->currentIndex().row());
    REQUIRE(line); // where its weights come next
    CHECK(line->id == kit("steel-club"));
    CHECK(desk.model->rowOf(kit("steel-club")) > desk.model->rowOf(kit("stability-ball")));
}

TEST_CASE("What is being typed is stored when the page goes") {
    RailGym gym(oneBell());
    {
        GymPage page(*gym.draft, nullptr);
        page.show();
        auto* table = page.findChild<GymTable*>();
        table->setFocus();
        QTest::keyClicks(table, "T");
        auto* editor = table->findChild<CellEditor*>();
        REQUIRE(editor);
        QTest::keyClicks(editor, "ide");
    }
    CHECK(gym.open->gym().settings.name == "Tide");
}

TEST_CASE("Gym and kit is a page from the menu, and Esc or Back leads back") {
    FrameDesk d;
    d.openSmallGym();
    d.press(Qt::Key_4, Qt::AltModifier);
    QWidget* shelf = d.work().page();
    d.press(Qt::Key_K, Qt::ControlModifier | Qt::ShiftModifier);
    REQUIRE(d.work().page()->inherits("bw::GymPage"));
    d.window.actions().find(QStringLiteral("house-limits"))->trigger();
    d.press(Qt::Key_Escape);
    CHECK(d.work().page() == shelf);
    d.press(Qt::Key_K, Qt::ControlModifier | Qt::ShiftModifier);
    for (auto* button : d.work().page()->findChildren<QPushButton*>())
        if (button->text() == QStringLiteral("Back")) button->click();
    CHECK(d.work().page() == shelf);
}

TEST_CASE("A new gym begins with its kit, and one key leads to the first month's first slot") {
    FrameDesk d;
    Q_EMIT d.window.startPage().emptyWanted(QStringLiteral("Tide Mill"));
    d.settle();
    REQUIRE(d.work().page()->inherits("bw::GymPage"));
    const auto press = [&](const char* text) {
        for (auto* button : d.work().page()->findChildren<QPushButton*>())
            if (button->isVisible() && button->text() == QLatin1String(text))
                return d.press(Qt::Key_Return, Qt::NoModifier, button);
        FAIL("there is no button " << text);
    };
    press("&Tick the usual kit");
    CHECK(d.gym().findKit(kBell)->units == 12);
    press("&Start the first month");
    REQUIRE(d.gym().blocks.size() == 1);
    CHECK(d.work().page()->inherits("bw::BenchPage"));
    CHECK(d.work().draft().place() == Place{0, 0, 0});
    for (const char c : {'g', 'o', 'b', 'l', 'e', 't'}) // the first opens the cell
        QTest::keyClick(QApplication::focusWidget(), c);
    d.press(Qt::Key_Return);
    d.settle();
    const Slot* slot = slotAt(d.shown(), {0, 0, 0});
    REQUIRE(slot);
    REQUIRE(slot->exercise.has_value());
    CHECK(d.gym().shelf.find(*slot->exercise)->name.find("oblet") != std::string::npos);
    CHECK(slot->dose.has_value());
}
