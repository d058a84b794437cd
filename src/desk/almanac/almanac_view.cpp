// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/almanac/almanac_view.hpp"

#include "desk/almanac/almanac_delegate.hpp"
#include "desk/almanac/almanac_headers.hpp"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>

namespace bw {

AlmanacView::AlmanacView(AlmanacModel& model, Top top, const QString& name, QWidget* parent)
    : QTableView(parent), model_(model), months_(new MonthsHeader(this)),
      names_(new NamesHeader(this)) {
    setModel(&model);
    setHorizontalHeader(months_);
    setVerticalHeader(names_);
    setItemDelegate(new AlmanacDelegate(this));
    setAccessibleName(name);
    setShowGrid(false);
    setFrameShape(NoFrame);
    setCornerButtonEnabled(false);
    setSelectionMode(NoSelection);
    setTabKeyNavigation(false);
    setHorizontalScrollMode(ScrollPerPixel);
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    months_->setHidden(top == Top::None);
    if (top == Top::Months) corner_ = new NamesCorner(this);
    connect(months_, &QHeaderView::sectionClicked, this, &AlmanacView::monthWanted);
}

void AlmanacView::show(AlmanacModel::Months almanac, std::vector<AlmanacLine> lines,
                       std::optional<Month> shown, int column) {
    const QString name =
        currentIndex().isValid() ? model_.line(currentIndex().row()).name : QString();
    const auto find = [&lines](const auto& fits) {
        const auto at = std::find_if(lines.begin(), lines.end(), fits);
        return at == lines.end() ? -1 : static_cast<int>(at - lines.begin());
    };
    int row = find([&name](const AlmanacLine& line) { return line.name == name; });
    if (row < 0)
        row = find([](const AlmanacLine& line) { return line.kind != AlmanacLine::Kind::Heading; });
    quiet_ = true;
    model_.show(std::move(almanac), std::move(lines), shown);
    layOutRows();
    setCurrentIndex(model_.index(row, column));
    quiet_ = false;
}

void AlmanacView::setSizes(int names, int column, int row, int headingRow) {
    names_->setFixedWidth(names);
    months_->setDefaultSectionSize(column);
    row_ = row;
    headingRow_ = headingRow;
    layOutRows();
    updateGeometries();
}

void AlmanacView::layOutRows() {
    names_->setDefaultSectionSize(row_);
    for (int r = 0; r < model_.rowCount(); ++r) {
        const bool heading = model_.line(r).kind == AlmanacLine::Kind::Heading;
        if (heading && names_->sectionSize(r) != headingRow_) names_->resizeSection(r, headingRow_);
    }
}

int AlmanacView::rowsHeight() const { return names_->length(); }

int AlmanacView::wholeHeight() const {
    return rowsHeight() + (months_->isHidden() ? 0 : months_->sizeHint().height());
}

void AlmanacView::showColumn(int column) {
    months_->setCurrent(column);
    if (column < 0 || column >= model_.columnCount()) return;
    const int left = columnViewportPosition(column), right = left + columnWidth(column);
    QScrollBar* bar = horizontalScrollBar();
    if (left < 0) bar->setValue(bar->value() + left);
    if (right > viewport()->width()) bar->setValue(bar->value() + right - viewport()->width());
}

QModelIndex AlmanacView::firstIn(int column, int step) const {
    return model_.index(step > 0 ? 0 : model_.rowCount() - 1, column);
}

bool AlmanacView::enter(int column, int step) {
    const QModelIndex to = firstIn(column, step);
    if (!to.isValid()) return false;
    setFocus(step > 0 ? Qt::TabFocusReason : Qt::BacktabFocusReason);
    setCurrentIndex(to);
    if (step > 0) scrollToTop();
    return true;
}

QModelIndex AlmanacView::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) {
    const QModelIndex to = QTableView::moveCursor(action, modifiers);
    leaving_ = to == currentIndex() || !to.isValid();
    return to;
}

void AlmanacView::keyPressEvent(QKeyEvent* event) {
    const int key = event->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter) {
        if (currentIndex().isValid()) Q_EMIT opened(currentIndex());
        return;
    }
    leaving_ = false;
    QTableView::keyPressEvent(event);
    if (leaving_ && key == Qt::Key_Down) Q_EMIT left(1);
    if (leaving_ && key == Qt::Key_Up) Q_EMIT left(-1);
}

void AlmanacView::mouseDoubleClickEvent(QMouseEvent* event) {
    QTableView::mouseDoubleClickEvent(event);
    if (const auto at = indexAt(event->pos()); at.isValid()) Q_EMIT opened(at);
}

void AlmanacView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    if (hasFocus()) names_->setCurrent(current.row());
    if (current.isValid() && !quiet_) Q_EMIT moved(current);
}

void AlmanacView::focusInEvent(QFocusEvent* event) {
    QTableView::focusInEvent(event);
    names_->setCurrent(currentIndex().row());
    if (currentIndex().isValid()) Q_EMIT moved(currentIndex());
}

void AlmanacView::focusOutEvent(QFocusEvent* event) {
    QTableView::focusOutEvent(event);
    names_->setCurrent(-1);
}

void AlmanacView::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    if (model_.rowCount() > 0) return;
    QPainter p(viewport());
    p.setPen(palette().color(QPalette::PlaceholderText));
    p.drawText(viewport()->rect(), Qt::AlignCenter, empty_);
}

void AlmanacView::updateGeometries() {
    QTableView::updateGeometries();
    if (!corner_) return;
    corner_->setGeometry(0, 0, names_->width(), months_->height());
    corner_->raise();
}

} // namespace bw
