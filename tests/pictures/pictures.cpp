// SPDX-License-Identifier: GPL-3.0-or-later
// Draws the screens as the docs show them: the real window on the demo, without a display, in a
// fixed font and size, so that the pictures change only when the program does.
//   pictures FOLDER
#include "desk/bench/cell_editor.hpp"
#include "desk/bench/draft.hpp"
#include "desk/bench/sheet_rows.hpp"
#include "desk/bench/sheet_view.hpp"
#include "desk/frame/actions.hpp"
#include "desk/frame/main_window.hpp"
#include "support/fixtures.hpp"

#include <QApplication>
#include <QDir>
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
    if (QAction* almanac = window.actions().find(QStringLiteral("place-almanac")))
        almanac->trigger();
    all = save(window, folder, QStringLiteral("almanac")) && all;
    if (QAction* print = window.actions().find(QStringLiteral("print"))) print->trigger();
    return save(window, folder, QStringLiteral("sheets")) && all ? 0 : 1;
}
