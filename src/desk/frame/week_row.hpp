// SPDX-License-Identifier: GPL-3.0-or-later
// The weeks of the month side by side, one of them chosen.
#pragma once
#include <QWidget>

class QLabel;
class QToolButton;

namespace bw {

class Actions;
class Draft;

class WeekRow : public QWidget {
    Q_OBJECT
public:
    // Uses the actions week-1, week-2 and so on.
    WeekRow(Draft& draft, const Actions& actions, QWidget* parent);

private:
    void add(QAction* show, int number);
    void follow();

    Draft& draft_;
    QLabel* label_;
    QList<QToolButton*> buttons_;
};

} // namespace bw
