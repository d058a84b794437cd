// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet driven by keyboard, as a coach would.
#include "desk/bench/bench_page.hpp"
#include "desk/bench/cell_editor.hpp"
#include "desk/bench/draft.hpp"
#include "desk/bench/sheet_model.hpp"
#include "desk/bench/sheet_view.hpp"
#include "desk/floor/floor_runner.hpp"
#include "desk/frame/actions.hpp"
#include "edit/memory_file.hpp"
#include "edit/month_verbs.hpp"
#include "edit/shelf_verbs.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <QAbstractItemModelTester>
#include <QAbstractItemView>
#include <QCompleter>
#include <QLabel>
#include <QMimeData>
#include <QTest>

using namespace bw;
using namespace bw::test;

namespace {
Gym smallGym() {
    Gym gym;
    for (const auto& [id, name, pattern] :
         {std::tuple{"squat", "Goblet squat", Pattern::Squat},
          std::tuple{"press", "Floor press", Pattern::HorizontalPush},
          std::tuple{"band-row", "Band row", Pattern::HorizontalPull},
          std::tuple{"row", "Bench row", Pattern::HorizontalPull}}) {
        Exercise e = exercise(id, pattern);
        e.name = name;
        gym.shelf.put(e);
    }
    Slot wanted;
    wanted.patterns = {Pattern::HorizontalPull};
    gym.put(
        block("2026-08", {section(SectionKind::Strength, {group(rounds(2, 2), secondsRange(60, 60),
                                                                {slot("row", reps(5, 5))})})}));
    gym.put(block("2026-09",
                  {section(SectionKind::WarmUp,
                           {group(rounds(2, 2), secondsRange(0, 30), {slot("squat", reps(8, 8))})}),
                   section(SectionKind::Strength, {group(rounds(2, 3), secondsRange(60, 120),
                                                         {slot("squat", reps(5, 5)), wanted})})}));
    return gym;
}

struct Desk {
    Desk() {
        auto owned = std::make_unique<MemoryFile>(smallGym());
        file = owned.get();
        gym = OpenGym::over(std::move(owned)).value();
        draft = std::make_unique<Draft>(*gym);
        floor = std::make_unique<FloorRunner>(*draft);
        page = std::make_unique<BenchPage>(*draft, *floor, actions, nullptr);
        page->resize(1200, 640);
        page->show();
        page->activateWindow();
        sheet().setFocus();
        (void)QTest::qWaitForWindowActive(page.get());
    }
    SheetView& sheet() { return page->sheet(); }
    const Block& now() { return *gym->gym().block(month("2026-09")); }
    const Slot& slotNow(std::string_view place) { return *slotAt(now(), *placeFrom(now(), place)); }
    void go(std::string_view place, SheetColumn column) {
        const auto& model = static_cast<SheetModel&>(*sheet().model());
        const int row = rowOf(model.rows(), *placeFrom(now(), place));
        sheet().setCurrentIndex(model.index(row, static_cast<int>(column)));
    }
    CellEditor* editor() { // a closed one may linger until the event loop takes it
        for (CellEditor* e : sheet().findChildren<CellEditor*>())
            if (e->isVisible()) return e;
        return nullptr;
    }
    QWidget* keys() { return editor() ? static_cast<QWidget*>(editor()) : &sheet(); }
    void type(const char* text) {
        for (const char* c = text; *c; ++c) QTest::keyClick(keys(), *c);
    }
    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QWidget* popup = QApplication::activePopupWidget();
        QTest::keyClick(popup ? popup : keys(), key, with);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
    }
    QString notice() {
        for (QLabel* label : page->findChildren<QLabel*>())
            if (label->isVisible() && label->text().startsWith(QChar(u'▲'))) return label->text();
        return {};
    }

    MemoryFile* file;
    std::unique_ptr<OpenGym> gym;
    Actions actions;
    std::unique_ptr<Draft> draft;
    std::unique_ptr<FloorRunner> floor;
    std::unique_ptr<BenchPage> page;
};
} // namespace

TEST_CASE("typing a dose measures the draft at once and stores it on Enter") {
    Desk d;
    const auto before = d.draft->time().total.planned;
    d.go("strength/1/1", SheetColumn::Dose);
    d.type("10-12");
    CHECK(d.draft->time().total.planned > before);
    CHECK(d.slotNow("strength/1/1").dose == reps(5, 5)); // not stored yet
    d.press(Qt::Key_Return);
    CHECK(d.slotNow("strength/1/1").dose == reps(10, 12));
    CHECK(sameMonths(d.file->stored, d.gym->gym()));
}

TEST_CASE("Escape gives up what was typed, and the draft is measured as it was") {
    Desk d;
    const auto before = d.draft->time().total.planned;
    d.go("strength/1/1", SheetColumn::Dose);
    d.type("40");
    d.press(Qt::Key_Escape);
    CHECK(d.draft->time().total.planned == before);
    CHECK(d.gym->undoText() == nullptr);
}

