// SPDX-License-Identifier: GPL-3.0-or-later
// A table on paper that is typed in: a key opens the cell, Enter takes it and goes down, Tab takes
// it and goes on to the next that can be typed in, Delete empties it. Outside a cell Tab leads on
// to the next part of the page.
#pragma once
#include "desk/gym/typed_delegate.hpp"

#include <QTableView>

namespace bw {

class CellTrouble;

class TypedTable : public QTableView {
    Q_OBJECT
public:
    TypedTable(QAbstractTableModel& model, TypedDelegate::Reader reader, QWidget* parent);

    void finishTyping() { delegate_->finishTyping(*this); }
    void tell(const Message& why); // beside the cell
    void quiet();

Q_SIGNALS:
    void lineChanged(); // or the coach came to it

protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    void focusInEvent(QFocusEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
    void scrollContentsBy(int dx, int dy) override;

    // The cell that typing this key opens when the coach is on `now`; none: none does.
    [[nodiscard]] virtual QModelIndex cellFor(const QModelIndex& now, const QString& key) const;
    virtual void layOut() = 0; // the widths of the columns

private:
    [[nodiscard]] QModelIndex nextTyped(int step) const;
    bool open(QKeyEvent& event);

    TypedDelegate* delegate_;
    CellTrouble* trouble_;
};

} // namespace bw
