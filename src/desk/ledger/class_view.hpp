// SPDX-License-Identifier: GPL-3.0-or-later
// The class grid, a spreadsheet to the fingers: typing opens a cell, Enter goes down, Tab to the
// right, "=" repeats last time, Delete takes the sets away, Esc drops what is not understood. The
// names at the left stay when exercises are scrolled.
#pragma once
#include <QTableView>

namespace bw {

class ClassDelegate;
class ClassModel;
class MembersHeader;

class ClassView : public QTableView {
    Q_OBJECT
public:
    ClassView(ClassModel& model, QWidget* parent);

    [[nodiscard]] ClassDelegate& delegate() { return *delegate_; }
    void setEmptyText(const QString& text); // shown while there is no cell
    void goOn(int rows, int columns);       // from the current cell, within the grid

Q_SIGNALS:
    void moved(const QModelIndex& to);

protected:
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    void keyPressEvent(QKeyEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void updateGeometries() override;

private:
    void layOut();
    [[nodiscard]] QModelIndex beside(int step) const;

    ClassModel& grid_;
    ClassDelegate* delegate_;
    MembersHeader* names_;
    QWidget* corner_; // above the names
    QString empty_;
};

} // namespace bw
