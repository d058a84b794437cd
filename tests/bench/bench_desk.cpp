// SPDX-License-Identifier: GPL-3.0-or-later
// From a keystroke in a dose cell to the repainted Bench, with the demo, at 1280 x 720 and 1920 x
// 1080. Prints the median and the slowest tenth; ends with 1 when a median is over one screen
// frame.
#include "desk/bench/bench_page.hpp"
#include "desk/bench/cell_editor.hpp"
#include "desk/bench/sheet_rows.hpp"
#include "desk/bench/sheet_view.hpp"
#include "desk/frame/main_window.hpp"
#include "desk/frame/workspace.hpp"
#include "support/fixtures.hpp"

#include <QApplication>
#include <QTest>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

using namespace bw;

namespace {
constexpr double kFrame = 16.0; // milliseconds
constexpr int kKeys = 300;

double milliseconds(std::chrono::steady_clock::time_point since) {
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - since)
        .count();
}

// One keystroke: the digit goes in, the draft is measured, every widget that changed is painted.
double keystroke(QWidget& editor, char key) {
    const auto start = std::chrono::steady_clock::now();
    QTest::keyClick(&editor, key);
    QCoreApplication::processEvents();
    return milliseconds(start);
}

double bench(MainWindow& window, QSize size) {
    window.resize(size);
    QCoreApplication::processEvents();
    auto* sheet = window.findChild<SheetView*>();
    const QModelIndex dose = sheet->model()->index(1, static_cast<int>(SheetColumn::Dose));
    sheet->setCurrentIndex(dose);
    sheet->edit(dose);
    auto* editor = sheet->findChild<CellEditor*>();
    std::vector<double> times;
    for (int i = 0; i < kKeys; ++i) {
        editor->clear();
        times.push_back(keystroke(*editor, static_cast<char>('1' + i % 9)));
    }
    QTest::keyClick(editor, Qt::Key_Escape);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    std::sort(times.begin(), times.end());
    std::printf(
        "keystroke to repainted Bench, %d x %d: median %.1f ms, slowest tenth from %.1f ms\n",
        size.width(), size.height(), times[kKeys / 2], times[kKeys * 9 / 10]);
    return times[kKeys / 2];
}
} // namespace

int main(int argc, char* argv[]) {
    const test::TempFolder home;
    qputenv("BLOCKWRIGHT_HOME", QByteArray::fromStdString(home.path().string()));
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication app(argc, argv);
    MainWindow window;
    window.setTheme(Theme::Light);
    window.openDemo();
    window.show();
    QCoreApplication::processEvents();
    const double small = bench(window, {1280, 720});
    const double large = bench(window, {1920, 1080});
    return small > kFrame || large > kFrame ? 1 : 0;
}
