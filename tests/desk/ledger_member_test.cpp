// SPDX-License-Identifier: GPL-3.0-or-later
// The member beside the grid, members coming and going, and tables of results.
#include "desk/frame/actions.hpp"
#include "desk/frame/workspace.hpp"
#include "desk/ledger/day_bar.hpp"
#include "desk/ledger/import_dialog.hpp"
#include "desk/ledger/import_preview.hpp"
#include "desk/ledger/member_dialog.hpp"
#include "desk/ledger/trend_chart.hpp"
#include "interchange/bundle.hpp"
#include "ledger_gym.hpp"
#include "support/catch.hpp"

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QLineEdit>
#include <QMenu>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>
#include <QTimer>

using namespace bw;
using namespace bw::test;

namespace {
void choose(LedgerDesk& d, const char* action) {
    QAction* found = d.window.actions().find(QLatin1String(action));
    REQUIRE(found);
    found->trigger();
    d.settle();
}
// Does this in the dialog that opens next.
template <class D> void answer(const std::function<void(D&)>& work) {
    QTimer::singleShot(0, [work] {
        auto* dialog = qobject_cast<D*>(QApplication::activeModalWidget());
        if (!dialog) throw std::runtime_error("no such dialog");
        work(*dialog);
    });
}
QString saved(const TempFolder& folder, const char* name) {
    return QString::fromStdString((folder / name).string());
}
} // namespace

TEST_CASE("Beside the grid stands the member of the row, in the exercise of the column") {
    LedgerDesk d;
    d.go(0, 0);
    CHECK(d.words("member-name") == "Ada");
    const MemberStory* story = d.page->panel().story();
    REQUIRE(story);
    CHECK(story->days.size() == 2);
    CHECK(story->exercise == ex("floor-press"));
    CHECK(d.words("member-estimate").find("8 times in 10") != std::string::npos);
    CHECK(d.words("member-estimate").find("last 5 × 42.5 kg with 2 in reserve on 2026-11-05") !=
          std::string::npos);
    CHECK(d.words("member-next").starts_with("Next: "));
    d.go(0, 1);
    CHECK(d.words("member-estimate").starts_with("No results of it yet."));
    d.go(1, 0);
    CHECK(d.words("member-name") == "Bo");
    d.go(1, 2); // what a flag puts in the place of the drafted
    CHECK(d.page->panel().story()->exercise == ex("low-press"));
}

TEST_CASE("A set typed in is in the trend at once, and as of an earlier day it is not") {
    LedgerDesk d;
    d.go(0, 0);
    const double before = d.page->panel().story()->estimate->kg;
    d.keys("60x5 1");
    d.press(Qt::Key_Return);
    d.go(0, 0);
    CHECK(d.page->panel().story()->days.size() == 3);
    CHECK(d.page->panel().story()->estimate->kg > before);
    d.page->showDay(day("2026-11-04"));
    d.go(0, 0);
    CHECK(d.page->panel().story()->days.size() == 1);
}

TEST_CASE("The trend is walked by keys, and each day is said") {
    LedgerDesk d;
    d.go(0, 0);
    auto* trend = d.page->findChild<TrendChart*>();
    trend->setFocus();
    CHECK(d.words("member-day")
              .starts_with("Thu 5 Nov 2026: 5 × 42.5 kg with 2 in reserve; could lift "));
    d.press(Qt::Key_Left);
    CHECK(d.words("member-day").starts_with("Tue 3 Nov 2026: 5 × 40 kg"));
    d.press(Qt::Key_Left);
    CHECK(d.words("member-day").starts_with("Tue 3 Nov 2026"));
    d.press(Qt::Key_End);
    CHECK(trend->accessibleDescription().startsWith(QStringLiteral("Thu 5 Nov 2026")));
}

TEST_CASE("Flags tell what to do instead, and who decides") {
    LedgerDesk d;
    d.go(1, 0);
    const std::string flags = d.words("member-flags");
    CHECK(flags.find("avoid overhead – right &lt;side&gt;") != std::string::npos);
    CHECK(flags.find("C1 high-press → low-press") != std::string::npos);
    CHECK(flags.find("licensed professional decides") != std::string::npos);
    d.go(0, 0);
    CHECK_FALSE(d.page->findChild<QLabel*>(QStringLiteral("member-flags"))->isVisible());
}

TEST_CASE("A member is added with a flag, renamed and let go, each one step") {
    LedgerDesk d;
    answer<MemberDialog>([](MemberDialog& dialog) { dialog.accept(); });
    choose(d, "add-member"); // accepted blank: the verb refuses
    CHECK(d.gym().members.size() == 3);
    CHECK(d.notice().contains(QStringLiteral("needs a name")));
    answer<MemberDialog>([](MemberDialog& dialog) {
        auto* buttons = dialog.findChild<QDialogButtonBox*>();
        buttons->button(QDialogButtonBox::Ok)->click(); // without a name
        CHECK(dialog.isVisible());
        dialog.findChild<QLineEdit*>(QStringLiteral("name"))->setText(QStringLiteral("Dee"));
        dialog.addFlag({Demand::Knee, FlagLevel::Limit, "stairs", {}});
        buttons->button(QDialogButtonBox::Ok)->click();
    });
    choose(d, "add-member");
    REQUIRE(d.gym().members.size() == 4);
    CHECK(d.gym().members.back().flags.front().note == "stairs");
    CHECK(d.page->member()->name == "Dee");
    answer<MemberDialog>([](MemberDialog& dialog) {
        dialog.findChild<QCheckBox*>()->setChecked(false);
        dialog.findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok)->click();
    });
    choose(d, "edit-member");
    CHECK_FALSE(d.gym().members.back().active);
    CHECK(d.model().rowCount() == 2);
    REQUIRE(*d.work().gym().undo());
    CHECK(d.model().rowCount() == 3);
    REQUIRE(*d.work().gym().undo());
    CHECK(d.gym().members.size() == 3);
}

