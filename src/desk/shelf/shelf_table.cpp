// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/shelf/shelf_table.hpp"

#include "desk/bench/sheet_header.hpp"
#include "desk/frame/theme.hpp"

#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

namespace bw {

namespace {
constexpr int kSide = 5;

class ShelfCell : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* p, const QStyleOptionViewItem& o, const QModelIndex& i) const override {
        const Inks& k = inks();
        p->save();
        p->fillRect(o.rect, o.state & QStyle::State_Selected ? k.wash : k.paper);
        if (o.state & QStyle::State_HasFocus) {
            p->setPen(QPen(k.accent, k.stroke + 1));
            p->drawRect(o.rect.adjusted(1, 1, -1, -1));
        }
        QFont font = o.font;
        font.setItalic(i.data(ShelfModel::kRetiredRole).toBool());
        p->setFont(font);
        const bool chosen = o.state & QStyle::State_Selected;
        p->setPen(i.column() == ShelfLine::Name || chosen ? k.ink : k.quiet);
        const QRect room = o.rect.adjusted(kSide, 0, -kSide, 0);
        const auto side = i.data(Qt::TextAlignmentRole).toInt();
        p->drawText(room, side | Qt::AlignVCenter | Qt::TextSingleLine,
                    p->fontMetrics().elidedText(i.data().toString(), Qt::ElideRight, room.width()));
        p->restore();
    }
};

// With a mark on the column that the table is sorted by.
class ShelfHeader : public SheetHeader {
public:
    explicit ShelfHeader(QWidget* parent) : SheetHeader(parent) {
        setSectionsClickable(true);
        setSortIndicator(ShelfLine::Name, Qt::AscendingOrder);
        setAccessibleName(ShelfTable::tr("Columns of the Shelf"));
    }

protected:
    void paintSection(QPainter* p, const QRect& rect, int index) const override {
        SheetHeader::paintSection(p, rect, index);
        if (index != sortIndicatorSection()) return;
        p->save();
        p->setPen(inks().accent);
        QFont small = font();
        small.setPointSizeF(small.pointSizeF() * 0.7);
        p->setFont(small);
        p->drawText(rect.adjusted(0, 0, -3, -3), Qt::AlignRight | Qt::AlignBottom,
                    sortIndicatorOrder() == Qt::AscendingOrder ? QStringLiteral("▲")
                                                               : QStringLiteral("▼"));
        p->restore();
    }
};
} // namespace

ShelfTable::ShelfTable(ShelfModel& model, QWidget* parent) : QTableView(parent), shelf_(model) {
    setModel(&model);
    setItemDelegate(new ShelfCell(this));
    setAccessibleName(tr("Exercises of the Shelf"));
    setAccessibleDescription(tr("Enter goes to all of an exercise; letters go to the filter."));
    setShowGrid(false);
    setFrameShape(NoFrame);
    setWordWrap(false);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    setHorizontalHeader(new ShelfHeader(this));
    setSortingEnabled(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    setVerticalScrollMode(ScrollPerPixel);
    setSelectionBehavior(SelectRows);
    setSelectionMode(SingleSelection);
    setEditTriggers(NoEditTriggers);
    setTabKeyNavigation(false);
    layOut();
}

// By what the columns usually hold.
void ShelfTable::layOut() {
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 7);
    struct Wide {
        int column, digits;
    };
    constexpr Wide shares[] = {{ShelfLine::Name, 28},    {ShelfLine::Pattern, 15},
                               {ShelfLine::Roles, 15},   {ShelfLine::Kit, 15},
                               {ShelfLine::Demands, 19}, {ShelfLine::Load, 13},
                               {ShelfLine::Last, 14},    {ShelfLine::Months, 9}};
    int whole = 0;
    for (const Wide& s : shares) whole += s.digits;
    const double scale = 1.0 * viewport()->width() / whole;
    int left = viewport()->width();
    for (const Wide& s : shares) {
        const int wide = s.column == ShelfLine::Months ? left : static_cast<int>(s.digits * scale);
        setColumnWidth(s.column, wide);
        left -= wide;
    }
}

void ShelfTable::goTo(int row) {
    setCurrentIndex(shelf_.index(row, column_));
    scrollTo(currentIndex());
}

void ShelfTable::sortHere() {
    const bool up = horizontalHeader()->sortIndicatorSection() == column_ &&
                    horizontalHeader()->sortIndicatorOrder() == Qt::AscendingOrder;
    sortByColumn(column_, up ? Qt::DescendingOrder : Qt::AscendingOrder);
}

void ShelfTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    if (current.isValid()) column_ = current.column();
    if (current.isValid() && current.row() != previous.row()) Q_EMIT lineChanged();
}

void ShelfTable::keyPressEvent(QKeyEvent* event) {
    const int key = event->key();
    const bool bare = !(event->modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier));
    if (bare && (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_F2))
        return Q_EMIT entryWanted();
    if (bare && !event->text().isEmpty() && event->text().at(0).isPrint())
        return Q_EMIT typed(event->text());
    QTableView::keyPressEvent(event);
}

void ShelfTable::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    layOut();
}

void ShelfTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange) layOut();
}

} // namespace bw
