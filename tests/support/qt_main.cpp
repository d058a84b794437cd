// SPDX-License-Identifier: GPL-3.0-or-later
// Tests of windows and pages run without a display, in a fixed font and style, so that layouts are
// the same on every machine.
#include "support/catch_run.hpp"

#include <QApplication>
#include <QFont>
#include <QStyleFactory>

int main(int argc, char* argv[]) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication app(argc, argv);
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setFont(QFont(QStringLiteral("DejaVu Sans"), 10));
    return runCatch(argc, argv);
}
