// SPDX-License-Identifier: GPL-3.0-or-later
// ‹ September 2026 ›: one month back or on, and a list of all of them.
#pragma once
#include "blockwright/model/block.hpp"

#include <QWidget>

class QMenu;
class QToolButton;

namespace bw {

class Actions;
class Draft;

class MonthStepper : public QWidget {
    Q_OBJECT
public:
    // Uses the actions previous-month, next-month and start-next.
    MonthStepper(Draft& draft, const Actions& actions, QWidget* parent);

private:
    QToolButton* arrow(QAction* action, const QString& sign);
    void follow();
    void fill();
    void addMonth(const Block& block);

    Draft& draft_;
    QAction* start_;
    QToolButton* name_;
    QMenu* list_;
};

} // namespace bw
