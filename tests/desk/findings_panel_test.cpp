// SPDX-License-Identifier: GPL-3.0-or-later
// The findings beside the sheet, driven by keys and pointer.
#include "blockwright/rules/rule.hpp"
#include "desk/bench/findings_panel.hpp"
#include "desk/frame/theme.hpp"
#include "desk/rail_gym.hpp"
#include "interchange/bundle.hpp"
#include "sheets/ink.hpp"
#include "support/catch.hpp"

#include <QContextMenuEvent>
#include <QLabel>
#include <QMenu>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>

using namespace bw;
using namespace bw::test;

namespace {
Finding look(std::string rule, Place place) {
    Finding f;
    f.rule = std::move(rule);
    f.level = Level::Look;
    f.place = place;
    f.text = {
        "The rest of %1 is shorter than a minute, so that nobody is ready for the next round.",
        {f.rule}};
    f.basis = {"Common practice.", {}};
    f.measured = 30;
    f.limit = {60, 120, true};
    f.unit = "s";
    return f;
}

Remedy rest(int groupIndex, int seconds) {
    return {{"Rest %1 s", {std::to_string(seconds)}}, [=](Block& b) {
                b.sections[1].groups[static_cast<std::size_t>(groupIndex)].rest =
                    secondsRange(seconds, seconds);
            }};
}

struct Panel : RailGym {
    explicit Panel(Gym gym = railGymOf(20)) : RailGym(std::move(gym)), panel(*draft, nullptr) {
        model = panel.findChild<FindingsModel*>();
        list = panel.findChild<FindingsList*>();
        panel.resize(320, 300);
        panel.show();
        panel.activateWindow();
        panel.setFocus();
        (void)QTest::qWaitForWindowActive(&panel);
    }
    // Three findings made up here, in place of the rule book's until the draft changes.
    void makeUp() {
        Finding second = look("B", {1, 0});
        second.remedies = {{{"Tell them why", {}}, {}}, rest(0, 90), rest(0, 100)};
        model->show({look("A", {0, 0}), second, look("C", {1, 1, 0})}, *draft->block());
        QCoreApplication::processEvents();
    }
    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QTest::keyClick(list, key, with);
    }
    Range<Millis> restOfB() const { return stored().sections[1].groups[0].rest; }
    QPoint partOf(int row, bool opened, const std::function<QRect(const FindingPlaces&)>& part) {
        QCoreApplication::processEvents(); // rows take their height
        auto* delegate = static_cast<FindingsDelegate*>(list->itemDelegate());
        QStyleOptionViewItem option;
        option.initFrom(list);
        option.rect = list->visualRect(model->index(row));
        return part(delegate->places(option, model->index(row), opened)).center();
    }
    QMenu* menu() { return list->findChild<QMenu*>(QStringLiteral("tries")); }

    FindingsPanel panel;
    FindingsModel* model;
    FindingsList* list;
};
} // namespace

TEST_CASE("The panel shows what the rule book says of the draft") {
    Panel desk;
    REQUIRE(desk.model->rowCount() == static_cast<int>(desk.draft->verdict().findings.size()));
    CHECK(desk.model->rowCount() > 0);
    for (int row = 0; row < desk.model->rowCount(); ++row)
        CHECK(desk.model->at(row).finding.rule ==
              desk.draft->verdict().findings[static_cast<std::size_t>(row)].rule);
}

TEST_CASE("Walking down the findings marks the rows each is about") {
    Panel desk;
    desk.makeUp();
    QSignalSpy picked(&desk.panel, &FindingsPanel::picked);
    CHECK(desk.panel.current() == nullptr);
    desk.press(Qt::Key_Down);
    CHECK(desk.draft->place() == Place{0, 0});
    desk.press(Qt::Key_Down);
    CHECK(desk.draft->place() == Place{1, 0});
    desk.press(Qt::Key_Up);
    CHECK(desk.draft->place() == Place{0, 0});
    REQUIRE(desk.panel.current() != nullptr);
    CHECK(desk.panel.current()->rule == "A");
    CHECK(picked.isEmpty());
    desk.press(Qt::Key_Return);
    REQUIRE(picked.count() == 1);
    CHECK(qvariant_cast<Place>(picked[0][0]) == Place{0, 0});
}

TEST_CASE("The focus alone marks no rows; a click on the finding at hand does") {
    Panel desk;
    const Place first = desk.model->at(0).finding.place, typing{1, 0, 1};
    REQUIRE(first != typing);
    desk.draft->setPlace(typing);
    FindingsPanel fresh(*desk.draft, nullptr);
    auto* list = fresh.findChild<FindingsList*>();
    fresh.resize(320, 300);
    fresh.show();
    fresh.activateWindow();
    fresh.setFocus(Qt::TabFocusReason);
    (void)QTest::qWaitForWindowActive(&fresh);
    REQUIRE(list->hasFocus());
    REQUIRE(fresh.current() != nullptr); // at hand for Enter and T
    CHECK(desk.draft->place() == typing);
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, {60, 12});
    CHECK(desk.draft->place() == first);
}

