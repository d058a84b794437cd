// SPDX-License-Identifier: GPL-3.0-or-later
// The line above the class grid: the class date and what it is the week of, whom to show, and what
// can be done with members and results.
#pragma once
#include "blockwright/model/calendar.hpp"

#include <QWidget>

class QAction;
class QDateEdit;
class QHBoxLayout;
class QLabel;
class QLineEdit;
class QMenu;

namespace bw {

class DayBar : public QWidget {
    Q_OBJECT
public:
    DayBar(Date today, QWidget* parent);

    [[nodiscard]] Date date() const;
    void setDate(Date date);             // says changed() when it is another
    [[nodiscard]] bool whole() const;    // warm-up and finisher, too
    [[nodiscard]] bool onlyCame() const; // those who came, and nobody else
    [[nodiscard]] QString filter() const;
    void setWords(const QString& words); // week and title, how many came
    [[nodiscard]] QMenu& members() { return *members_; }
    [[nodiscard]] QMenu& results() { return *results_; }

Q_SIGNALS:
    void changed();        // another date, or other columns
    void membersChanged(); // others are to be shown
    void gridWanted();     // Enter in the filter

private:
    void addDay(QHBoxLayout& row);
    void addChoices(QHBoxLayout& row);

    Date today_;
    QDateEdit* day_;
    QLabel* words_;
    QLineEdit* filter_;
    QMenu *members_ = nullptr, *results_ = nullptr;
    QAction *came_ = nullptr, *whole_ = nullptr;
};

} // namespace bw
