// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/sheet_view.hpp"

#include "desk/bench/cell_editor.hpp"
#include "desk/bench/sheet_delegate.hpp"
#include "desk/bench/sheet_header.hpp"
#include "desk/bench/sheet_model.hpp"
#include "desk/frame/theme.hpp"

#include <QKeyEvent>
#include <QPainter>

namespace bw {

namespace {
// Widths in digits of the font; the exercise and the options share what is left.
constexpr int kDigits[kSheetColumns] = {6, 0, 13, 8, 7, 20, 0, 6};
} // namespace

SheetView::SheetView(Draft& draft, SheetModel& model, QWidget* parent)
    : QTableView(parent), draft_(draft), sheet_(model), delegate_(new SheetDelegate(model, this)) {
    setModel(&model);
    setItemDelegate(delegate_);
    setAccessibleName(tr("The month's sheet"));
    setShowGrid(false);
    setFrameShape(QFrame::NoFrame);
    verticalHeader()->hide();
    setHorizontalHeader(new SheetHeader(this));
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(ScrollPerPixel);
    setSelectionBehavior(SelectRows);
    setSelectionMode(SingleSelection);
    setEditTriggers(AnyKeyPressed | EditKeyPressed | DoubleClicked | SelectedClicked);
    setTabKeyNavigation(true);
    setDragEnabled(true);
    setAcceptDrops(true);
    setDropIndicatorShown(true);
    setDragDropMode(InternalMove);
    connect(&model, &QAbstractItemModel::modelReset, this, [this] {
        layOut();
        goTo(draft_.place());
    });
    connect(&draft, &Draft::placeChanged, this, &SheetView::goTo);
    layOut();
    goTo(draft.place());
}

void SheetView::layOut() {
    clearSpans();
    const int line = fontMetrics().height();
    for (int row = 0; row < sheet_.rowCount(); ++row) {
        const auto kind = sheet_.rows()[static_cast<std::size_t>(row)].kind;
        setRowHeight(row, kind == SheetRow::Kind::Section ? line * 7 / 4
                          : kind == SheetRow::Kind::Foot  ? line * 11 / 8
                                                          : line * 3 / 2);
        if (kind == SheetRow::Kind::Section)
            setSpan(row, static_cast<int>(SheetColumn::Tempo), 1, 2);
        if (kind == SheetRow::Kind::Empty)
            setSpan(row, static_cast<int>(SheetColumn::Exercise), 1, 6);
        if (kind == SheetRow::Kind::Foot) setSpan(row, static_cast<int>(SheetColumn::Dose), 1, 3);
    }
    fitColumns();
}

void SheetView::fitColumns() {
    const int digit = fontMetrics().horizontalAdvance(QLatin1Char('0'));
    const bool narrow = viewport()->width() < 120 * digit; // the kit and the options give way
    int left = viewport()->width();
    for (int c = 0; c < kSheetColumns; ++c) {
        const bool kit = narrow && c == static_cast<int>(SheetColumn::Kit);
        setColumnWidth(c, (kit ? 14 : kDigits[c]) * digit);
        left -= columnWidth(c);
    }
    const int options = narrow ? qMax(0, left - 27 * digit) : left / 2;
    setColumnWidth(static_cast<int>(SheetColumn::Exercise), qMax(18 * digit, left - options));
    setColumnWidth(static_cast<int>(SheetColumn::Options), qMax(10 * digit, options));
}

// The line where the attention is stays in sight.
void SheetView::resizeEvent(QResizeEvent* event) {
    const bool seen = QRect({}, event->oldSize()).intersects(visualRect(currentIndex()));
    QTableView::resizeEvent(event);
    fitColumns();
    if (seen) scrollTo(currentIndex());
}

void SheetView::goTo(Place place) {
    int row = rowOf(sheet_.rows(), place);
    const bool nowhere =
        row < 0; // then the attention goes to the first slot, unless it is somewhere
    if (nowhere && !currentIndex().isValid()) row = rowOf(sheet_.rows(), {0, 0, 0});
    if (row < 0 || (currentIndex().isValid() && currentIndex().row() == row)) return;
    following_ = !nowhere;
    const QModelIndex to = sheet_.index(row, column_);
    setCurrentIndex(to);
    if (row <= 1)
        scrollToTop(); // with the first section's head
    else
        scrollTo(to);
    following_ = false;
}

void SheetView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    if (!current.isValid()) return;
    column_ = current.column();
    if (!following_) draft_.setPlace(sheet_.rows()[static_cast<std::size_t>(current.row())].place);
}

QModelIndex SheetView::nextEditable(int step) const {
    const QModelIndex now = currentIndex();
    const int cells = sheet_.rowCount() * kSheetColumns;
    for (int at = now.row() * kSheetColumns + now.column() + step; at >= 0 && at < cells;
         at += step) {
        const QModelIndex next = sheet_.index(at / kSheetColumns, at % kSheetColumns);
        const int covered = next.column() > 0 ? columnSpan(next.row(), next.column() - 1) : 1;
        if (covered == 1 && (sheet_.flags(next) & Qt::ItemIsEditable)) return next;
    }
    return now;
}

QModelIndex SheetView::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) {
    if (action == MoveNext) return nextEditable(1);
    if (action == MovePrevious) return nextEditable(-1);
    return QTableView::moveCursor(action, modifiers);
}

void SheetView::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && event->modifiers() == Qt::NoModifier && state() != EditingState) {
        if (currentIndex().isValid() && (sheet_.flags(currentIndex()) & Qt::ItemIsEditable))
            edit(currentIndex());
        return;
    }
    const bool typing = !event->text().isEmpty() && event->text().at(0).isPrint() &&
                        !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier));
    if (typing) takeTyping();
    QTableView::keyPressEvent(event);
}

// Typing on a slot's line where nothing can be typed means its exercise.
void SheetView::takeTyping() {
    const QModelIndex now = currentIndex();
    if (!now.isValid() || (sheet_.flags(now) & Qt::ItemIsEditable)) return;
    if (sheet_.rows()[static_cast<std::size_t>(now.row())].kind == SheetRow::Kind::Slot)
        setCurrentIndex(now.siblingAtColumn(static_cast<int>(SheetColumn::Exercise)));
}

// However typing ends, the draft is measured as it is stored.
void SheetView::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
    QTableView::closeEditor(editor, hint);
    draft_.endPreview();
}

void SheetView::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    if (sheet_.rowCount() > 0) return;
    QPainter p(viewport());
    p.setPen(inks().quiet);
    p.drawText(viewport()->rect().adjusted(40, 40, -40, -40), Qt::AlignCenter | Qt::TextWordWrap,
               tr("An empty sheet. Start a month from the Month menu, or add a section with "
                  "Ctrl+Shift+G."));
}

} // namespace bw
