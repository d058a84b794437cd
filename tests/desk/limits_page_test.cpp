// SPDX-License-Identifier: GPL-3.0-or-later
// The house limits: the table, what moving one does while it is typed, and the way there and back.
#include "blockwright/rules/accepting.hpp"
#include "desk/bench/cell_editor.hpp"
#include "desk/bench/findings_list.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/workspace.hpp"
#include "desk/limits/limit_effect.hpp"
#include "desk/limits/limits_model.hpp"
#include "desk/limits/limits_page.hpp"
#include "desk/limits/limits_table.hpp"
#include "desk/rail_gym.hpp"
#include "edit/finding_verbs.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

using namespace bw;
using namespace bw::test;

namespace {
const std::string kSlack = "section-length.slack_seconds", kBand = "superset-work.seconds";

struct Desk : RailGym {
    Desk() : page(*draft, nullptr) {
        table = page.findChild<LimitsTable*>();
        model = page.findChild<LimitsModel*>();
        effect = page.findChild<LimitEffect*>();
        words = page.findChild<QLineEdit*>();
        page.resize(1100, 600);
        page.show();
        page.activateWindow();
        page.setFocus();
        (void)QTest::qWaitForWindowActive(&page);
    }
    const LimitValue* set(const std::string& key) const {
        const auto& limits = open->gym().settings.limits;
        const auto it = limits.find(key);
        return it == limits.end() ? nullptr : &it->second;
    }
    // Opens this house's value of the limit and types.
    CellEditor* type(const std::string& key, const char* text) {
        page.goTo(QString::fromStdString(key));
        table->setFocus();
        QTest::keyClick(table, Qt::Key_Return);
        auto* editor = table->findChild<CellEditor*>();
        REQUIRE(editor != nullptr);
        editor->selectAll();
        QTest::keyClicks(editor, text);
        return editor;
    }
    static void enter(CellEditor* editor) {
        QTest::keyClick(editor, Qt::Key_Return);
        QCoreApplication::processEvents(); // what is typed is taken from the loop
    }
    QString notice() const {
        for (const QLabel* label : page.findChildren<QLabel*>())
            if (label->isVisible() && label->text().startsWith(QChar(0x25B2))) return label->text();
        return {};
    }
    QPushButton* button(const QString& text) const {
        for (auto* b : page.findChildren<QPushButton*>())
            if (b->text() == text) return b;
        return nullptr;
    }
    QString said() const { return effect->toPlainText(); }

    LimitsPage page;
    LimitsTable* table;
    LimitsModel* model;
    LimitEffect* effect;
    QLineEdit* words;
};
} // namespace

TEST_CASE("Every limit of the rule book stands in the table under its rule, and weights if asked") {
    RailGym gym;
    LimitsModel model(*gym.open, nullptr);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    int heads = 0, limits = 0;
    const Rule* last = nullptr;
    for (int row = 0; row < model.rowCount(); ++row) {
        const HouseLimit* limit = model.limitAt(row);
        if (!limit) {
            ++heads;
            last = model.ruleAt(row);
            continue;
        }
        ++limits;
        CHECK(limit->rule == last);
        CHECK_FALSE(limit->weight);
        CHECK(model.index(row, LimitsModel::House).data().toString().isEmpty());
        CHECK(model.index(row, LimitsModel::Standard).data().toString().toStdString() ==
              limitText(limit->spec.standard, limit->spec));
        CHECK(model.rowOf(limit->key) == row);
    }
    CHECK(heads > 25);
    CHECK(limits > 40);
    model.choose({{}, false, true});
    CHECK(model.rowOf("superset-work.weight_look") > 0);
    CHECK(model.rowCount() > limits + 3 * (heads - 1));
}

