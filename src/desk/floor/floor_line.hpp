// SPDX-License-Identifier: GPL-3.0-or-later
// In the status line: how far the simulated class is, with Stop, once it takes longer than a blink;
// else how many classes the answers on show come from.
#pragma once
#include "desk/floor/floor_runner.hpp"

#include <QTimer>
#include <QWidget>

class QLabel;
class QProgressBar;
class QPushButton;

namespace bw {

class FloorLine : public QWidget {
    Q_OBJECT
public:
    FloorLine(FloorRunner& runner, QWidget* parent); // the runner must outlive it

private:
    void follow();
    void showWork();
    void progress(FloorStage stage, int done, int total);
    [[nodiscard]] QString standing() const;

    FloorRunner& runner_;
    QLabel* words_;
    QProgressBar* bar_;
    QPushButton* button_; // Stop, or Go on
    QTimer blink_;
};

} // namespace bw
