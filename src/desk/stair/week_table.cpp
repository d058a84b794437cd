// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/stair/week_table.hpp"

#include "desk/frame/frame_style.hpp"
#include "desk/frame/mixed_ink.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/theme.hpp"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>

namespace bw {

namespace {
constexpr int kPad = 7;

// One cell: on the left what is asked of everybody, on the right what the member should take.
class WeekCell : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* p, const QStyleOptionViewItem& o, const QModelIndex& i) const override {
        const auto* table = static_cast<const WeekTable*>(o.widget);
        const Inks& k = inks();
        const bool chosen = o.state & QStyle::State_Selected;
        const int week = i.column() - WeekModel::kFirstWeek;
        p->save();
        const bool now = week == table->week();
        if (chosen || now) p->fillRect(o.rect, k.wash);
        if (chosen && now) p->fillRect(o.rect, mixedInk(k.wash, k.accent, 0.15));
        divider(*p, o.rect, i.data(WeekModel::Divider).toInt());
        const QRect room = o.rect.adjusted(kPad, 0, -kPad, 0);
        if (i.column() == WeekModel::kName)
            name(*p, room, o.font, i);
        else
            figures(*p, room, o.font, i);
        if (o.state & QStyle::State_HasFocus && table->hasFocus()) {
            p->setPen(QPen(k.accent, k.stroke + 1));
            p->drawRect(o.rect.adjusted(1, 1, -1, -1));
        }
        p->restore();
    }

private:
    static void divider(QPainter& p, const QRect& r, int strength) {
        if (strength == 0 || r.top() == 0) return;
        p.setPen(QPen(strength == 2 ? mixedInk(inks().line, inks().quiet, 0.5) : inks().line, 1));
        p.drawLine(r.topLeft(), r.topRight());
    }

    static void name(QPainter& p, const QRect& room, const QFont& font, const QModelIndex& i) {
        QFont own = font;
        own.setItalic(i.data(WeekModel::Marked).toBool());
        own.setBold(i.data(WeekModel::Main).toBool());
        p.setFont(own);
        p.setPen(inks().ink);
        p.drawText(room, Qt::AlignLeft | Qt::AlignVCenter,
                   p.fontMetrics().elidedText(i.data().toString(), Qt::ElideRight, room.width()));
        const int took = p.fontMetrics().horizontalAdvance(i.data().toString()) + kPad;
        const QString section = i.data(WeekModel::Section).toString();
        p.setFont(smallFont(font));
        if (took + p.fontMetrics().horizontalAdvance(section) > room.width()) return;
        p.setPen(inks().quiet);
        p.drawText(room, Qt::AlignRight | Qt::AlignVCenter, section);
    }

    static void figures(QPainter& p, const QRect& room, QFont font, const QModelIndex& i) {
        const QString target = i.data(WeekModel::Target).toString();
        p.setPen(target.isEmpty() ? inks().ink : inks().quiet);
        p.setFont(target.isEmpty() ? font : smallFont(font));
        const int side = target.isEmpty() ? Qt::AlignRight : Qt::AlignLeft;
        p.drawText(room, side | Qt::AlignVCenter, i.data().toString());
        if (target.isEmpty()) return;
        const int plan = p.fontMetrics().horizontalAdvance(i.data().toString()) + kPad;
        font.setBold(true);
        p.setFont(font);
        p.setPen(inks().ink);
        p.drawText(room, Qt::AlignRight | Qt::AlignVCenter,
                   p.fontMetrics().elidedText(target, Qt::ElideRight, room.width() - plan));
    }
};
} // namespace

WeekTable::WeekTable(WeekModel& model, const QString& name, QWidget* parent) : QTableView(parent) {
    setModel(&model);
    setItemDelegate(new WeekCell(this));
    setAccessibleName(name);
    setFrameShape(NoFrame);
    dressAsFrame(this);
    setShowGrid(false);
    setSelectionBehavior(SelectRows);
    setSelectionMode(SingleSelection);
    setEditTriggers(NoEditTriggers);
    setTabKeyNavigation(false);
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    verticalHeader()->hide();
    horizontalHeader()->setStyleSheet(
        QStringLiteral("QHeaderView::section { padding: 2px %1px; }").arg(kPad));
    horizontalHeader()->setSectionsClickable(false);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setMinimumSectionSize(0);
    connect(this, &QTableView::doubleClicked, this, &WeekTable::entered);
    connect(&model, &QAbstractItemModel::modelReset, this, [this] { setColumns(columns_); });
    layOutRows();
}

void WeekTable::layOutRows() {
    verticalHeader()->setMinimumSectionSize(0);
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 4);
}

void WeekTable::setColumns(const WeekColumns& columns) {
    columns_ = columns;
    for (int c = 0; c < model()->columnCount(); ++c)
        setColumnWidth(c, c == WeekModel::kName   ? columns.names
                          : c == WeekModel::kDose ? columns.dose
                                                  : columns.week);
}

void WeekTable::showWeek(int week) {
    week_ = week;
    const int column = WeekModel::kFirstWeek + week;
    const QModelIndex now = currentIndex();
    if (now.isValid() && now.column() >= WeekModel::kFirstWeek && now.column() != column &&
        column < model()->columnCount())
        setCurrentIndex(now.siblingAtColumn(column));
    viewport()->update();
}

void WeekTable::setEmptyText(const QString& text) {
    empty_ = text;
    viewport()->update();
}

int WeekTable::wholeHeight() const {
    const int head = horizontalHeader()->isHidden() ? 0 : horizontalHeader()->sizeHint().height();
    return head + model()->rowCount() * verticalHeader()->defaultSectionSize();
}

void WeekTable::currentChanged(const QModelIndex& to, const QModelIndex& from) {
    QTableView::currentChanged(to, from);
    if (to.isValid()) Q_EMIT moved(to);
}

void WeekTable::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && currentIndex().isValid()) return Q_EMIT entered(currentIndex());
    QTableView::keyPressEvent(event);
}

void WeekTable::focusInEvent(QFocusEvent* event) {
    QTableView::focusInEvent(event);
    if (!currentIndex().isValid() && model()->rowCount() > 0)
        setCurrentIndex(model()->index(0, WeekModel::kFirstWeek + week_));
    else if (currentIndex().isValid())
        Q_EMIT moved(currentIndex());
}

void WeekTable::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    if (empty_.isEmpty() || model()->rowCount() > 0) return;
    QPainter p(viewport());
    p.setPen(inks().quiet);
    p.drawText(viewport()->rect().adjusted(kPad, kPad, -kPad, -kPad),
               Qt::AlignCenter | Qt::TextWordWrap, empty_);
}

void WeekTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange) layOutRows();
}

} // namespace bw
