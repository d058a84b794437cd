// SPDX-License-Identifier: GPL-3.0-or-later
// The list of findings. Up and Down walk, Enter goes to the rows, T does the first thing to try, 2
// to 9 the others, A accepts it or takes that back, L leads to its limit, R to its rule, the menu
// key offers all of that.
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
    void putCurrent(int row);                                    // likewise; -1: none
    [[nodiscard]] const FindingRow* current() const;             // null: none is chosen
    QSize minimumSizeHint() const override { return {200, 44}; } // little: the screen may be small

Q_SIGNALS:
    void chosen(int row);   // by the coach
    void goWanted(int row); // and to its rows
    void tryWanted(int row, int action);
    void acceptWanted(int row); // or to take that back, of an accepted one
    void limitWanted(int row);
    void ruleWanted(int row);

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
    void act(const QModelIndex& index, int action);
    [[nodiscard]] bool letter(int row, int key);
    void offer(const QModelIndex& index, QPoint globalPoint);

    FindingsModel& model_;
    FindingsDelegate* delegate_;
    Hit pressed_;
    bool updating_ = false;
};

} // namespace bw
