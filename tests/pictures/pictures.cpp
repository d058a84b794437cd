// SPDX-License-Identifier: GPL-3.0-or-later
// Draws the screens as the docs show them: the real window on the demo, without a display, in a
// fixed font and size, so that the pictures change only when the program does.
//   pictures FOLDER
#include "desk/backups/backups_dialog.hpp"
#include "desk/bench/beam_panel.hpp"
#include "desk/bench/bench_page.hpp"
#include "desk/bench/cell_editor.hpp"
#include "desk/bench/draft.hpp"
#include "desk/bench/findings_panel.hpp"
#include "desk/bench/reason_line.hpp"
#include "desk/bench/sheet_rows.hpp"
#include "desk/bench/sheet_view.hpp"
#include "desk/board/board_view.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/main_window.hpp"
#include "desk/frame/workspace.hpp"
#include "desk/ledger/class_model.hpp"
#include "desk/ledger/class_view.hpp"
#include "desk/ledger/ledger_page.hpp"
#include "desk/limits/limits_page.hpp"
#include "desk/propose/propose_strip.hpp"
#include "desk/shelf/shelf_page.hpp"
#include "desk/shelf/word_line.hpp"
#include "edit/month_verbs.hpp"
#include "sheet_pictures.hpp"
#include "support/fixtures.hpp"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QLineEdit>
#include <QTableView>
#include <QTest>

#include <cstdio>

using namespace bw;

