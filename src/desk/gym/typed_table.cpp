// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/gym/typed_table.hpp"

#include "desk/bench/cell_editor.hpp"
#include "desk/bench/sheet_header.hpp"
#include "desk/frame/words.hpp"
#include "desk/gym/cell_trouble.hpp"

#include <QKeyEvent>

namespace bw {

namespace {
bool isEnter(const QKeyEvent& event) {
    return event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
}
bool isBare(const QKeyEvent& event) {
    return !(event.modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier));
}
} // namespace

TypedTable::TypedTable(QAbstractTableModel& model, TypedDelegate::Reader reader, QWidget* parent)
    : QTableView(parent), delegate_(new TypedDelegate(std::move(reader), this)),
      trouble_(new CellTrouble(*this)) {
    setModel(&model);
    setItemDelegate(delegate_);
    connect(delegate_, &TypedDelegate::trouble, this, &TypedTable::tell);
    connect(delegate_, &TypedDelegate::clear, this, &TypedTable::quiet);
    setShowGrid(false);
    setFrameShape(NoFrame);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    setHorizontalHeader(new SheetHeader(this));
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(ScrollPerPixel);
    setSelectionBehavior(SelectRows);
    setSelectionMode(SingleSelection);
    setEditTriggers(AnyKeyPressed | EditKeyPressed | DoubleClicked | SelectedClicked);
    setTabKeyNavigation(false);
}

void TypedTable::tell(const Message& why) { trouble_->tell(visualRect(currentIndex()), say(why)); }

void TypedTable::quiet() { trouble_->hide(); }

void TypedTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    quiet();
    if (current.row() != previous.row() || !current.isValid()) Q_EMIT lineChanged();
}

void TypedTable::focusInEvent(QFocusEvent* event) {
    QTableView::focusInEvent(event);
    if (event->reason() != Qt::OtherFocusReason) Q_EMIT lineChanged(); // not from its own cell
}

QModelIndex TypedTable::nextTyped(int step) const {
    const int columns = model()->columnCount();
    int at = currentIndex().row() * columns + currentIndex().column() + step;
    for (; at >= 0 && at < columns * model()->rowCount(); at += step) {
        const QModelIndex cell = model()->index(at / columns, at % columns);
        if (at % columns > 0 && cell.flags() & Qt::ItemIsEditable) return cell;
    }
    return {};
}

QModelIndex TypedTable::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) {
    if (action == MoveNext) return nextTyped(1);
    if (action == MovePrevious) return nextTyped(-1);
    const QModelIndex to = QTableView::moveCursor(action, modifiers);
    const int step = action == MoveUp || action == MovePageUp || action == MoveEnd ? -1 : 1;
    for (QModelIndex cell = to; cell.isValid(); cell = cell.siblingAtRow(cell.row() + step))
        if (!cell.data(kHeadRole).toBool()) return cell;
    return currentIndex();
}

QModelIndex TypedTable::cellFor(const QModelIndex& now, const QString&) const {
    return now.flags() & Qt::ItemIsEditable ? now : QModelIndex();
}

bool TypedTable::open(QKeyEvent& event) {
    const QModelIndex cell = cellFor(currentIndex(), event.text());
    if (!(cell.flags() & Qt::ItemIsEditable)) return false;
    setCurrentIndex(cell);
    if (isEnter(event))
        edit(cell);
    else
        (void)edit(cell, AnyKeyPressed, &event); // what is typed takes the place of what is there
    return true;
}

void TypedTable::keyPressEvent(QKeyEvent* event) {
    const bool printed = !event->text().isEmpty() && event->text().at(0).isPrint();
    const bool empties = event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace;
    if (state() == EditingState || !isBare(*event)) return QTableView::keyPressEvent(event);
    if (empties && currentIndex().column() > 0 && currentIndex().flags() & Qt::ItemIsEditable) {
        (void)model()->setData(currentIndex(), QString(), Qt::EditRole);
        return;
    }
    if ((isEnter(*event) || printed) && open(*event)) return;
    QTableView::keyPressEvent(event);
}

void TypedTable::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
    QTableView::closeEditor(editor, hint);
    const QModelIndex now = currentIndex();
    if (hint != QAbstractItemDelegate::SubmitModelCache || trouble_->isVisible()) return;
    for (int row = now.row() + 1; row < model()->rowCount(); ++row)
        if (const QModelIndex below = now.siblingAtRow(row); !below.data(kHeadRole).toBool())
            return setCurrentIndex(below);
}

void TypedTable::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    layOut();
}

void TypedTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange) layOut();
}

void TypedTable::scrollContentsBy(int dx, int dy) {
    QTableView::scrollContentsBy(dx, dy);
    quiet();
}

} // namespace bw
