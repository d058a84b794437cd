// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ledger/class_view.hpp"

#include "desk/frame/paper.hpp"
#include "desk/ledger/class_delegate.hpp"
#include "desk/ledger/class_headers.hpp"
#include "desk/ledger/class_model.hpp"

#include <QEvent>
#include <QKeyEvent>
#include <QPainter>

#include <algorithm>

namespace bw {

ClassView::ClassView(ClassModel& model, QWidget* parent)
    : QTableView(parent), grid_(model), delegate_(new ClassDelegate(model, this)),
      names_(new MembersHeader(this)), corner_(new QWidget(this)) {
    setModel(&model);
    setItemDelegate(delegate_);
    setHorizontalHeader(new SlotsHeader(this));
    setVerticalHeader(names_);
    setAccessibleName(tr("Results of the class"));
    setShowGrid(false);
    setFrameShape(QFrame::NoFrame);
    setCornerButtonEnabled(false);
    corner_->setAutoFillBackground(true);
    corner_->setBackgroundRole(QPalette::Base);
    setSelectionMode(SingleSelection);
    setTabKeyNavigation(true);
    setHorizontalScrollMode(ScrollPerPixel);
    setVerticalScrollMode(ScrollPerPixel);
    setEditTriggers(AnyKeyPressed | EditKeyPressed | DoubleClicked);
    connect(delegate_, &ClassDelegate::leave, this, &ClassView::goOn);
    connect(&model, &QAbstractItemModel::modelReset, this, &ClassView::layOut);
}

void ClassView::setEmptyText(const QString& text) {
    empty_ = text;
    setAccessibleDescription(text);
    viewport()->update();
}

// Columns share the width as long as a cell can be read in them.
void ClassView::layOut() {
    const int columns = grid_.columnCount();
    if (columns == 0) return;
    const QFontMetrics large(font()), small(smallFont(font()));
    names_->fit();
    verticalHeader()->setDefaultSectionSize(large.height() + small.height() + 12);
    const int least = small.horizontalAdvance(QStringLiteral("102.5×10×3 2   102.5×10 2"));
    const int width = std::max(least, viewport()->width() / columns);
    for (int c = 0; c < columns; ++c) setColumnWidth(c, width);
}

void ClassView::updateGeometries() {
    QTableView::updateGeometries();
    corner_->setGeometry(0, 0, names_->width(), horizontalHeader()->height() - 1);
    corner_->raise();
}

void ClassView::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    layOut();
}
void ClassView::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange) layOut();
}

void ClassView::goOn(int rows, int columns) {
    const QModelIndex now = currentIndex();
    if (!now.isValid()) return;
    const QModelIndex to =
        columns != 0 ? beside(columns) : now.sibling(now.row() + rows, now.column());
    if (to.isValid()) setCurrentIndex(to);
}

// The next cell in reading order that takes sets; the same when there is none.
QModelIndex ClassView::beside(int step) const {
    const QModelIndex now = currentIndex();
    const int columns = grid_.columnCount(), cells = grid_.rowCount() * columns;
    if (!now.isValid()) return grid_.index(0, 0);
    for (int at = now.row() * columns + now.column() + step; at >= 0 && at < cells; at += step) {
        const QModelIndex next = grid_.index(at / columns, at % columns);
        if (grid_.flags(next) & Qt::ItemIsEditable) return next;
    }
    return now;
}

QModelIndex ClassView::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) {
    if (action == MoveNext) return beside(1);
    if (action == MovePrevious) return beside(-1);
    return QTableView::moveCursor(action, modifiers);
}

void ClassView::keyPressEvent(QKeyEvent* event) {
    const QModelIndex now = currentIndex();
    const bool plain = !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier));
    const bool writes = now.isValid() && plain && (grid_.flags(now) & Qt::ItemIsEditable);
    const int key = event->key();
    if (plain && (key == Qt::Key_Return || key == Qt::Key_Enter))
        return goOn(event->modifiers() & Qt::ShiftModifier ? -1 : 1, 0);
    if (writes && event->text() == QLatin1String("=")) {
        grid_.setData(now, QStringLiteral("="), Qt::EditRole);
        return Q_EMIT moved(now);
    }
    if (writes && (key == Qt::Key_Delete || key == Qt::Key_Backspace)) {
        (void)grid_.enter(now, {});
        return Q_EMIT moved(now);
    }
    if (key == Qt::Key_Escape && now.isValid()) {
        grid_.drop(now);
        return Q_EMIT moved(now);
    }
    QTableView::keyPressEvent(event);
}

void ClassView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    names_->setCurrent(current.row());
    Q_EMIT moved(current);
}

void ClassView::paintEvent(QPaintEvent* event) {
    if (grid_.rowCount() > 0 && grid_.columnCount() > 0) {
        const int last = rowAt(viewport()->height() - 1);
        grid_.want(rowAt(0), last < 0 ? grid_.rowCount() - 1 : last);
    }
    QTableView::paintEvent(event);
    if (grid_.rowCount() > 0 && grid_.columnCount() > 0) return;
    QPainter p(viewport());
    p.setPen(palette().color(QPalette::PlaceholderText));
    p.drawText(viewport()->rect().adjusted(24, 0, -24, 0),
               static_cast<int>(Qt::AlignCenter) | Qt::TextWordWrap, empty_);
}

} // namespace bw
