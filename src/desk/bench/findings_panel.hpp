// SPDX-License-Identifier: GPL-3.0-or-later
// What the rule book says of the draft, beside the sheet. Choosing a finding marks its rows.
#pragma once
#include "desk/bench/draft.hpp"
#include "desk/bench/findings_list.hpp"

#include <QPointer>
#include <QTimer>
#include <QWidget>

class QLabel;
class QStackedLayout;

namespace bw {

class AcceptedFold;
class ReasonLine;

class FindingsPanel : public QWidget {
    Q_OBJECT
public:
    FindingsPanel(Draft& draft, QWidget* parent); // the draft must outlive it

    // The next (1) or previous (-1) finding, round and round. False when there is none.
    bool nextFinding(int step);
    [[nodiscard]] const Finding* current() const; // null: none is chosen
    void askWhy();                                // the chosen finding may stay
    // Of the chosen finding, as the house limits call it; empty when there is none.
    [[nodiscard]] QString limitKey() const;
    QSize sizeHint() const override; // little: it takes what is left

    // What the simulated class says is of an older draft; told when that lasts.
    void setFloorBehind(bool behind);

Q_SIGNALS:
    void failed(bw::Message why);         // something to try could not be stored
    void limitWanted(const QString& key); // of the house limits
    void ruleWanted(const QString& rule); // as the rule book calls it
    void picked(bw::Place place); // after Draft::setPlace: the coach wants to be at these rows

protected:
    void changeEvent(QEvent* event) override;

private:
    void assemble();
    void wire();
    QWidget* makeEmpty();
    void refresh();
    void showEmpty();
    void choose(int row);
    void go(int row);
    void tryIt(int row, int action);
    void ask(int row);
    void accept(const QString& reason);
    void takeItBack(int row);

    Draft& draft_;
    FindingsModel* model_;
    FindingsList* list_;
    ReasonLine* reason_;
    AcceptedFold* accepted_;
    QPointer<QWidget> cameFrom_;  // before the reason was asked for
    QPersistentModelIndex asked_; // the finding whose reason is asked for
    QLabel *empty_, *behind_;
    QTimer blink_;
    QStackedLayout* body_;
};

} // namespace bw
