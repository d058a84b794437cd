// SPDX-License-Identifier: GPL-3.0-or-later
// Proposals on the Bench, driven by keys.
#include "blockwright/propose/propose.hpp"
#include "desk/bench/bench_page.hpp"
#include "desk/bench/sheet_model.hpp"
#include "desk/bench/sheet_view.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/words.hpp"
#include "desk/frame/workspace.hpp"
#include "desk/propose/propose_line.hpp"
#include "desk/propose/propose_strip.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QApplication>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTest>

namespace bw::test {

namespace {
Slot wanting(Pattern pattern) {
    Slot open;
    open.patterns = {pattern};
    return open;
}

// A: press and an open pull; B: squat and an open hinge; a finisher C with an open slot.
Gym openGym(bool hinges = true) {
    Gym gym;
    const auto put = [&](const char* id, Pattern pattern, const char* role) {
        Exercise e = exercise(id, pattern);
        e.roles = {RoleId::parse(role).value()};
        gym.shelf.put(e);
    };
    for (const char* id : {"press", "dip"}) put(id, Pattern::HorizontalPush, "strength-heavy");
    for (const char* id : {"band-row", "bench-row", "towel-row", "cable-row"})
        put(id, Pattern::HorizontalPull, "strength-heavy");
    for (const char* id : {"swing", "bridge", "good-morning"})
        if (hinges) put(id, Pattern::Hinge, "strength-long");
    put("squat", Pattern::Squat, "strength-heavy");
    for (const char* id : {"run", "carry", "crawl"}) put(id, Pattern::Carry, "finisher");
    const auto pair = [](Slot a, Slot b) {
        return group(rounds(2, 3), secondsRange(60, 120), {std::move(a), std::move(b)});
    };
    gym.put(block(
        "2026-11",
        {section(SectionKind::Strength,
                 {pair(slot("press", reps(5, 5)), wanting(Pattern::HorizontalPull)),
                  pair(slot("squat", reps(5, 5)), wanting(Pattern::Hinge))}),
         section(SectionKind::Finisher, {group(rounds(2, 2), secondsRange(30, 30), {Slot{}})})}));
    return gym;
}

struct Proposing : FrameDesk {
    explicit Proposing(Gym gym = openGym()) {
        auto owned = std::make_unique<MemoryFile>(std::move(gym));
        file = owned.get();
        window.take(OpenGym::over(std::move(owned)));
        settle();
        sheet().setFocus();
        before = stored();
    }
    ProposeStrip& strip() { return work().bench().proposals(); }
    SheetView& sheet() { return work().bench().sheet(); }
    Block stored() { return *gym().block(month("2026-11")); }
    bool answered() {
        const bool came = QTest::qWaitFor([&] { return !strip().looking(); }, 60'000);
        return came && strip().answer();
    }
    QString words() { return part<QLabel>("propose-words").text(); }
    QVariant cell(Place place, SheetColumn column, int role) {
        const auto& model = static_cast<SheetModel&>(*sheet().model());
        return model.index(rowOf(model.rows(), place), static_cast<int>(column)).data(role);
    }
    void go(Place place, SheetColumn column = SheetColumn::Exercise) {
        const auto& model = static_cast<SheetModel&>(*sheet().model());
        sheet().setCurrentIndex(model.index(rowOf(model.rows(), place), static_cast<int>(column)));
    }
    QString undo() {
        const Message* text = work().gym().undoText();
        return text ? say(*text) : QString();
    }

    MemoryFile* file;
    std::optional<Block> before;
};

const Place kPress{0, 0, 0}, kPull{0, 0, 1}, kHinge{0, 1, 1}, kFinish{1, 0, 0};
} // namespace

TEST_CASE("The best answer stands in the sheet, not stored; Enter stores it as one step") {
    Proposing d;
    const Proposal said = propose(d.gym(), d.stored()).value();
    REQUIRE(said.answers.size() > 1);
    d.press(Qt::Key_F7);
    REQUIRE(d.answered());
    const ProposedMonth& best = said.answers.front();
    CHECK(d.shown() == best.block);
    CHECK(d.stored() == d.before);
    for (const ProposedSlot& slot : best.slots) {
        CHECK(d.cell(slot.place, SheetColumn::Exercise, Qt::DisplayRole).toString() ==
              plain(d.gym().shelf.find(slot.exercise)->name));
        CHECK(d.cell(slot.place, SheetColumn::Exercise, SheetModel::OfferedRole).toBool());
        CHECK(d.cell(slot.place, SheetColumn::Dose, SheetModel::OfferedRole).toBool());
    }
    CHECK_FALSE(d.cell(kPress, SheetColumn::Exercise, SheetModel::OfferedRole).toBool());
    REQUIRE(d.strip().hasFocus());
    d.press(Qt::Key_Return);
    CHECK(d.stored() == best.block);
    CHECK_FALSE(d.cell(kPull, SheetColumn::Exercise, SheetModel::OfferedRole).toBool());
    CHECK(d.strip().isHidden());
    CHECK(d.sheet().hasFocus());
    CHECK(d.undo() == QStringLiteral("fill the open slots"));
    d.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(d.stored() == d.before);
    CHECK(d.undo().isEmpty());
}

TEST_CASE("Left and Right go through the answers, round and round; Esc leaves all as it was") {
    Proposing d;
    d.go(kPress);
    const Proposal said = propose(d.gym(), d.stored()).value();
    REQUIRE(said.answers.size() == 3);
    d.press(Qt::Key_F7);
    REQUIRE(d.answered());
    CHECK(d.words().startsWith(QStringLiteral("Answer 1 of 3")));
    d.press(Qt::Key_Right);
    CHECK(d.shown() == said.answers[1].block);
    CHECK(d.words().startsWith(QStringLiteral("Answer 2 of 3")));
    d.press(Qt::Key_Left);
    d.press(Qt::Key_Left);
    CHECK(d.shown() == said.answers[2].block);
    d.press(Qt::Key_Escape);
    CHECK(d.shown() == d.before);
    CHECK(d.stored() == d.before);
    CHECK(d.work().draft().place() == kPress);
    CHECK(d.work().draft().marks().empty());
    CHECK(d.strip().isHidden());
    CHECK(d.undo().isEmpty());
}

TEST_CASE("The strip says penalty, proof, what is chosen and what it settles, by ear as well") {
    Proposing d;
    const Proposal said = propose(d.gym(), d.stored()).value();
    REQUIRE(said.provedBest());
    const ProposedMonth& best = said.answers.front();
    REQUIRE(best.shift.go.size() + best.shift.appear.size() > 0);
    d.press(Qt::Key_F7);
    REQUIRE(d.answered());
    CHECK(d.words().contains(
        QStringLiteral("penalty %1 → %2")
            .arg(QString::number(said.penaltyNow), QString::number(best.penalty))));
    CHECK(d.words().contains(QStringLiteral("proved best")));
    const QString heard = d.strip().accessibleDescription();
    for (const ProposedSlot& slot : best.slots) CHECK(heard.contains(say(slot.why)));
    for (const Finding& f : best.shift.go) CHECK(heard.contains(say(f.text)));
    for (const Finding& f : best.shift.appear) CHECK(heard.contains(say(f.text)));
    int buttons = 0;
    for (const QPushButton* b : d.strip().findChildren<QPushButton*>()) {
        CHECK_FALSE(b->accessibleName().isEmpty());
        if (b->isVisible()) ++buttons;
    }
    CHECK(buttons == 4);
}

TEST_CASE("A filled slot is swapped for another exercise, and nothing else changes") {
    Proposing d;
    d.go(kPress);
    d.press(Qt::Key_F7, Qt::ControlModifier);
    REQUIRE(d.answered());
    REQUIRE(d.strip().answer()->slots.size() == 1);
    CHECK(slotAt(d.shown(), kPress)->exercise != ex("press"));
    d.press(Qt::Key_Return);
    Block expected = *d.before;
    slotAt(expected, kPress)->exercise = slotAt(d.stored(), kPress)->exercise;
    CHECK(d.stored() == expected);
    CHECK(d.stored() != d.before);
    CHECK(d.undo() == QStringLiteral("swap A1"));
}

TEST_CASE("A section's open slots are filled, those of the others stay open") {
    Proposing d;
    d.go(kHinge);
    d.press(Qt::Key_F7, Qt::ShiftModifier);
    REQUIRE(d.answered());
    CHECK_FALSE(slotAt(d.shown(), kPull)->open());
    CHECK_FALSE(slotAt(d.shown(), kHinge)->open());
    CHECK(slotAt(d.shown(), kFinish)->open());
}

TEST_CASE("A slot that nothing fits says why, until Esc") {
    Proposing d(openGym(false));
    d.press(Qt::Key_F7);
    CHECK_FALSE(d.answered());
    CHECK(d.words() == say(propose(d.gym(), d.stored()).why()));
    CHECK(d.words().contains(QStringLiteral("hinge")));
    CHECK(d.strip().isVisible());
    d.press(Qt::Key_Escape);
    CHECK(d.strip().isHidden());
    CHECK(d.shown() == d.before);
}

TEST_CASE("A month without open slots says so") {
    Proposing d;
    d.press(Qt::Key_F7);
    REQUIRE(d.answered());
    d.press(Qt::Key_Return);
    d.press(Qt::Key_F7);
    CHECK_FALSE(d.answered());
    CHECK(d.words() == QStringLiteral("There is no open slot to fill."));
}

TEST_CASE("A swap asks for a slot when the attention is on none") {
    Proposing d;
    d.go({0}, SheetColumn::Dose);
    d.press(Qt::Key_F7, Qt::ControlModifier);
    CHECK_FALSE(d.strip().answer());
    CHECK(d.words().startsWith(QStringLiteral("Go to a slot first")));
}

TEST_CASE("Typing goes on while an answer is on show, and ends it") {
    Proposing d;
    d.press(Qt::Key_F7);
    REQUIRE(d.answered());
    d.sheet().setFocus();
    d.go(kPress, SheetColumn::Dose);
    QTest::keyClick(&d.sheet(), '8');
    d.settle();
    CHECK(d.strip().isHidden());
    CHECK(slotAt(d.shown(), kPull)->open());
    CHECK(slotAt(d.shown(), kPress)->dose == reps(8, 8));
    d.press(Qt::Key_Return);
    CHECK(slotAt(d.stored(), kPress)->dose == reps(8, 8));
    CHECK(slotAt(d.stored(), kPull)->open());
}

TEST_CASE("An edit while it is looked for drops what would be of an older draft") {
    Proposing d;
    d.strip().askAll();
    REQUIRE(d.strip().looking()); // until the window's thread takes the answer
    REQUIRE(setMain(d.work().gym(), {month("2026-11"), kPress}, true).ok());
    CHECK(d.strip().isHidden());
    QTest::qWait(300);
    CHECK(d.strip().isHidden());
    CHECK(d.shown() == d.stored());
}

TEST_CASE("An answer that can't be stored stays on show and can be applied again") {
    Proposing d;
    d.press(Qt::Key_F7);
    REQUIRE(d.answered());
    const Block offered = d.shown();
    d.file->full = true;
    d.press(Qt::Key_Return);
    CHECK(d.stored() == d.before);
    CHECK(d.shown() == offered);
    bool told = false;
    for (const QLabel* label : d.work().bench().findChildren<QLabel*>())
        told = told ||
               (label->isVisible() && label->text().endsWith(QStringLiteral("The disk is full.")));
    CHECK(told);
    d.file->full = false;
    d.press(Qt::Key_Return);
    CHECK(d.stored() == offered);
}

TEST_CASE("The whole month anew keeps its main lifts, and is one step to undo") {
    Proposing d;
    REQUIRE(setMain(d.work().gym(), {month("2026-11"), kPress}, true).ok());
    const Block before = d.stored();
    d.press(Qt::Key_F7, Qt::ControlModifier | Qt::ShiftModifier);
    REQUIRE(d.answered());
    const Block offered = d.shown();
    CHECK(slotAt(offered, kPress)->exercise == ex("press"));
    CHECK_FALSE(slotAt(offered, kPull)->open());
    CHECK(d.cell(kPull, SheetColumn::Exercise, SheetModel::MarkRole).isValid());
    CHECK_FALSE(d.cell(kPress, SheetColumn::Exercise, SheetModel::MarkRole).isValid());
    d.press(Qt::Key_Return);
    CHECK(d.stored() == offered);
    d.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(d.stored() == before);
}

TEST_CASE("From another place it leads to the Bench; going away from there ends it") {
    Proposing d;
    d.press(Qt::Key_3, Qt::AltModifier);
    REQUIRE(d.work().page() != &d.work().bench());
    for (QPushButton* b : d.work().findChildren<QPushButton*>())
        if (b->text() == QStringLiteral("Propose")) b->click();
    CHECK(d.work().page() == &d.work().bench());
    REQUIRE(d.answered());
    CHECK(d.shown() != d.before);
    d.press(Qt::Key_7, Qt::AltModifier);
    CHECK(d.shown() == d.before); // a sheet is printed as it is stored
    CHECK(d.strip().isHidden());
}

TEST_CASE("The status line shows how much of a proposal is proved, and stops looking") {
    Proposing d;
    ProposeLine line(d.strip(), &d.window, 0);
    CHECK_FALSE(line.isVisibleTo(&d.window));
    d.strip().askAll();
    CHECK(line.isVisibleTo(&d.window));
    Q_EMIT d.strip().progressed(200, 50);
    CHECK(line.findChild<QProgressBar*>()->value() == 25);
    line.findChild<QPushButton*>()->click();
    REQUIRE(QTest::qWaitFor([&] { return !d.strip().looking(); }, 60'000));
    CHECK_FALSE(line.isVisibleTo(&d.window));
}

} // namespace bw::test
