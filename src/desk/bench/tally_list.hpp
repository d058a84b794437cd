// SPDX-License-Identifier: GPL-3.0-or-later
// The tallies as bars with their numbers, in two columns. A click marks the rows that feed one,
// Enter goes to them.
#pragma once
#include <QListView>

namespace bw {

class TallyModel;

class TallyList : public QListView {
    Q_OBJECT
public:
    TallyList(TallyModel& model, QWidget* parent);

    QSize sizeHint() const override; // all of it
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    void picked(int row, bool go); // go: by Enter

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void keyboardSearch(const QString&) override {}
    void mousePressEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    [[nodiscard]] int rowHigh() const;
};

} // namespace bw
