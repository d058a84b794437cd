// SPDX-License-Identifier: GPL-3.0-or-later
// "Find a command": what is found, by which words, and what Enter does.
#include "desk/frame/actions.hpp"
#include "desk/frame/command_panel.hpp"
#include "desk/frame/workspace.hpp"
#include "frame_desk.hpp"
#include "support/catch.hpp"

#include <QApplication>
#include <QLineEdit>
#include <QListWidget>
#include <QMenuBar>

namespace bw::test {

namespace {
QStringList textsFor(const QList<CommandLine>& all, const char* typed) {
    QStringList texts;
    for (const CommandLine& line : linesFor(all, QString::fromUtf8(typed))) texts << line.text;
    return texts;
}
CommandLine line(const char* group, const char* text, const char* key = "") {
    CommandLine out{QString::fromUtf8(group), QString::fromUtf8(text), {}, true, {}, {}};
    if (*key) out.keys << QString::fromUtf8(key);
    return out;
}
CommandLine found(FrameDesk& d, const char* id) {
    const QList<CommandLine> all = commandLines(d.window.actions(), *d.window.menuBar());
    const auto& entries = d.window.actions().all();
    for (std::size_t i = 0; i < entries.size(); ++i)
        if (entries[i].action->objectName() == QLatin1String(id))
            return all[static_cast<qsizetype>(i)];
    throw std::runtime_error(std::string("no ") + id);
}
// Opens the panel by its key, types, and gives what is lit.
QString lit(FrameDesk& d, const char* typed) {
    d.press(Qt::Key_F3);
    d.type(d.part<QLineEdit>("command-words"), QString::fromUtf8(typed));
    const QListWidgetItem* item = d.part<QListWidget>("command-list").currentItem();
    return item ? item->text() : QString();
}
bool open(FrameDesk& d) { return d.part<CommandPanel>("commands").isVisible(); }
} // namespace

TEST_CASE("Beginnings of words find a command in any order, whatever the case and the accents") {
    const QList<CommandLine> all{
        line("Bench", "Add a slot below", "Ctrl+Return"), line("Bench", "Lock the slot", "Ctrl+L"),
        line("Shelf", "Add an exercise…", "Ctrl+Shift+N"), line("Places", "Übersicht")};
    CHECK(textsFor(all, "slot add") == QStringList{all[0].text});
    CHECK(textsFor(all, "SL LO") == QStringList{all[1].text});
    CHECK(textsFor(all, "lot").isEmpty()); // the middle of a word is no beginning
    CHECK(textsFor(all, "add slot exercise").isEmpty());
    CHECK(textsFor(all, "ubers") == QStringList{all[3].text});
    CHECK(textsFor(all, "ctrl+l") == QStringList{all[1].text});
    CHECK(textsFor(all, "").size() == all.size());
}

TEST_CASE("The nearest line comes first, and its group with it") {
    const QList<CommandLine> all{line("Bench", "Go to the findings"), line("Bench", "Undo"),
                                 line("Floor", "Bench press again"), line("Places", "Bench")};
    CHECK(textsFor(all, "bench") ==
          QStringList{QStringLiteral("Bench press again"), QStringLiteral("Bench"),
                      QStringLiteral("Go to the findings"), QStringLiteral("Undo")});
}

TEST_CASE("Every action of the registry is in the index, with its key") {
    FrameDesk d;
    d.openSmallGym();
    const QList<CommandLine> all = commandLines(d.window.actions(), *d.window.menuBar());
    const auto& entries = d.window.actions().all();
    REQUIRE(static_cast<std::size_t>(all.size()) == entries.size());
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const CommandLine& l = all[static_cast<qsizetype>(i)];
        INFO(l.text.toStdString());
        CHECK(l.text == entries[i].action->iconText());
        CHECK(l.keys.size() == entries[i].action->shortcuts().size());
        CHECK(textsFor(all, l.text.toUtf8().constData()).contains(l.text));
    }
}

TEST_CASE("What is not at hand says why") {
    FrameDesk d;
    d.openSmallGym();
    CHECK(found(d, "lock").atHand);
    CHECK(found(d, "undo").whyNot == QLatin1String("there is nothing to undo"));
    CHECK(found(d, "week-6").whyNot == QLatin1String("the month has no such week"));
    CHECK(found(d, "next-month").whyNot == QLatin1String("no month is later"));
    d.press(Qt::Key_6, Qt::AltModifier);
    CHECK_FALSE(found(d, "lock").atHand);
    CHECK(found(d, "lock").whyNot == QLatin1String("first go to Bench, Alt+1"));
    CHECK(found(d, "erase-member").whyNot == QLatin1String("no member is chosen"));
    d.window.showStart();
    CHECK_FALSE(found(d, "print").atHand);
    CHECK(found(d, "print").whyNot == QLatin1String("no gym is on show"));
    CHECK(found(d, "open-gym").atHand);
}