TEST_CASE("Words find limits by rule, meaning, basis and unit; only the house's own if asked") {
    Desk desk;
    const int all = desk.model->rowCount();
    desk.words->setText("POWER rest");
    CHECK(desk.model->rowOf("power-rest.seconds") >= 0);
    CHECK(desk.model->rowOf(kBand) == -1);
    CHECK(desk.model->rowCount() < all);
    desk.words->setText("no such words");
    CHECK(desk.model->rowCount() == 0);
    QStringList shown;
    for (const QLabel* label : desk.page.findChildren<QLabel*>())
        if (label->isVisible()) shown << label->text();
    CHECK(shown.contains("No limit has all of these words."));
    desk.words->clear();
    CHECK(desk.model->rowCount() == all);
    REQUIRE(*setLimit(*desk.open, kSlack, LimitValue{30, 30, false}));
    REQUIRE(*setLimit(*desk.open, "power-rest.weight_look", LimitValue{5, 5, false}));
    desk.page.findChildren<QCheckBox*>()[0]->setChecked(true);
    CHECK(desk.model->rowCount() == 4); // two heads, a limit and a weight
    CHECK(desk.model->rowOf("power-rest.weight_look") > 0);
}

TEST_CASE("While a value is typed, what it would change in the month stands beside it, unstored") {
    Desk desk;
    const double penalty = desk.draft->verdict().penalty;
    CellEditor* editor = desk.type(kSlack, "5 min");
    CHECK(desk.said().contains("With 300 s, in September 2026"));
    CHECK(desk.said().contains("Would go (1)"));
    CHECK(desk.said().contains(QString("Penalty %1 → %2").arg(penalty).arg(penalty - 10)));
    CHECK(desk.set(kSlack) == nullptr);
    CHECK(desk.draft->verdict().penalty == penalty);
    Desk::enter(editor);
    REQUIRE(desk.set(kSlack) != nullptr);
    CHECK(*desk.set(kSlack) == LimitValue{300, 300, false});
    CHECK(desk.draft->verdict().penalty == Approx(penalty - 10));
    CHECK(desk.said().contains("With the rule book's 0 s, in September 2026"));
    CHECK(desk.said().contains("Would be found (1)"));
    REQUIRE(desk.open->undo().ok());
    CHECK(desk.set(kSlack) == nullptr);
    CHECK(desk.said().contains("Found against it (1)"));
}

TEST_CASE("Esc leaves a value as it was") {
    Desk desk;
    CellEditor* editor = desk.type(kSlack, "90");
    QTest::keyClick(editor, Qt::Key_Escape);
    CHECK(desk.set(kSlack) == nullptr);
    CHECK(desk.open->undoText() == nullptr);
    CHECK(desk.said().contains("Found against it (1)"));
}

TEST_CASE("Typing on a line opens its value and takes the place of what is there") {
    Desk desk;
    desk.page.goTo(QString::fromStdString(kSlack));
    desk.table->setCurrentIndex(desk.table->currentIndex().siblingAtColumn(LimitsModel::Meaning));
    QTest::keyClick(desk.table, Qt::Key_4);
    auto* editor = desk.table->findChild<CellEditor*>();
    REQUIRE(editor != nullptr);
    QTest::keyClicks(editor, "5");
    Desk::enter(editor);
    REQUIRE(desk.set(kSlack) != nullptr);
    CHECK(desk.set(kSlack)->lo == 45);
}

TEST_CASE("What is not understood keeps the line open and says what is") {
    Desk desk;
    CellEditor* editor = desk.type(kBand, "soon");
    CHECK(desk.notice().isEmpty()); // till the coach wants to leave
    Desk::enter(editor);
    CHECK(editor->isVisible());
    CHECK(editor->inTrouble());
    CHECK(desk.notice().contains("“soon” is not understood: write lowest and highest"));
    CHECK(desk.set(kBand) == nullptr);
    editor->selectAll();
    QTest::keyClicks(editor, "50-130");
    CHECK(desk.notice().isEmpty());
    Desk::enter(editor);
    REQUIRE(desk.set(kBand) != nullptr);
    CHECK(*desk.set(kBand) == LimitValue{50, 130, true});
}

