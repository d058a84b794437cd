// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/run_desk.hpp"

#include "desk/frame/clean_exit.hpp"
#include "desk/frame/first_paint.hpp"
#include "desk/frame/launch.hpp"
#include "desk/frame/main_window.hpp"
#include "desk/frame/remembered.hpp"

#include <QApplication>

#include <cstdio>

namespace bw {

namespace {
// What was asked for, else what was open last, else the usual file, else the start page.
void openWanted(MainWindow& window, const Launch& launch) {
    std::error_code ignored;
    if (launch.demo)
        window.openDemo();
    else if (launch.file)
        window.openFile(*launch.file);
    else if (const auto last = Remembered::last())
        window.openFile(*last);
    else if (std::filesystem::exists(defaultGymPath(), ignored))
        window.openFile(defaultGymPath());
    if (!window.workspace()) window.showStart();
    if (launch.month) window.showMonth(*launch.month);
}

void reportFirstPaint(MainWindow& window) {
    afterFirstPaint(&window, [] {
        std::printf("%.0f\n", millisSinceStart());
        QCoreApplication::quit();
    });
}

void nameProgram() {
    QCoreApplication::setApplicationName(QStringLiteral("Blockwright"));
    QCoreApplication::setApplicationVersion(QStringLiteral(BLOCKWRIGHT_VERSION));
}

bool answered(const Result<Launch>& launch) {
    if (!launch || launch->answer.isEmpty()) return false;
    std::fputs(launch->answer.toUtf8().constData(), stdout);
    return true;
}

// Help and version need no display. What is wrong with the rest is told later, when Qt has taken
// its own options out.
bool answersAtOnce(int argc, char* argv[]) {
    const QCoreApplication app(argc, argv);
    nameProgram();
    return answered(readLaunch(QCoreApplication::arguments()));
}
} // namespace

int runDesk(int argc, char* argv[]) {
    if (argc > 1 && answersAtOnce(argc, argv)) return 0;
    QGuiApplication::setHighDpiScaleFactorRoundingPolicy(
        Qt::HighDpiScaleFactorRoundingPolicy::PassThrough);
    QApplication app(argc, argv);
    nameProgram();
    QGuiApplication::setDesktopFileName(QStringLiteral("io.github.blockwright.Blockwright"));
    const auto launch = readLaunch(QApplication::arguments());
    if (!launch) {
        std::fprintf(stderr, "%s\n", launch.why().english().c_str());
        return 2;
    }
    if (answered(launch)) return 0; // beside an option of Qt's own
    speak(launch->language.value_or(Remembered::language()));
    const CleanExit leaving(nullptr);
    applyTheme(app, launch->theme.value_or(Remembered::theme()));
    MainWindow window;
    if (launch->theme) window.setTheme(*launch->theme);
    if (launch->language) window.markLanguage(*launch->language);
    openWanted(window, *launch);
    if (launch->benchStart) reportFirstPaint(window);
    window.show();
    return QApplication::exec();
}

} // namespace bw