TEST_CASE("Erasing a member asks, names what goes, and takes the results along") {
    LedgerDesk d;
    d.go(0, 0);
    choose(d, "erase-member"); // the coach closes the question
    CHECK(d.gym().members.size() == 3);
    const std::string asked = d.coach.asked.join(QLatin1Char('\n')).toStdString();
    CHECK(asked.find("Ada will be taken out") != std::string::npos);
    CHECK(asked.find("Tue 3 Nov 2026 to Thu 5 Nov 2026") != std::string::npos);
    CHECK(d.coach.lastButtons == QStringList{QStringLiteral("Erase Ada")});
    d.coach.button = 0;
    choose(d, "erase-member");
    CHECK(d.gym().members.size() == 2);
    CHECK(d.file->results.empty());
    CHECK(d.model().member(0)->name == "Bo");
}

TEST_CASE("All of a member is written as a bundle, all results as a table that reads back") {
    LedgerDesk d;
    const TempFolder folder;
    d.go(0, 0);
    d.coach.save = saved(folder, "ada.json");
    choose(d, "write-member");
    const auto bundle = readBundle(readText(folder / "ada.json"), &d.gym());
    REQUIRE(bundle.bundle.has_value());
    CHECK(bundle.bundle->members.front().name == "Ada");
    CHECK(bundle.bundle->results.size() == 6);
    d.coach.save = saved(folder, "all.csv");
    choose(d, "write-table");
    const auto table = readResultsCsv(readText(folder / "all.csv"), d.gym());
    CHECK(table.faults.empty());
    CHECK(table.results == d.file->results);
}

TEST_CASE("A name that a spreadsheet would take for a formula is written as text") {
    Gym gym = ledgerGym();
    gym.members.front().name = "=HYPERLINK(\"x\")";
    LedgerDesk d(std::move(gym));
    const TempFolder folder;
    d.coach.save = saved(folder, "all.csv");
    choose(d, "write-table");
    CHECK(readText(folder / "all.csv").find("\"'=HYPERLINK(\"\"x\"\")\"") != std::string::npos);
}

TEST_CASE("A table is tried out, its columns are given a meaning, and it is one step of undo") {
    LedgerDesk d;
    const TempFolder folder;
    writeText(folder / "t.csv", "Who;When;Lift;Reps;Weight (kg)\n"
                                "Ada;2026-11-03;floor-press;6;40\n"
                                "Bo;2026-11-03;floor-press;5;30\n"
                                "Zoe;2026-11-03;floor-press;5;30\n");
    d.coach.open = saved(folder, "t.csv");
    const auto before = d.file->results;
    answer<ImportDialog>([](ImportDialog& dialog) {
        const auto label = [&](const char* name) {
            return dialog.findChild<QLabel*>(QLatin1String(name))->text().toStdString();
        };
        auto* faults = dialog.findChild<QPlainTextEdit*>();
        auto* bring = dialog.findChild<QPushButton*>(QStringLiteral("bring-in"));
        CHECK(faults->toPlainText().contains(QStringLiteral("missing: member, date")));
        CHECK_FALSE(bring->isEnabled());
        QAbstractItemModelTester tester(&dialog.preview(),
                                        QAbstractItemModelTester::FailureReportingMode::Fatal);
        const auto boxes = dialog.findChild<QTableView*>()->findChildren<QComboBox*>();
        REQUIRE(boxes.size() == 5);
        CHECK(boxes[3]->currentText() == QStringLiteral("repetitions"));
        boxes[0]->setFocus();
        QTest::keyClick(boxes[0], Qt::Key_Down); // member
        boxes[1]->setFocus();
        QTest::keyClick(boxes[1], Qt::Key_Down); // on the way to the date
        CHECK(label("summary").starts_with("Two columns mean “member”: the first counts."));
        QTest::keyClick(boxes[1], Qt::Key_Down);
        QTest::keyClick(boxes[1], Qt::Key_Down);
        CHECK(boxes[0]->currentText() == QStringLiteral("member"));
        CHECK(boxes[1]->currentText() == QStringLiteral("date"));
        CHECK(label("summary") == "1 sets are new, 1 replace other figures, 0 are there already, "
                                  "1 of 3 rows are faulty.");
        CHECK(faults->toPlainText().startsWith(QStringLiteral("Line 4, member: ")));
        CHECK(label("undo") == "This is one step, which can be undone.");
        bring->click();
    });
    choose(d, "bring-in-table");
    CHECK(d.stored("m-002", "floor-press", "2026-11-03") == "30×5");
    CHECK(d.stored("m-001", "floor-press", "2026-11-03").starts_with("40×6"));
    REQUIRE(*d.work().gym().undo());
    CHECK(d.file->results == before);
}