TEST_CASE("Emptied, or as the rule book has it, a limit is the rule book's again") {
    Desk desk;
    const char* text = GENERATE("", "60-120");
    REQUIRE(*setLimit(*desk.open, kBand, LimitValue{50, 130, true}));
    CellEditor* editor = desk.type(kBand, text);
    if (!*text) QTest::keyClick(editor, Qt::Key_Backspace); // what was there is chosen
    Desk::enter(editor);
    CHECK(desk.set(kBand) == nullptr);
}

TEST_CASE("Delete and the button put one limit back, and a question stands before all of them") {
    Desk desk;
    Coach coach;
    REQUIRE(*setLimit(*desk.open, kBand, LimitValue{50, 130, true}));
    REQUIRE(*setLimit(*desk.open, kSlack, LimitValue{30, 30, false}));
    desk.page.goTo(QString::fromStdString(kBand));
    desk.table->setFocus();
    QTest::keyClick(desk.table, Qt::Key_Delete);
    CHECK(desk.set(kBand) == nullptr);
    QPushButton* one = desk.button("Back to the rule book's");
    REQUIRE(one != nullptr);
    CHECK_FALSE(one->isEnabled());
    desk.page.goTo(QString::fromStdString(kSlack));
    CHECK(one->isEnabled());
    QPushButton* all = desk.button("All back…");
    REQUIRE(all != nullptr);
    coach.button = -1;
    all->click();
    CHECK(desk.set(kSlack) != nullptr);
    coach.button = 0;
    all->click();
    CHECK(desk.set(kSlack) == nullptr);
    CHECK_FALSE(all->isEnabled());
    CHECK(coach.asked.size() == 4);
}

TEST_CASE("A limit that can't be stored is told, and is as before") {
    Desk desk;
    desk.file->full = true;
    CellEditor* editor = desk.type(kSlack, "90");
    Desk::enter(editor);
    CHECK(desk.notice().contains("The disk is full."));
    CHECK(desk.set(kSlack) == nullptr);
}

TEST_CASE("A limit moved brings an accepted finding back; the page tells beforehand") {
    Desk desk;
    for (const Finding& f : desk.draft->verdict().findings)
        if (f.rule == "section-length") {
            REQUIRE(*acceptFinding(*desk.open, month("2026-09"), f, "Open day."));
            break;
        }
    REQUIRE(desk.draft->verdict().accepted.size() == 1);
    desk.type("section-length.weight_look", "3");
    CHECK(desk.said().contains("Nothing changes in this month."));
}

TEST_CASE("A finding leads to its limit, the limit back to the Bench; the menu leads there too") {
    FrameDesk d;
    d.openSmallGym();
    QWidget* bench = d.work().page();
    d.press(Qt::Key_F9);
    auto* list = bench->findChild<FindingsList*>();
    REQUIRE(list->hasFocus());
    const auto* rows = static_cast<FindingsModel*>(list->model());
    int row = 0;
    while (rows->at(row).finding.limitName.empty()) ++row;
    list->setCurrentIndex(rows->index(row));
    const std::string key = rows->at(row).finding.rule + "." + rows->at(row).finding.limitName;
    d.press(Qt::Key_L, {}, list);
    auto* page = d.window.findChild<LimitsPage*>();
    REQUIRE(d.work().page() == page);
    auto* table = page->findChild<LimitsTable*>();
    const auto* limits = static_cast<LimitsModel*>(table->model());
    CHECK(table->hasFocus());
    REQUIRE(limits->limitAt(table->currentIndex().row()) != nullptr);
    CHECK(limits->limitAt(table->currentIndex().row())->key == key);
    for (const char* place : {"place-bench", "place-sheets"})
        CHECK_FALSE(d.window.actions().find(QLatin1String(place))->isChecked());
    d.press(Qt::Key_Escape);
    CHECK(d.work().page() == bench);
    CHECK(d.window.actions().find(QStringLiteral("place-bench"))->isChecked());
    d.window.actions().find(QStringLiteral("house-limits"))->trigger();
    CHECK(d.work().page() == page);
    d.press(Qt::Key_1, Qt::AltModifier);
    CHECK(d.work().page() == bench);
}
