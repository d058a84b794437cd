// SPDX-License-Identifier: GPL-3.0-or-later
// The Floor: the class as it will run, lane by lane; beside it when it ends, what is waited for and
// what would help. Everything is played in the background.
#pragma once
#include "desk/floor/floor_buys.hpp"
#include "desk/floor/floor_runner.hpp"

#include <QWidget>

class QLabel;
class QPushButton;
class QStackedLayout;

namespace bw {

class FinishChart;
class FloorControls;
class FloorLanes;
class WaitTable;

class FloorPage : public QWidget {
    Q_OBJECT
public:
    FloorPage(Draft& draft, FloorRunner& runner, QWidget* parent); // both must outlive it

Q_SIGNALS:
    void picked(bw::Place place); // after Draft::setPlace: show these rows
    void failed(bw::Message why); // a change could not be stored

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QWidget* makePicture();
    QWidget* makeFigures();
    void ask();
    [[nodiscard]] FloorTargets targets();
    void refresh();
    void tellPiece();
    void showTrouble(const Message& why, Place place);
    void apply(const FloorChange& change);
    void goTo(Place place);

    Draft& draft_;
    FloorRunner& runner_;
    FloorControls* controls_;
    QLabel *summary_, *piece_ = nullptr, *trouble_ = nullptr;
    QPushButton* toRows_ = nullptr;
    FloorLanes* lanes_ = nullptr;
    FinishChart* finish_ = nullptr;
    WaitTable* waits_ = nullptr;
    FloorBuys* buys_ = nullptr;
    QStackedLayout* picture_ = nullptr;
    Place troubled_;
};

} // namespace bw
