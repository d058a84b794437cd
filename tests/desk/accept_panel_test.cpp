// SPDX-License-Identifier: GPL-3.0-or-later
// Accepting a finding and taking that back, driven by keys and pointer.
#include "desk/bench/accepted_fold.hpp"
#include "desk/bench/findings_panel.hpp"
#include "desk/bench/reason_line.hpp"
#include "desk/rail_gym.hpp"
#include "edit/block_verbs.hpp"
#include "edit/finding_verbs.hpp"
#include "support/catch.hpp"

#include <QAbstractButton>
#include <QApplication>
#include <QContextMenuEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QSignalSpy>
#include <QTest>

using namespace bw;
using namespace bw::test;

namespace {
struct Panel : RailGym {
    Panel() : RailGym(railGymOf(20)), panel(*draft, nullptr) {
        list = panel.findChild<FindingsList*>(QString(), Qt::FindDirectChildrenOnly);
        model = static_cast<FindingsModel*>(list->model());
        fold = panel.findChild<AcceptedFold*>();
        folded = fold->findChild<FindingsList*>();
        line = panel.findChild<ReasonLine*>();
        panel.resize(320, 600);
        panel.show();
        panel.activateWindow();
        panel.setFocus();
        (void)QTest::qWaitForWindowActive(&panel);
    }
    int row(const std::string& rule) const {
        for (int i = 0; i < model->rowCount(); ++i)
            if (model->at(i).finding.rule == rule) return i;
        return -1;
    }
    void choose(const std::string& rule) {
        REQUIRE(row(rule) >= 0);
        list->setCurrentIndex(model->index(row(rule)));
        list->setFocus();
    }
    std::string other() const { // than the one that the tests are about
        for (int i = 0; i < model->rowCount(); ++i)
            if (model->at(i).finding.rule != "section-length") return model->at(i).finding.rule;
        throw std::logic_error("there is no other finding");
    }
    QLineEdit* answer() const { return line->findChild<QLineEdit*>(); }
    void accept(const std::string& rule, const char* reason) {
        choose(rule);
        QTest::keyClick(list, Qt::Key_A);
        QTest::keyClicks(answer(), reason);
        QTest::keyClick(answer(), Qt::Key_Return);
    }
    QAbstractButton* head() const {
        return panel.findChild<QAbstractButton*>(QStringLiteral("accepted-head"));
    }
    QString trouble() const {
        for (const QLabel* label : line->findChildren<QLabel*>())
            if (label->isVisible() && label->text().startsWith(QChar(0x25B2))) return label->text();
        return {};
    }

    FindingsPanel panel;
    FindingsModel* model;
    FindingsList *list, *folded;
    AcceptedFold* fold;
    ReasonLine* line;
};

// The strength section is over its budget in the gym of the rail.
const std::string kRule = "section-length";
} // namespace

TEST_CASE("A asks why a finding may stay; Enter keeps it with that reason, apart from the others") {
    Panel desk;
    const int before = desk.model->rowCount();
    const double penalty = desk.draft->verdict().penalty;
    CHECK_FALSE(desk.fold->isVisible());
    desk.choose(kRule);
    QTest::keyClick(desk.list, Qt::Key_A);
    REQUIRE(desk.line->isVisible());
    CHECK(desk.answer()->hasFocus());
    CHECK(desk.answer()->accessibleName() == "Why may this stay (Strength)?");
    QTest::keyClicks(desk.answer(), "Open day");
    QTest::keyClick(desk.answer(), Qt::Key_Return);
    CHECK_FALSE(desk.line->isVisible());
    CHECK(desk.row(kRule) == -1);
    CHECK(desk.model->rowCount() == before - 1);
    REQUIRE(desk.stored().accepted.size() == 1);
    CHECK(desk.stored().accepted[0].reason == "Open day");
    CHECK(desk.draft->verdict().penalty < penalty);
    CHECK(desk.fold->isVisible());
    CHECK(desk.head()->text() == "Accepted: 1");
    CHECK(desk.list->hasFocus());
    CHECK(desk.panel.current() != nullptr); // the next one is at hand
}

TEST_CASE("Without a reason nothing is kept and the line says so; Esc leaves it") {
    Panel desk;
    desk.choose(kRule);
    QTest::keyClick(desk.list, Qt::Key_A);
    QTest::keyClicks(desk.answer(), "  ");
    QTest::keyClick(desk.answer(), Qt::Key_Return);
    CHECK(desk.line->isVisible());
    CHECK(desk.trouble().contains("Say in a few words why it may stay"));
    CHECK(desk.stored().accepted.empty());
    QTest::keyClicks(desk.answer(), "Open");
    CHECK(desk.trouble().isEmpty());
    QTest::keyClick(desk.answer(), Qt::Key_Escape);
    CHECK_FALSE(desk.line->isVisible());
    CHECK(desk.list->hasFocus());
    CHECK(desk.stored().accepted.empty());
    CHECK(desk.open->undoText() == nullptr);
}

TEST_CASE("The question left, the focus is where it came from") {
    Panel desk;
    desk.accept(desk.other(), "Open day"); // now there is something else to focus
    REQUIRE(desk.head()->isVisible());
    desk.list->setCurrentIndex(desk.model->index(desk.row(kRule)));
    desk.head()->setFocus();
    desk.panel.askWhy();
    REQUIRE(desk.answer()->hasFocus());
    QTest::keyClick(desk.answer(), Qt::Key_Escape);
    CHECK(desk.head()->hasFocus());
}

