// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/wait_table.hpp"

#include "desk/frame/frame_style.hpp"
#include "desk/frame/theme.hpp"

#include <QHeaderView>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

namespace bw {

namespace {
class WaitBar : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* p, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        QStyledItemDelegate::paint(p, option, index);
        const QPointF shares = index.data(WaitModel::kBarRole).toPointF();
        const bool chosen = option.state & QStyle::State_Selected;
        const QColor ink = chosen ? inks().onAccent : inks().wall;
        const QRectF room = QRectF(option.rect).adjusted(4, 0, -4, 0);
        const double y = room.center().y();
        p->fillRect(QRectF(room.left(), y - 4, std::max(1.0, room.width() * shares.x()), 8),
                    shares.x() > 0 ? ink : inks().line);
        if (shares.y() <= 0) return;
        const double end = room.left() + room.width() * shares.y();
        p->fillRect(QRectF(room.left(), y - 0.5, end - room.left(), 1), ink);
        p->fillRect(QRectF(end - 1, y - 4, 1.5, 8), ink);
    }
};
} // namespace

WaitTable::WaitTable(QWidget* parent) : QTableView(parent), model_(new WaitModel(this)) {
    setModel(model_);
    setItemDelegateForColumn(static_cast<int>(WaitColumn::Bar), new WaitBar(this));
    setAccessibleName(tr("Waiting for kit"));
    setFrameShape(NoFrame);
    dressAsFrame(this);
    setShowGrid(false);
    setSelectionBehavior(SelectRows);
    setSelectionMode(SingleSelection);
    setTabKeyNavigation(false);
    setFocusPolicy(Qt::NoFocus); // while it is empty
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 5);
    horizontalHeader()->setSectionsClickable(false);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setSectionResizeMode(static_cast<int>(WaitColumn::Kit),
                                             QHeaderView::Stretch);
    horizontalHeader()->setSectionResizeMode(static_cast<int>(WaitColumn::Bar), QHeaderView::Fixed);
    setColumnWidth(static_cast<int>(WaitColumn::Bar), 84);
}

void WaitTable::show(const FloorView& view) {
    const int row = currentIndex().row();
    model_->show(view);
    if (row >= 0 && row < model_->rowCount()) setCurrentIndex(model_->index(row, 0));
    setFocusPolicy(model_->rowCount() > 0 ? Qt::StrongFocus : Qt::NoFocus);
}

} // namespace bw
