// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet of paper: the draft as it will be read, and a spreadsheet to the fingers. Tab goes from
// one cell that can be typed in to the next; Enter opens a cell, or leaves it downwards.
#pragma once
#include "desk/bench/sheet_rows.hpp"

#include <QTableView>

namespace bw {

class Draft;
class SheetDelegate;
class SheetModel;

class SheetView : public QTableView {
    Q_OBJECT
public:
    SheetView(Draft& draft, SheetModel& model, QWidget* parent);

    [[nodiscard]] SheetDelegate& delegate() { return *delegate_; }
    void goTo(Place place); // marks its line, in the column where the attention is

protected:
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;

private:
    void layOut(); // spans, row heights
    void fitColumns();
    void takeTyping();
    [[nodiscard]] QModelIndex nextEditable(int step) const;

    Draft& draft_;
    SheetModel& sheet_;
    SheetDelegate* delegate_;
    int column_ = static_cast<int>(SheetColumn::Exercise);
    bool following_ = false; // the selection is being put where the draft's place is
};

} // namespace bw