TEST_CASE("T does the first thing to try that the program can do, and it can be undone") {
    Panel desk;
    desk.makeUp();
    desk.panel.nextFinding(1);
    desk.press(Qt::Key_T); // nothing to try with the first
    CHECK(desk.open->undoText() == nullptr);
    desk.panel.nextFinding(1);
    desk.press(Qt::Key_T);
    CHECK(desk.restOfB() == secondsRange(90, 90));
    REQUIRE(desk.open->undoText() != nullptr);
    CHECK(desk.open->undoText()->english() == "Rest 90 s");
    REQUIRE(desk.open->undo().ok());
    CHECK(desk.restOfB() == secondsRange(60, 120));
}

TEST_CASE("A number does the other things to try") {
    Panel desk;
    desk.makeUp();
    desk.list->setCurrentIndex(desk.model->index(1));
    desk.press(Qt::Key_3); // there are two
    CHECK(desk.restOfB() == secondsRange(60, 120));
    desk.press(Qt::Key_2);
    CHECK(desk.restOfB() == secondsRange(100, 100));
}

TEST_CASE("What can't be stored is told, and nothing has changed") {
    Panel desk;
    desk.makeUp();
    desk.list->setCurrentIndex(desk.model->index(1));
    QSignalSpy failed(&desk.panel, &FindingsPanel::failed);
    desk.file->full = true;
    desk.press(Qt::Key_T);
    REQUIRE(failed.count() == 1);
    CHECK(qvariant_cast<Message>(failed[0][0]).english() == "The disk is full.");
    CHECK(desk.restOfB() == secondsRange(60, 120));
    CHECK(desk.model->rowCount() == 3);
}

TEST_CASE("The menu key offers everything to try and the way to the rows") {
    Panel desk;
    desk.makeUp();
    desk.list->setCurrentIndex(desk.model->index(1));
    QContextMenuEvent byKey(QContextMenuEvent::Keyboard, {}, desk.list->mapToGlobal(QPoint()));
    QCoreApplication::sendEvent(desk.list->viewport(), &byKey);
    QMenu* menu = desk.menu();
    REQUIRE(menu != nullptr);
    QStringList offered;
    for (const QAction* action : menu->actions())
        if (!action->isSeparator()) offered << action->text();
    CHECK(offered ==
          QStringList{"Try: Rest 90 s", "Try: Rest 100 s", "Accept…", "Rule…", "Go to the rows"});
    menu->actions().at(1)->trigger();
    CHECK(desk.restOfB() == secondsRange(100, 100));
}

TEST_CASE("A click on a button of the open finding does it") {
    Panel desk;
    desk.makeUp();
    desk.list->setCurrentIndex(desk.model->index(1));
    const QPoint second =
        desk.partOf(1, true, [](const FindingPlaces& at) { return at.remedies.at(2).rect; });
    QTest::mouseClick(desk.list->viewport(), Qt::LeftButton, {}, second);
    CHECK(desk.restOfB() == secondsRange(100, 100));
}

TEST_CASE("A press that leaves the button does nothing, nor does one on plain advice") {
    Panel desk;
    desk.makeUp();
    desk.list->setCurrentIndex(desk.model->index(1));
    const auto line = [&](std::size_t n) {
        return desk.partOf(1, true,
                           [n](const FindingPlaces& at) { return at.remedies.at(n).rect; });
    };
    QTest::mousePress(desk.list->viewport(), Qt::LeftButton, {}, line(1));
    QTest::mouseRelease(desk.list->viewport(), Qt::LeftButton, {}, line(2));
    QTest::mouseClick(desk.list->viewport(), Qt::LeftButton, {}, line(0));
    CHECK(desk.restOfB() == secondsRange(60, 120));
}

TEST_CASE(
    "A closed finding with something to try offers it on one click, and is not chosen by it") {
    Panel desk;
    desk.makeUp();
    const QPoint hint = desk.partOf(1, false, [](const FindingPlaces& at) { return at.tryHint; });
    QTest::mouseClick(desk.list->viewport(), Qt::LeftButton, {}, hint);
    REQUIRE(desk.menu() != nullptr);
    CHECK(desk.menu()->actions().size() == 6);
    CHECK(desk.panel.current() == nullptr);
    desk.menu()->close();
    const QPoint none = desk.partOf(0, false, [](const FindingPlaces& at) { return at.tryHint; });
    CHECK(desk.partOf(0, false, [](const FindingPlaces& at) { return at.text; }) != none);
}

TEST_CASE("The next and the previous finding go round, and mark their rows") {
    Panel desk;
    desk.makeUp();
    CHECK(desk.panel.nextFinding(-1)); // from none: the last
    CHECK(desk.draft->place() == Place{1, 1, 0});
    CHECK(desk.panel.nextFinding(1));
    CHECK(desk.draft->place() == Place{0, 0});
    CHECK(desk.panel.nextFinding(-1));
    CHECK(desk.draft->place() == Place{1, 1, 0});
    desk.draft->setPlace({});
    desk.model->show({look("C", {1, 1, 0})}, *desk.draft->block());
    CHECK(desk.panel.nextFinding(1)); // the only one: its rows again
    CHECK(desk.draft->place() == Place{1, 1, 0});
    desk.model->clear();
    CHECK_FALSE(desk.panel.nextFinding(1));
}

