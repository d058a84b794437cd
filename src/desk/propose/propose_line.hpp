// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QTimer>
#include <QWidget>

class QLabel;
class QProgressBar;
class QPushButton;

namespace bw {

class ProposeStrip;

// In the status line: how much of the best answer is proved, with Stop, once looking for it takes
// longer than a blink.
class ProposeLine : public QWidget {
    Q_OBJECT
public:
    static constexpr int kBlink = 500; // milliseconds

    // The strip must outlive it. A blink of 0: at once.
    ProposeLine(ProposeStrip& strip, QWidget* parent, int blink = kBlink);

private:
    void follow();
    void progress(double best, double bound);

    ProposeStrip& strip_;
    QLabel* words_;
    QProgressBar* bar_;
    QPushButton* stop_;
    QTimer blink_;
};

} // namespace bw
