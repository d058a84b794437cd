// SPDX-License-Identifier: GPL-3.0-or-later
// The list of findings. Up and Down walk, Enter goes to the rows, T does the first thing to try, 2
// to 9 the others, the menu key offers all of them.
#pragma once
#include "desk/bench/findings_delegate.hpp"

#include <QListView>

#include <functional>

namespace bw {

class FindingsList : public QListView {
    Q_OBJECT
public:
    FindingsList(FindingsModel& model, QWidget* parent);

    // Puts the model's new rows in, keeping the current finding while it is there; that choice is
    // not the coach's and is not told.
    void renew(const std::function<void()>& change);
    [[nodiscard]] const FindingRow* current() const; // null: none is chosen

Q_SIGNALS:
    void chosen(int row);   // by the coach
    void goWanted(int row); // and to its rows
    void tryWanted(int row, int action);

protected:
    void currentChanged(const QModelIndex& now, const QModelIndex& before) override;
    void focusInEvent(QFocusEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyboardSearch(const QString&) override {} // letters are commands here
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Hit {
        QPersistentModelIndex index;
        int action = -1;
    };
    [[nodiscard]] Hit hitAt(QPoint point) const;
    void hover(const Hit& hit);
    void offer(const QModelIndex& index, QPoint globalPoint);

    FindingsModel& model_;
    FindingsDelegate* delegate_;
    Hit pressed_;
    bool updating_ = false;
};

} // namespace bw