namespace {
constexpr QSize kSize{1280, 800};

void settle() {
    for (int i = 0; i < 3; ++i) QCoreApplication::processEvents();
}

bool save(QWidget& what, const QString& folder, const QString& name) {
    settle();
    const QString file = QDir(folder).filePath(name + QStringLiteral(".png"));
    const bool saved = what.grab().save(file);
    std::printf("%s %s\n", saved ? "drawn" : "NOT drawn", qPrintable(file));
    return saved;
}

// The list of exercises open under the cell, drawn onto the picture of the window.
bool saveTyping(MainWindow& window, const QString& folder) {
    auto* sheet = window.findChild<SheetView*>();
    const QModelIndex cell = sheet->model()->index(4, static_cast<int>(SheetColumn::Exercise));
    sheet->setCurrentIndex(cell);
    sheet->edit(cell);
    auto* editor = sheet->findChild<CellEditor*>();
    for (const char c : {'h', 'i', 'n', 'g', 'e'}) QTest::keyClick(editor, c);
    settle();
    QPixmap picture = window.grab();
    if (QWidget* list = QApplication::activePopupWidget())
        list->render(&picture, window.mapFromGlobal(list->mapToGlobal(QPoint(0, 0))));
    const QString file = QDir(folder).filePath(QStringLiteral("typing.png"));
    const bool saved = picture.save(file);
    std::printf("%s %s\n", saved ? "drawn" : "NOT drawn", qPrintable(file));
    if (QWidget* list = QApplication::activePopupWidget()) list->hide();
    QTest::keyClick(editor, Qt::Key_Escape);
    settle();
    return saved;
}

void choose(MainWindow& window, const std::string& rule) {
    auto* list = window.findChild<FindingsList*>();
    const auto* rows = static_cast<FindingsModel*>(list->model());
    for (int row = 0; row < rows->rowCount(); ++row)
        if (rows->at(row).finding.rule == rule) list->setCurrentIndex(rows->index(row));
}

// One finding accepted, and another being asked about.
bool saveAccepting(MainWindow& window, const QString& folder) {
    auto* panel = window.findChild<FindingsPanel*>();
    const auto answer = [&](const char* reason) {
        panel->askWhy();
        auto* line = panel->findChild<ReasonLine*>()->findChild<QLineEdit*>();
        QTest::keyClicks(line, reason);
        return line;
    };
    choose(window, "section-length");
    QTest::keyClick(answer("Open day: the doors close late."), Qt::Key_Return);
    auto* head = panel->findChild<QAbstractButton*>(QStringLiteral("accepted-head"));
    head->setChecked(true);
    choose(window, "superset-work");
    settle();
    auto* line = answer("They find their weights in these weeks.");
    const bool saved = save(*panel->parentWidget(), folder, QStringLiteral("accept"));
    QTest::keyClick(line, Qt::Key_Escape);
    head->setChecked(false);
    return saved;
}

bool saveGym(MainWindow& window, const QString& folder) {
    window.actions().find(QStringLiteral("gym-and-kit"))->trigger();
    auto* kit = window.findChild<QTableView*>(QStringLiteral("kit-table"));
    kit->setCurrentIndex(kit->model()->index(7, 3)); // the weights of the kettlebells
    kit->setFocus(Qt::ShortcutFocusReason);
    return save(window, folder, QStringLiteral("gym"));
}

bool saveLimits(MainWindow& window, const QString& folder) {
    window.actions().find(QStringLiteral("house-limits"))->trigger();
    auto* page = window.findChild<LimitsPage*>();
    page->goTo(QStringLiteral("power-dose.stop_reps"));
    settle();
    auto* table = page->findChild<QTableView*>();
    QTest::keyClick(table, Qt::Key_1);
    auto* editor = table->findChild<CellEditor*>();
    QTest::keyClick(editor, Qt::Key_2);
    const bool saved = save(window, folder, QStringLiteral("limits"));
    QTest::keyClick(editor, Qt::Key_Escape);
    return saved;
}

// The best answer in the sheet, its class played.
bool saveProposal(MainWindow& window, const QString& folder) {
    window.actions().find(QStringLiteral("propose"))->trigger();
    ProposeStrip& strip = window.findChild<BenchPage*>()->proposals();
    const bool played = QTest::qWaitFor([&] { return strip.answer() && !strip.playing(); }, 60'000);
    const bool saved = save(window, folder, QStringLiteral("proposal"));
    strip.leave();
    return played && saved;
}

bool saveBoard(MainWindow& window, const QString& folder) {
    window.actions().find(QStringLiteral("board"))->trigger();
    auto* board = window.findChild<BoardView*>();
    board->showNormal();
    board->resize(1280, 720);
    for (int section = 0; section < 3; ++section) QTest::keyClick(board, Qt::Key_Space);
    const bool saved = save(*board, folder, QStringLiteral("board"));
    board->close();
    return saved;
}

bool saveFloor(MainWindow& window, const QString& folder) {
    window.actions().find(QStringLiteral("place-floor"))->trigger();
    const FloorRunner& floor = window.findChild<Workspace*>()->floor();
    return QTest::qWaitFor([&] { return floor.settled() && !floor.behind(); }, 60'000) &&
           save(window, folder, QStringLiteral("floor"));
}

// A member's loads, at a lift with a history.
bool saveStair(MainWindow& window, const QString& folder) {
    window.actions().find(QStringLiteral("place-stair"))->trigger();
    auto* box = window.findChild<QComboBox*>(QStringLiteral("stair-member"));
    box->lineEdit()->selectAll();
    QTest::keyClicks(box->lineEdit(), QStringLiteral("marit"));
    QTest::keyClick(box->lineEdit(), Qt::Key_Return);
    auto* slots = window.findChild<QTableView*>(QStringLiteral("stair-slots"));
    slots->setCurrentIndex(slots->model()->index(8, 3));
    slots->setFocus();
    return save(window, folder, QStringLiteral("stair"));
}

// Words that narrow it, and one of what is left.
bool saveShelf(MainWindow& window, const QString& folder) {
    window.actions().find(QStringLiteral("place-shelf"))->trigger();
    auto* page = window.findChild<ShelfPage*>();
    auto* filter = page->findChild<WordLine*>();
    filter->setFocus();
    QTest::keyClicks(filter, QStringLiteral("squat no barbell"));
    page->goTo(ExerciseId::parse("goblet-squat").value());
    page->setFocus();
    const bool saved = save(window, folder, QStringLiteral("shelf"));
    filter->clear();
    return saved;
}

// A class half written down, at a lift with a history.
bool saveLedger(MainWindow& window, const QString& folder) {
    window.actions().find(QStringLiteral("place-ledger"))->trigger();
    auto* page = window.findChild<LedgerPage*>();
    page->showDay(Date::of(2026, 11, 23).value());
    settle();
    const QModelIndex first = page->grid().currentIndex();
    const std::pair<int, const char*> typed[] = {
        {0, "40x6x2 2"}, {1, "56x6 2; 60x5 1"}, {2, "32x6x2 3"}, {3, "48x6 1"}};
    for (const auto& [row, sets] : typed)
        page->model().setData(first.siblingAtRow(row), QString::fromLatin1(sets), Qt::EditRole);
    page->grid().setCurrentIndex(first.sibling(1, first.column() + 2));
    page->grid().setFocus();
    return save(window, folder, QStringLiteral("ledger"));
}

// Backups of four evenings, before the last one's work.
void keepBackups(MainWindow& window) {
    const std::filesystem::path gym = window.workspace()->gym().file().path();
    std::filesystem::remove_all(backupFolder(gym)); // that of the real day
    const auto keep = [&](int day, int hour, BackupReason reason) {
        using namespace std::chrono;
        (void)backUp(gym, reason, local_days(2026y / November / day) + hours(hour) + minutes(day));
    };
    keep(20, 8, BackupReason::Daily);
    keep(21, 17, BackupReason::Import);
    keep(22, 9, BackupReason::Daily);
    keep(23, 18, BackupReason::Asked);
}

bool saveBackups(MainWindow& window, const QString& folder) {
    (void)setTitle(window.workspace()->gym(), Month::of(2026, 12).value(), "Salt and rope");
    window.actions().find(QStringLiteral("backups"))->trigger();
    auto* screen = window.findChild<BackupsDialog*>();
    (void)QTest::qWaitFor([&] { return screen->look().has_value(); }, 30'000);
    const bool saved = save(*screen, folder, QStringLiteral("backups"));
    screen->close();
    return saved;
}
} // namespace

int main(int argc, char* argv[]) {
    if (argc != 2) {
        std::fprintf(stderr, "usage: pictures FOLDER\n");
        return 2;
    }
    const test::TempFolder home;
    qputenv("BLOCKWRIGHT_HOME", QByteArray::fromStdString(home.path().string()));
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication app(argc, argv);
    QApplication::setFont(QFont(QStringLiteral("DejaVu Sans"), 10));
    const QString folder = QString::fromLocal8Bit(argv[1]);
    QDir().mkpath(folder);

    MainWindow window;
    window.setTheme(Theme::Light);
    window.resize(kSize);
    window.show();
    bool all = save(window, folder, QStringLiteral("start"));
    window.openDemo();
    window.resize(kSize);
    all = save(window, folder, QStringLiteral("bench")) && all;
    all = saveTyping(window, folder) && all;
    window.setTheme(Theme::Dark);
    all = save(window, folder, QStringLiteral("bench-dark")) && all;
    window.setTheme(Theme::Light);
    all = save(*window.findChild<BeamPanel*>(), folder, QStringLiteral("beam")) && all;
    all = saveAccepting(window, folder) && all;
    all = saveProposal(window, folder) && all;
    all = saveBoard(window, folder) && all;
    all = saveLimits(window, folder) && all;
    all = saveGym(window, folder) && all;
    all = saveFloor(window, folder) && all;
    all = saveStair(window, folder) && all;
    all = saveShelf(window, folder) && all;
    keepBackups(window);
    all = saveLedger(window, folder) && all;
    if (QAction* almanac = window.actions().find(QStringLiteral("place-almanac")))
        almanac->trigger();
    all = save(window, folder, QStringLiteral("almanac")) && all;
    all = test::drawSheets(folder) && all;
    if (QAction* print = window.actions().find(QStringLiteral("print"))) print->trigger();
    all = save(window, folder, QStringLiteral("sheets")) && all;
    return saveBackups(window, folder) && all ? 0 : 1;
}
