// SPDX-License-Identifier: GPL-3.0-or-later
// What the rule book says of the draft, beside the sheet. Choosing a finding marks its rows.
#pragma once
#include "desk/bench/draft.hpp"
#include "desk/bench/findings_list.hpp"

#include <QTimer>
#include <QWidget>

class QLabel;
class QStackedLayout;

namespace bw {

class FindingsPanel : public QWidget {
    Q_OBJECT
public:
    FindingsPanel(Draft& draft, QWidget* parent); // the draft must outlive it

    // The next (1) or previous (-1) finding, round and round. False when there is none.
    bool nextFinding(int step);
    [[nodiscard]] const Finding* current() const; // null: none is chosen
    // What the simulated class says is of an older draft; told when that lasts.
    void setFloorBehind(bool behind);

Q_SIGNALS:
    void failed(bw::Message why); // something to try could not be stored
    void picked(bw::Place place); // after Draft::setPlace: the coach wants to be at these rows

protected:
    void changeEvent(QEvent* event) override;

private:
    QWidget* makeEmpty();
    void refresh();
    void showEmpty();
    void choose(int row);
    void go(int row);
    void tryIt(int row, int action);

    Draft& draft_;
    FindingsModel* model_;
    FindingsList* list_;
    QLabel *empty_, *behind_;
    QTimer blink_;
    QStackedLayout* body_;
};

} // namespace bw
