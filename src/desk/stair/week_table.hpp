// SPDX-License-Identifier: GPL-3.0-or-later
// A table whose columns stand under the steps of the stair; the week on show is shaded.
#pragma once
#include "desk/stair/week_models.hpp"

#include <QTableView>

namespace bw {

// In pixels; the same for the stair and the tables below it.
struct WeekColumns {
    int names = 180, dose = 60, week = 120;
    [[nodiscard]] int left() const { return names + dose; }
    bool operator==(const WeekColumns&) const = default;
};

class WeekTable : public QTableView {
    Q_OBJECT
public:
    WeekTable(WeekModel& model, const QString& name, QWidget* parent);

    void setColumns(const WeekColumns& columns);
    void showWeek(int week); // from 0
    [[nodiscard]] int week() const { return week_; }
    void setEmptyText(const QString& text);
    [[nodiscard]] int wholeHeight() const; // without scrolling

Q_SIGNALS:
    void moved(const QModelIndex& to);   // by the coach
    void entered(const QModelIndex& at); // Enter or a double click

protected:
    void currentChanged(const QModelIndex& to, const QModelIndex& from) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void layOutRows();
    WeekColumns columns_;
    QString empty_;
    int week_ = 0;
};

} // namespace bw
