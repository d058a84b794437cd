// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/limits/limits_table.hpp"

#include "desk/bench/sheet_header.hpp"
#include "desk/limits/limits_model.hpp"

#include <QHeaderView>
#include <QKeyEvent>

namespace bw {

LimitsTable::LimitsTable(LimitsModel& model, QWidget* parent) : QTableView(parent), limits_(model) {
    setModel(&model);
    setAccessibleName(tr("House limits"));
    setAccessibleDescription(tr("Enter opens this house's value, Delete takes it out."));
    setShowGrid(false);
    setFrameShape(NoFrame);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    setHorizontalHeader(new SheetHeader(this));
    horizontalHeader()->setAccessibleName(tr("Columns of the limits"));
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(ScrollPerPixel);
    setSelectionBehavior(SelectRows);
    setSelectionMode(SingleSelection);
    setEditTriggers(AnyKeyPressed | EditKeyPressed | DoubleClicked | SelectedClicked);
    setTabKeyNavigation(false);
    connect(&model, &QAbstractItemModel::modelReset, this, &LimitsTable::layOut);
    layOut();
}

void LimitsTable::layOut() {
    clearSpans();
    for (int row = 0; row < limits_.rowCount(); ++row)
        if (!limits_.limitAt(row)) setSpan(row, 0, 1, LimitsModel::kColumns);
    const int digit = fontMetrics().horizontalAdvance(QLatin1Char('0'));
    const int house = 15 * digit, standard = 14 * digit;
    const int left = viewport()->width() - house - standard;
    const int basis = left * 2 / 5;
    setColumnWidth(LimitsModel::House, house);
    setColumnWidth(LimitsModel::Standard, standard);
    setColumnWidth(LimitsModel::Basis, basis);
    setColumnWidth(LimitsModel::Meaning, left - basis);
}

void LimitsTable::goTo(int row) {
    const QModelIndex to = limits_.index(row, LimitsModel::House);
    setCurrentIndex(to);
    if (row <= 1)
        scrollToTop(); // with its head
    else
        scrollTo(to, PositionAtCenter);
}

void LimitsTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    if (current.row() != previous.row() || !current.isValid()) Q_EMIT lineChanged();
}

void LimitsTable::keyPressEvent(QKeyEvent* event) {
    const QModelIndex now = currentIndex();
    const bool limit = limits_.limitAt(now.row()) != nullptr && state() != EditingState;
    const QModelIndex house = now.siblingAtColumn(LimitsModel::House);
    const bool bare = !(event->modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier));
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    const bool typing = bare && !event->text().isEmpty() && event->text().at(0).isPrint();
    if (limit && bare && (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace))
        return Q_EMIT resetWanted();
    if (limit && (enter || typing) && (limits_.flags(house) & Qt::ItemIsEditable)) {
        setCurrentIndex(house);
        if (enter) return edit(house);
        (void)edit(house, AnyKeyPressed, event); // what was typed takes the place of what is there
        return;
    }
    QTableView::keyPressEvent(event);
}

void LimitsTable::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    layOut();
}

void LimitsTable::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
    QTableView::closeEditor(editor, hint);
    Q_EMIT typingEnded();
}

} // namespace bw