TEST_CASE("a dose that can't be read keeps what was typed and says what is understood") {
    Desk d;
    d.go("strength/1/1", SheetColumn::Dose);
    d.type("5 hops");
    d.press(Qt::Key_Return);
    REQUIRE(d.editor());
    CHECK(d.editor()->text() == QStringLiteral("5 hops"));
    CHECK(d.editor()->inTrouble());
    CHECK(d.notice().contains(QStringLiteral("5 hops")));
    CHECK(d.notice().contains(QStringLiteral("30 s")));
    SECTION("mended, it is taken") {
        d.editor()->selectAll();
        d.type("6");
        CHECK(d.notice().isEmpty());
        d.press(Qt::Key_Return);
        CHECK(d.slotNow("strength/1/1").dose == reps(6, 6));
    }
    SECTION("left by a click elsewhere, it stays in its cell, marked") {
        d.go("warm-up/1/1", SheetColumn::Exercise);
        QCoreApplication::processEvents();
        const auto i =
            d.sheet().model()->index(rowOf(static_cast<SheetModel&>(*d.sheet().model()).rows(),
                                           *placeFrom(d.now(), "strength/1/1")),
                                     static_cast<int>(SheetColumn::Dose));
        CHECK(i.data(Qt::DisplayRole).toString() == QStringLiteral("5 hops"));
        CHECK(i.data(SheetModel::UnreadRole).toBool());
        CHECK(d.slotNow("strength/1/1").dose == reps(5, 5));
    }
}

TEST_CASE("an exercise is found by a part of its name and Enter takes the best") {
    Desk d;
    d.go("strength/1/1", SheetColumn::Exercise);
    d.type("pre");
    d.press(Qt::Key_Return);
    CHECK(d.slotNow("strength/1/1").exercise == ex("press"));
    CHECK(d.gym->undoText() != nullptr);
}

TEST_CASE("an exercise is found by a pattern word, the one that the open slot wants first") {
    Desk d;
    d.go("strength/1/2", SheetColumn::Exercise);
    d.type("pull");
    d.press(Qt::Key_Down);
    d.press(Qt::Key_Return);
    CHECK(d.slotNow("strength/1/2").exercise == ex("row")); // Band row, then Bench row
}

TEST_CASE("Tab takes the exercise and goes on to the dose, ready to type") {
    Desk d;
    d.go("strength/1/2", SheetColumn::Exercise);
    d.type("band");
    d.press(Qt::Key_Tab);
    CHECK(d.slotNow("strength/1/2").exercise == ex("band-row"));
    CHECK(d.sheet().currentIndex().column() == static_cast<int>(SheetColumn::Dose));
    d.type("12");
    d.press(Qt::Key_Return);
    CHECK(d.slotNow("strength/1/2").dose == reps(12, 12));
}

TEST_CASE("a name that is not on the Shelf offers to add it") {
    Desk d;
    d.go("strength/1/2", SheetColumn::Exercise);
    d.type("tide pull");
    d.press(Qt::Key_Return);
    const auto& slot = d.slotNow("strength/1/2");
    REQUIRE(slot.exercise == ex("tide-pull"));
    const Exercise* added = d.gym->gym().shelf.find(ex("tide-pull"));
    REQUIRE(added);
    CHECK(added->patterns.has(Pattern::HorizontalPull)); // what the slot wanted
    CHECK(d.notice().contains(QStringLiteral("tide pull")));
    REQUIRE(*d.gym->undo());
    CHECK(d.slotNow("strength/1/2").open());
    CHECK(d.gym->gym().shelf.find(ex("tide-pull")) == nullptr);
}

TEST_CASE("a retired exercise is offered only for its whole name, and the sheet says that it is") {
    Desk d;
    REQUIRE(setRetired(*d.gym, ex("row"), true));
    d.go("strength/1/2", SheetColumn::Exercise);
    d.type("bench");
    const auto* list = d.editor()->findChild<QCompleter*>()->popup();
    const auto first = [&] { return list->model()->index(0, 0); };
    CHECK_FALSE(first().data(Qt::AccessibleTextRole).toString().contains("retired"));
    d.type(" row");
    REQUIRE(list->isVisible());
    CHECK(first().data().toString() == QLatin1String("Bench row"));
    CHECK(first().data(Qt::AccessibleTextRole).toString().contains("retired"));
    CHECK(d.notice().contains("is retired"));
    d.press(Qt::Key_Return);
    CHECK(d.slotNow("strength/1/2").exercise == ex("row"));
    CHECK(d.notice().contains("Ctrl+R"));
    d.go("strength/1/1", SheetColumn::Exercise);
    d.type("goblet");
    CHECK(d.notice().isEmpty());
}

