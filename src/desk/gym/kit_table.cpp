// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/gym/kit_table.hpp"

#include "desk/gym/kit_model.hpp"

#include <QHeaderView>
#include <QKeyEvent>
#include <QMouseEvent>

namespace bw {

KitTable::KitTable(KitModel& model, QWidget* parent)
    : TypedTable(
          model,
          [&model](const QModelIndex& i, const QString& text) { return model.fault(i, text); },
          parent),
      kit_(model) {
    setObjectName(QStringLiteral("kit-table"));
    setAccessibleName(tr("Kit"));
    setAccessibleDescription(tr("Space ticks a line. Enter, or typing, opens a cell."));
    horizontalHeader()->setAccessibleName(tr("Columns of the kit"));
    connect(&model, &QAbstractItemModel::modelReset, this, &KitTable::spanHeads);
    connect(&model, &KitModel::refused, this, &KitTable::tell);
    spanHeads();
    layOut();
}

void KitTable::spanHeads() {
    clearSpans();
    for (int row = 0; row < kit_.rowCount(); ++row)
        if (!kit_.itemAt(row)) setSpan(row, 0, 1, KitModel::kColumns);
}

// By what the columns usually hold.
void KitTable::layOut() {
    struct Wide {
        int column, digits;
    };
    constexpr Wide kShares[] = {{KitModel::Name, 23},    {KitModel::Units, 10},
                                {KitModel::Claimed, 13}, {KitModel::Loads, 28},
                                {KitModel::Bar, 7},      {KitModel::Plates, 23},
                                {KitModel::Can, 10},     {KitModel::Must, 9}};
    int whole = 0;
    for (const Wide& s : kShares) whole += s.digits;
    int left = viewport()->width();
    const double scale = 1.0 * left / whole;
    for (const Wide& s : kShares) {
        const int wide = s.column == KitModel::Must ? left : static_cast<int>(s.digits * scale);
        setColumnWidth(s.column, wide);
        left -= wide;
    }
}

void KitTable::goTo(int row) {
    setCurrentIndex(kit_.index(row, KitModel::Name));
    if (row <= 1)
        scrollToTop(); // with its head
    else
        scrollTo(currentIndex());
}

QModelIndex KitTable::cellFor(const QModelIndex& now, const QString& key) const {
    const bool figure = !key.isEmpty() && key.at(0).isDigit();
    if (kit_.itemAt(now.row()) && now.column() == KitModel::Name && figure)
        return now.siblingAtColumn(KitModel::Units);
    return TypedTable::cellFor(now, key);
}

void KitTable::keyPressEvent(QKeyEvent* event) {
    const QModelIndex now = currentIndex();
    const bool still = state() != EditingState && kit_.itemAt(now.row()) && !event->modifiers();
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    const bool claim = now.column() == KitModel::Claimed;
    if (still && claim && (enter || event->key() == Qt::Key_Space))
        return kit_.turnClaim(now.row());
    if (still && event->key() == Qt::Key_Space) return kit_.tick(now.row());
    const QString text = event->text();
    if (still && now.column() == KitModel::Name && !text.isEmpty() && text.at(0).isLetter())
        return keyboardSearch(text);
    TypedTable::keyPressEvent(event);
}

void KitTable::mousePressEvent(QMouseEvent* event) {
    const QModelIndex at = indexAt(event->pos());
    TypedTable::mousePressEvent(event);
    const int into = event->pos().x() - visualRect(at).left();
    const bool box = at.column() == KitModel::Name && into <= TypedDelegate::kTickRoom;
    if (event->button() == Qt::LeftButton && box) kit_.tick(at.row());
}

} // namespace bw
