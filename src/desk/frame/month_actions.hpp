// SPDX-License-Identifier: GPL-3.0-or-later
// What is done with a month as a whole, and which month and week is on show, as entries of the
// registry.
#pragma once
#include "desk/bench/draft.hpp"

#include <QObject>

class QAction;

namespace bw {

class Actions;
class Notice;

class MonthActions : public QObject {
    Q_OBJECT
public:
    // Adds start-next, start-empty, copy-last, copy-shown, remove-month, previous-month,
    // next-month, week-1 ...
    MonthActions(Draft& draft, Actions& actions, Notice& notice, QWidget* window);

    void startNext(); // asks: empty, or a copy of the last
    void startEmpty();
    void copyLast();
    void copyShown();
    void removeShown();
    void step(int months); // to the nearest month there is

private:
    void addVerbs(Actions& actions);
    void addSteps(Actions& actions);
    void addWeeks(Actions& actions);
    void follow();
    void copied(const Result<bool>& did); // says why it was not, or marks what must change
    [[nodiscard]] Month nextMonth()
        const; // after the latest; without any, the running one, or the next late in a month
    [[nodiscard]] std::optional<Month> neighbour(int months) const;

    Draft& draft_;
    Notice& notice_;
    QWidget* window_;
    QAction *copy_ = nullptr, *copyShown_ = nullptr, *remove_ = nullptr, *start_ = nullptr,
            *empty_ = nullptr;
    QAction *previous_ = nullptr, *next_ = nullptr;
    QList<QAction*> weeks_;
};

} // namespace bw