TEST_CASE("A gym without months says that it has none, and proposes nothing") {
    FrameDesk d;
    Gym empty;
    empty.settings.name = "Tide Mill";
    d.window.take(OpenGym::over(std::make_unique<MemoryFile>(empty)));
    d.settle();
    for (const char* id : {"lock", "propose", "print", "remove-month"}) {
        INFO(id);
        CHECK_FALSE(found(d, id).atHand);
        CHECK(found(d, id).whyNot == QLatin1String("the gym has no month yet"));
    }
    CHECK(found(d, "start-empty").atHand);
}

TEST_CASE("Enter runs what is lit, and the keyboard is where it was") {
    FrameDesk d;
    d.openSmallGym();
    QWidget* before = QApplication::focusWidget();
    CHECK(lit(d, "lock") == QLatin1String("Lock the slot"));
    const Place at = d.work().draft().place();
    REQUIRE_FALSE(slotAt(d.shown(), at)->locked);
    d.press(Qt::Key_Return);
    CHECK_FALSE(open(d));
    CHECK(QApplication::focusWidget() == before);
    CHECK(slotAt(d.shown(), at)->locked);
}

TEST_CASE("What is not at hand is lit but does not run") {
    FrameDesk d;
    d.openSmallGym();
    d.press(Qt::Key_6, Qt::AltModifier);
    CHECK(lit(d, "lock slot") == QLatin1String("Lock the slot"));
    CHECK(d.part<QLineEdit>("command-words")
              .accessibleDescription()
              .contains(QLatin1String("first go to Bench")));
    d.press(Qt::Key_Return);
    CHECK(open(d));
    d.press(Qt::Key_Escape);
    CHECK_FALSE(open(d));
    CHECK_FALSE(d.work().gym().undoText());
}

TEST_CASE("Arrows go from line to line and never to a heading") {
    FrameDesk d;
    d.openSmallGym();
    QString now = lit(d, "");
    const auto& list = d.part<QListWidget>("command-list");
    int lines = 1;
    for (; lines < 300; ++lines) {
        const int row = list.currentRow();
        CHECK(list.currentItem()->flags() != Qt::NoItemFlags);
        d.press(Qt::Key_Down);
        if (list.currentRow() == row) break;
    }
    CHECK(static_cast<std::size_t>(lines) == d.window.actions().all().size() + 3); // and the months
    d.press(Qt::Key_Up);
    CHECK(list.currentRow() < list.count() - 1);
    for (int i = 0; i < 300; ++i) d.press(Qt::Key_PageUp);
    CHECK(list.currentItem()->text() == now);
}

TEST_CASE("Months are found by name and title, places by their word") {
    FrameDesk d;
    d.openSmallGym();
    CHECK(lit(d, "october 2026") == QStringLiteral("October 2026 · Tide of 2026-10"));
    d.press(Qt::Key_Return);
    CHECK(d.work().draft().month()->text() == "2026-10");
    CHECK(lit(d, "ledger") == QLatin1String("Ledger"));
    d.press(Qt::Key_Return);
    CHECK(d.work().page()->inherits("bw::LedgerPage"));
}

TEST_CASE("The panel goes when the keyboard goes elsewhere, and Tab stays within") {
    FrameDesk d;
    d.openSmallGym();
    CHECK(lit(d, "qqq").isEmpty());
    d.press(Qt::Key_Tab);
    CHECK(d.part<QListWidget>("command-list").hasFocus());
    d.press(Qt::Key_Z);
    CHECK(d.part<QLineEdit>("command-words").text() == QLatin1String("qqqz"));
    d.press(Qt::Key_4, Qt::AltModifier);
    CHECK_FALSE(open(d));
    CHECK(d.work().page()->inherits("bw::ShelfPage"));
}

TEST_CASE("A gym opened anew is searched, not the one before") {
    FrameDesk d;
    d.openSmallGym();
    CHECK(lit(d, "undo") == QLatin1String("Undo"));
    d.openSmallGym();
    d.press(Qt::Key_Escape);
    CHECK(lit(d, "stair") == QLatin1String("Stair"));
    d.press(Qt::Key_Return);
    CHECK(d.work().page()->inherits("bw::StairPage"));
}

} // namespace bw::test