TEST_CASE("The chosen finding opens to all it has to say, and closes again") {
    Panel desk;
    desk.makeUp();
    QCoreApplication::processEvents();
    const int closed = desk.list->visualRect(desk.model->index(1)).height();
    desk.list->setCurrentIndex(desk.model->index(1));
    QCoreApplication::processEvents();
    CHECK(desk.list->visualRect(desk.model->index(1)).height() > closed);
    desk.list->setCurrentIndex(desk.model->index(0));
    QCoreApplication::processEvents();
    CHECK(desk.list->visualRect(desk.model->index(1)).height() == closed);
}

TEST_CASE("While a cell is typed in, the chosen finding stays chosen and the place stays put") {
    Panel desk;
    // Longer than its budget before and after the typing.
    int at = -1;
    for (int row = 0; row < desk.model->rowCount(); ++row)
        if (desk.model->at(row).finding.rule == "section-length") at = row;
    REQUIRE(at >= 0);
    desk.list->setCurrentIndex(desk.model->index(at));
    desk.draft->setPlace({0, 0, 0});
    QCoreApplication::processEvents();
    desk.list->verticalScrollBar()->setValue(11);
    const QString before = desk.model->index(at).data().toString();
    desk.draft->preview([](Block& b) {
        b.sections[1].talk = Millis{90'000};
        b.sections[0].groups[0].slots[0].dose = reps(300, 300);
    });
    REQUIRE(desk.panel.current() != nullptr);
    CHECK(desk.panel.current()->rule == "section-length");
    CHECK(desk.panel.current()->place == Place{1});
    CHECK(desk.list->currentIndex().data().toString() != before);
    CHECK(desk.draft->place() == Place{0, 0, 0});
    CHECK(desk.list->verticalScrollBar()->value() == 11);
}

TEST_CASE("When the chosen finding is solved elsewhere, none is chosen") {
    Panel desk;
    desk.makeUp();
    desk.list->setCurrentIndex(desk.model->index(1));
    desk.list->clearFocus();
    desk.draft->setPlace({0, 0});
    desk.list->renew([&] { desk.model->show({look("A", {0, 0})}, *desk.draft->block()); });
    CHECK(desk.panel.current() == nullptr);
    CHECK(desk.draft->place() == Place{0, 0});
}

TEST_CASE("When it is solved from the list, the next one is at hand but the rows stay marked") {
    Panel desk;
    desk.makeUp();
    desk.list->setCurrentIndex(desk.model->index(1));
    desk.list->renew([&] {
        desk.model->show({look("A", {0, 0}), look("C", {1, 1, 0})}, *desk.draft->block());
    });
    REQUIRE(desk.panel.current() != nullptr);
    CHECK(desk.panel.current()->rule == "C");
    CHECK(desk.draft->place() == Place{1, 0});
}

TEST_CASE("A month without findings gets a calm sentence and the list of what was measured") {
    Gym gym;
    layOver(gym, shippedShelf());
    const std::string demo = readText(BW_SOURCE_DIR "/data/demo/saltmarsh-boathouse.bundle.json");
    layOver(gym, *readBundle(demo).bundle);
    gym.members.clear(); // and with them their flags
    Panel desk(gym);
    desk.draft->showMonth(month("2026-10"));
    REQUIRE(desk.draft->verdict().findings.empty());
    const auto* sentence = desk.panel.findChild<QLabel*>(QStringLiteral("nothing"));
    REQUIRE(sentence != nullptr);
    CHECK(sentence->isVisible());
    CHECK(sentence->text().contains("Nothing to look at: the session is planned at "));
    for (const Rule& rule : ruleBook())
        CHECK(sentence->text().contains(
            QString::fromStdString(rule.title.english()).toHtmlEscaped()));
}

TEST_CASE("Without a month the panel says what will stand there") {
    Gym bare;
    Panel desk(bare);
    const auto* sentence = desk.panel.findChild<QLabel*>(QStringLiteral("nothing"));
    REQUIRE(sentence != nullptr);
    CHECK(sentence->isVisible());
    CHECK(sentence->text().startsWith("There is no month yet."));
    CHECK_FALSE(desk.list->isVisible());
}

TEST_CASE("Words on a chosen finding keep 4.5 or 7 to 1 in every theme, its shapes 3 to 1") {
    for (const int set : {0, 1, 2, 3}) {
        const Inks& k = inksOf(set % 2 == 1, set >= 2);
        const double least = set >= 2 ? 7 : 4.5;
        for (const QColor& ground : {k.paper, k.wash}) {
            CHECK(contrast(k.ink, ground) >= least);
            CHECK(contrast(k.quiet, ground) >= least);
            for (const QColor& level : k.level) CHECK(contrast(level, ground) >= 3);
        }
        CHECK(contrast(k.accent, k.paper) >= least);
        CHECK(contrast(k.onAccent, k.accent) >= least);
    }
}
