// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QList>
#include <QStringList>

class QAction;
class QWidget;

namespace bw {

class Actions;

// One line of the sheet of keys; a heading has no keys.
struct KeyLine {
    QString text, keys;
};
// Everything of the registry that has a key and is at hand, under the heading of its group.
[[nodiscard]] QList<KeyLine> keyLines(const Actions& actions);

// As the desktop writes them: "Ctrl+Shift+Z", "Ctrl+Y".
[[nodiscard]] QStringList keysOf(const QAction& action);

void showKeySheet(const Actions& actions, QWidget* window);

} // namespace bw