TEST_CASE("Accepted findings fold to one line; A takes one back, and it stands with the others") {
    Panel desk;
    desk.accept(kRule, "Open day");
    CHECK_FALSE(desk.folded->isVisible());
    desk.head()->setFocus();
    QTest::keyClick(desk.head(), Qt::Key_Space);
    REQUIRE(desk.folded->isVisible());
    const auto* rows = static_cast<FindingsModel*>(desk.folded->model());
    REQUIRE(rows->rowCount() == 1);
    CHECK(rows->at(0).reason == "Open day");
    CHECK(rows->index(0).data(Qt::AccessibleTextRole).toString().contains("Accepted: Open day."));
    desk.folded->setFocus();
    desk.folded->setCurrentIndex(rows->index(0));
    CHECK(desk.draft->place() == Place{1});
    QTest::keyClick(desk.folded, Qt::Key_A);
    CHECK(desk.stored().accepted.empty());
    CHECK_FALSE(desk.fold->isVisible());
    CHECK(desk.row(kRule) >= 0);
    REQUIRE(desk.open->undo().ok());
    CHECK(desk.stored().accepted.size() == 1);
}

TEST_CASE("A finding that comes back says how it was when it was accepted, and why") {
    Panel desk;
    desk.choose(kRule);
    const QString figures = desk.model->at(desk.row(kRule)).figures;
    CHECK(desk.model->at(desk.row(kRule)).before.isEmpty());
    desk.accept(kRule, "Open day");
    REQUIRE(*setTalk(*desk.open, {month("2026-09"), {1}}, Millis{300'000}));
    REQUIRE(desk.row(kRule) >= 0);
    const FindingRow& row = desk.model->at(desk.row(kRule));
    CHECK(row.before.toStdString() ==
          ("Accepted when it was " + figures + ": “Open day”").toStdString());
    CHECK(desk.model->index(desk.row(kRule))
              .data(Qt::AccessibleTextRole)
              .toString()
              .contains(row.before));
    CHECK_FALSE(desk.fold->isVisible());
    REQUIRE(*setTalk(*desk.open, {month("2026-09"), {1}}, Millis{60'000}));
    CHECK(desk.row(kRule) == -1);
}

TEST_CASE("The question goes when its finding is solved elsewhere") {
    Panel desk;
    desk.choose(kRule);
    QTest::keyClick(desk.list, Qt::Key_A);
    REQUIRE(*setBudget(*desk.open, {month("2026-09"), {1}}, std::nullopt));
    CHECK_FALSE(desk.line->isVisible());
}

TEST_CASE("What can't be stored is told under the question, and the reason is not lost") {
    Panel desk;
    desk.file->full = true;
    desk.accept(kRule, "Open day");
    CHECK(desk.line->isVisible());
    CHECK(desk.trouble().contains("The disk is full."));
    CHECK(desk.answer()->text() == "Open day");
    CHECK(desk.row(kRule) >= 0);
}

TEST_CASE("The menu and the buttons of the open finding accept it and lead to its limit") {
    Panel desk;
    desk.choose(kRule);
    QSignalSpy limit(&desk.panel, &FindingsPanel::limitWanted);
    QContextMenuEvent byKey(QContextMenuEvent::Keyboard, {}, desk.list->mapToGlobal(QPoint()));
    QCoreApplication::sendEvent(desk.list->viewport(), &byKey);
    auto* menu = desk.list->findChild<QMenu*>(QStringLiteral("tries"));
    REQUIRE(menu != nullptr);
    QStringList offered;
    for (QAction* action : menu->actions()) {
        offered << action->text();
        if (action->text() == "Limit…") action->trigger();
    }
    CHECK(offered.contains("Accept…"));
    REQUIRE(limit.count() == 1);
    CHECK(limit[0][0].toString() == "section-length.slack_seconds");
    menu->close();

    QCoreApplication::processEvents();
    const QModelIndex index = desk.list->currentIndex();
    QStyleOptionViewItem option;
    option.initFrom(desk.list);
    option.rect = desk.list->visualRect(index);
    const auto at =
        static_cast<FindingsDelegate*>(desk.list->itemDelegate())->places(option, index, true);
    REQUIRE(at.verdicts.size() == 3);
    QSignalSpy rule(&desk.panel, &FindingsPanel::ruleWanted);
    QTest::mouseClick(desk.list->viewport(), Qt::LeftButton, {}, at.verdicts[2].rect.center());
    CHECK(rule.count() == 1);
    QTest::mouseClick(desk.list->viewport(), Qt::LeftButton, {}, at.verdicts[1].rect.center());
    CHECK(limit.count() == 2);
    QTest::mouseClick(desk.list->viewport(), Qt::LeftButton, {}, at.verdicts[0].rect.center());
    CHECK(desk.line->isVisible());
    QTest::keyClick(desk.list, Qt::Key_L);
    CHECK(limit.count() == 3);
}

TEST_CASE("When all that is left was accepted, the panel says so and lists it") {
    Panel desk;
    for (int guard = 0; desk.model->rowCount() > 0; ++guard) {
        REQUIRE(guard < 60);
        const Finding f = desk.model->at(0).finding;
        REQUIRE(*acceptFinding(*desk.open, month("2026-09"), f, "why"));
    }
    const auto* sentence = desk.panel.findChild<QLabel*>(QStringLiteral("nothing"));
    REQUIRE(sentence->isVisible());
    CHECK(sentence->text().contains("Nothing is left to look at"));
    CHECK(desk.fold->isVisible());
    CHECK(desk.draft->verdict().penalty == 0);
}
