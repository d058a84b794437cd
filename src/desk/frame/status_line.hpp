// SPDX-License-Identifier: GPL-3.0-or-later
// The line at the bottom: which gym file, and that all changes are kept, or who else writes to it.
#pragma once
#include <QWidget>

class QLabel;

namespace bw {

class GymFile;
class WorkLine;

class StatusLine : public QWidget {
    Q_OBJECT
public:
    StatusLine(GymFile& file, QWidget* parent);
    [[nodiscard]] WorkLine& work() { return *work_; }
    [[nodiscard]] QString text() const;
    void add(QWidget* part); // at the right

private:
    QLabel* state_;
    WorkLine* work_;
};

} // namespace bw
