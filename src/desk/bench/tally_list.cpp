// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/tally_list.hpp"

#include "desk/bench/beam_scale.hpp"
#include "desk/bench/tally_model.hpp"
#include "desk/frame/outlined.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/theme.hpp"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QStyledItemDelegate>

#include <algorithm>

namespace bw {

namespace {
constexpr int kColumns = 2, kSide = 4, kLeastBar = 30;
constexpr int kRows = (static_cast<int>(kCount<Pattern>) + kColumns - 1) / kColumns;

// By family: legs, pushing, pulling, all else. The names say the same.
QColor barColour(Pattern pattern) {
    const auto ink = [](SectionKind kind) {
        return inks().section[static_cast<std::size_t>(kind)];
    };
    switch (pattern) {
    case Pattern::Squat:
    case Pattern::Hinge:
    case Pattern::Lunge: return ink(SectionKind::Strength);
    case Pattern::HorizontalPush:
    case Pattern::VerticalPush: return ink(SectionKind::Power);
    case Pattern::HorizontalPull:
    case Pattern::VerticalPull: return ink(SectionKind::Finisher);
    default: return ink(SectionKind::WarmUp);
    }
}

class TallyDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* p, const QStyleOptionViewItem& o, const QModelIndex& i) const override {
        const Inks& k = inks();
        const double sets = i.data(TallyModel::MonthRole).toDouble();
        p->save();
        p->setFont(smallFont(o.font));
        const QFontMetrics metrics(p->font());
        const QRect r = o.rect.adjusted(kSide, 0, -kSide, 0);
        const int number = metrics.horizontalAdvance(QStringLiteral("00.0")) + 2;
        const int name = std::min(metrics.horizontalAdvance(QStringLiteral("horizontal push")) + 8,
                                  r.width() - number - kLeastBar);
        p->setPen(sets > 0 ? k.ink : k.quiet);
        p->drawText(QRect(r.left(), r.top(), name - 4, r.height()),
                    Qt::AlignLeft | Qt::AlignVCenter,
                    metrics.elidedText(i.data().toString(), Qt::ElideRight, name - 4));
        p->drawText(QRect(r.right() - number, r.top(), number, r.height()),
                    Qt::AlignRight | Qt::AlignVCenter, setsText(sets));
        bar(*p, QRectF(r.left() + name, r.top(), r.width() - name - number - 4, r.height()), i);
        if (o.state & QStyle::State_HasFocus) {
            p->setPen(QPen(k.accent, k.stroke + 1));
            p->drawRect(o.rect.adjusted(1, 1, -2, -1));
        }
        p->restore();
    }

private:
    static void bar(QPainter& p, const QRectF& room, const QModelIndex& i) {
        const double most = i.data(TallyModel::MostRole).toDouble();
        if (most <= 0) return;
        const auto x = [&](double sets) { return room.left() + room.width() * sets / most; };
        const double y = room.center().y();
        fillOutlined(p,
                     QRectF(room.left(), y - 4,
                            x(i.data(TallyModel::MonthRole).toDouble()) - room.left(), 8),
                     barColour(TallyModel::patternOf(i.row())), inks());
        p.fillRect(QRectF(room.left(), y - 6, 1, 12), inks().line);
        const QVariant window = i.data(TallyModel::WindowRole);
        if (window.toDouble() > 0) // the window's tally, as a tick
            p.fillRect(QRectF(x(window.toDouble()) - 1, y - 6, 2, 12), inks().ink);
    }
};
} // namespace

TallyList::TallyList(TallyModel& model, QWidget* parent) : QListView(parent) {
    setModel(&model);
    setItemDelegate(new TallyDelegate(this));
    setFrameShape(NoFrame);
    setFlow(TopToBottom);
    setWrapping(true);
    setResizeMode(Adjust);
    setUniformItemSizes(true);
    setSelectionMode(NoSelection);
    setEditTriggers(NoEditTriggers);
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setTabKeyNavigation(false);
    setMovement(Static);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    setAccessibleName(tr("Sets by pattern"));
    setAccessibleDescription(tr("Enter goes to the rows that feed a pattern, Space marks them."));
    viewport()->setCursor(Qt::PointingHandCursor);
    setToolTip(tr("Bar: this month. Tick: the months of the window."));
    layOut();
}

int TallyList::rowHigh() const { return QFontMetrics(smallFont(font())).height() + 4; }
QSize TallyList::sizeHint() const { return {300, kRows * rowHigh() + 2}; }
QSize TallyList::minimumSizeHint() const { return {200, sizeHint().height()}; }

void TallyList::layOut() {
    setGridSize({std::max(80, viewport()->width() / kColumns - 1), rowHigh()});
}

void TallyList::keyPressEvent(QKeyEvent* event) {
    const int key = event->key(), row = currentIndex().row();
    const bool enter = key == Qt::Key_Return || key == Qt::Key_Enter;
    if (row >= 0 && (enter || key == Qt::Key_Space)) return Q_EMIT picked(row, enter);
    QListView::keyPressEvent(event);
}

void TallyList::mousePressEvent(QMouseEvent* event) {
    QListView::mousePressEvent(event);
    const QModelIndex index = indexAt(event->position().toPoint());
    if (event->button() == Qt::LeftButton && index.isValid()) Q_EMIT picked(index.row(), false);
}

void TallyList::resizeEvent(QResizeEvent* event) {
    layOut();
    QListView::resizeEvent(event);
}

void TallyList::changeEvent(QEvent* event) {
    QListView::changeEvent(event);
    if (event->type() == QEvent::FontChange) layOut();
}

} // namespace bw