TEST_CASE("lines are added, moved, opened and taken out by key") {
    Desk d;
    d.go("strength/1/1", SheetColumn::Exercise);
    d.press(Qt::Key_Return, Qt::ControlModifier);
    CHECK(d.now().sections[1].groups[0].slots.size() == 3);
    CHECK(d.draft->place() == *placeFrom(d.now(), "strength/1/2")); // the attention follows
    d.go("strength/1/1", SheetColumn::Exercise);
    d.press(Qt::Key_Down, Qt::ControlModifier);
    CHECK(d.slotNow("strength/1/2").exercise == ex("squat"));
    CHECK(d.draft->place() == *placeFrom(d.now(), "strength/1/2"));
    d.press(Qt::Key_Delete);
    CHECK(d.slotNow("strength/1/2").open());
    d.press(Qt::Key_Delete, Qt::ControlModifier);
    CHECK(d.now().sections[1].groups[0].slots.size() == 2);
    d.press(Qt::Key_G, Qt::ControlModifier);
    CHECK(d.now().sections[1].groups.size() == 2);
    d.press(Qt::Key_Up, Qt::ControlModifier | Qt::ShiftModifier);
    CHECK(d.draft->place().group == 0);
}

TEST_CASE("typing anywhere else on a slot's line means its exercise") {
    Desk d;
    CHECK(d.sheet().currentIndex().column() ==
          static_cast<int>(SheetColumn::Exercise)); // at the start
    d.go("strength/1/1", SheetColumn::Kit);
    d.type("pre");
    d.press(Qt::Key_Return);
    CHECK(d.slotNow("strength/1/1").exercise == ex("press"));
}

TEST_CASE("Tab walks over the cells that can be typed in and no others") {
    Desk d;
    d.go("warm-up/1/1", SheetColumn::Exercise);
    for (int i = 0; i < 12; ++i) {
        QTest::keyClick(&d.sheet(), Qt::Key_Tab);
        CHECK((d.sheet().currentIndex().flags() & Qt::ItemIsEditable));
    }
}

TEST_CASE("rounds, rest, talk, budget and start are typed where they stand") {
    Desk d;
    const auto enter = [&](std::string_view place, SheetColumn column, const char* text) {
        d.go(place, column);
        d.type(text);
        d.press(Qt::Key_Return);
    };
    const auto group = [&]() -> const Group& { return d.now().sections[1].groups[0]; };
    d.sheet().setCurrentIndex(d.sheet().model()->index(6, static_cast<int>(SheetColumn::Exercise)));
    d.type("3-4");
    d.press(Qt::Key_Return);
    CHECK(group().rounds == rounds(3, 4));
    d.sheet().setCurrentIndex(d.sheet().model()->index(6, static_cast<int>(SheetColumn::Dose)));
    d.type("90");
    d.press(Qt::Key_Return);
    CHECK(group().rest == secondsRange(90, 90));
    enter("strength", SheetColumn::Dose, "1:30");
    CHECK(d.now().sections[1].talk == Millis{90'000});
    enter("strength", SheetColumn::Tempo, "22-30");
    CHECK(d.now().sections[1].budget == secondsRange(22 * 60, 30 * 60));
    enter("strength", SheetColumn::Kit, "spread");
    CHECK(std::holds_alternative<StartSpread>(d.now().sections[1].start));
}

TEST_CASE("a dropped line goes where it was dropped") {
    Desk d;
    auto& model = static_cast<SheetModel&>(*d.sheet().model());
    const int from = rowOf(model.rows(), *placeFrom(d.now(), "strength/1/1"));
    const int onto = rowOf(model.rows(), *placeFrom(d.now(), "warm-up/1/1"));
    const std::unique_ptr<QMimeData> data(
        model.mimeData({model.index(from, static_cast<int>(SheetColumn::Exercise))}));
    model.dropMimeData(data.get(), Qt::MoveAction, -1, -1, model.index(onto, 1));
    CHECK(d.now().sections[0].groups[0].slots.size() == 2);
    CHECK(d.slotNow("warm-up/1/1").dose == reps(5, 5));
}

TEST_CASE("the sheet's model keeps the rules of models through edits, undo and a change of month") {
    Desk d;
    QAbstractItemModelTester tester(d.sheet().model(),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    d.go("strength/1/1", SheetColumn::Exercise);
    d.press(Qt::Key_Return, Qt::ControlModifier);
    d.draft->showMonth(month("2026-08"));
    REQUIRE(*d.gym->undo());
    CHECK(d.draft->month() == month("2026-09")); // undo leads back
    CHECK(d.now().sections[1].groups[0].slots.size() == 2);
    REQUIRE(*removeMonth(*d.gym, month("2026-09")));
    REQUIRE(*removeMonth(*d.gym, month("2026-08")));
    CHECK(d.sheet().model()->rowCount() == 0);
    REQUIRE(*d.gym->undo());
    CHECK(d.sheet().model()->rowCount() > 0);
}

TEST_CASE("what can't be stored is said under the sheet, and the draft stays") {
    Desk d;
    d.file->full = true;
    d.go("strength/1/1", SheetColumn::Dose);
    d.type("7");
    d.press(Qt::Key_Return);
    CHECK(d.notice().contains(QStringLiteral("full")));
    CHECK(d.slotNow("strength/1/1").dose == reps(5, 5));
}
