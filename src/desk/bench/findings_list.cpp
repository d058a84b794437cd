// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/findings_list.hpp"

#include "desk/frame/words.hpp"

#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMenu>
#include <QMouseEvent>
#include <QScrollBar>

#include <algorithm>
#include <utility>

namespace bw {

FindingsList::FindingsList(FindingsModel& model, QWidget* parent)
    : QListView(parent), model_(model), delegate_(new FindingsDelegate(this)) {
    setModel(&model_);
    setItemDelegate(delegate_);
    setFrameShape(QFrame::NoFrame);
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setResizeMode(Adjust);
    setSelectionMode(SingleSelection);
    setEditTriggers(NoEditTriggers);
    setMouseTracking(true);
    setTabKeyNavigation(false);
    connect(this, &QListView::clicked, this, // on the current one too
            [this](const QModelIndex& index) { Q_EMIT chosen(index.row()); });
    setAccessibleName(tr("Findings"));
    setAccessibleDescription(tr("Enter goes to the rows, T tries the first thing, A accepts it, L "
                                "shows its limit, R its rule, the menu key offers everything."));
}

const FindingRow* FindingsList::current() const {
    return currentIndex().isValid() ? &model_.at(currentIndex().row()) : nullptr;
}

void FindingsList::renew(const std::function<void()>& change) {
    const QPersistentModelIndex kept = currentIndex();
    const int row = kept.row(), scrolled = verticalScrollBar()->value();
    updating_ = true;
    change();
    if (row >= 0 && !kept.isValid()) {
        const int beside = std::min(row, model_.rowCount() - 1);
        setCurrentIndex(hasFocus() && beside >= 0 ? model_.index(beside, 0) : QModelIndex());
    }
    updating_ = false;
    verticalScrollBar()->setValue(scrolled);
    viewport()->update();
}

void FindingsList::putCurrent(int row) {
    updating_ = true;
    setCurrentIndex(row < 0 ? QModelIndex() : model_.index(row));
    updating_ = false;
}

void FindingsList::currentChanged(const QModelIndex& now, const QModelIndex& before) {
    QListView::currentChanged(now, before);
    delegate_->setOpen(now);
    if (!updating_ && now.isValid()) Q_EMIT chosen(now.row());
}

// The view makes a row current when the focus comes; that alone must not move the coach's place.
void FindingsList::focusInEvent(QFocusEvent* event) {
    updating_ = true;
    QListView::focusInEvent(event);
    updating_ = false;
}

void FindingsList::keyPressEvent(QKeyEvent* event) {
    const int row = currentIndex().row(), key = event->key();
    const bool bare = !(event->modifiers() & ~Qt::KeypadModifier);
    if (row >= 0 && bare && (key == Qt::Key_Return || key == Qt::Key_Enter))
        return Q_EMIT goWanted(row);
    if (row >= 0 && bare && letter(row, key)) return;
    QListView::keyPressEvent(event);
}

bool FindingsList::letter(int row, int key) {
    const QModelIndex index = model_.index(row);
    if (key == Qt::Key_T)
        act(index, 0);
    else if (key >= Qt::Key_1 && key <= Qt::Key_9)
        act(index, key - Qt::Key_1);
    else if (key == Qt::Key_A)
        act(index, FindingsDelegate::kAccept);
    else if (key == Qt::Key_L)
        act(index, FindingsDelegate::kLimit);
    else if (key == Qt::Key_R)
        act(index, FindingsDelegate::kRule);
    else
        return false;
    return true;
}

void FindingsList::act(const QModelIndex& index, int action) {
    switch (action) {
    case FindingsDelegate::kAccept: return Q_EMIT acceptWanted(index.row());
    case FindingsDelegate::kRule: return Q_EMIT ruleWanted(index.row());
    case FindingsDelegate::kLimit:
        if (!model_.at(index.row()).finding.limitName.empty()) Q_EMIT limitWanted(index.row());
        return;
    default: Q_EMIT tryWanted(index.row(), action);
    }
}

FindingsList::Hit FindingsList::hitAt(QPoint point) const {
    const QModelIndex index = indexAt(point);
    if (!index.isValid()) return {};
    QStyleOptionViewItem option;
    initViewItemOption(&option);
    option.rect = visualRect(index);
    return {index, delegate_->actionAt(option, index, index == currentIndex(), point)};
}

void FindingsList::hover(const Hit& hit) {
    if (!delegate_->setHover(hit.index, hit.action)) return;
    viewport()->setCursor(hit.action < 0 ? Qt::ArrowCursor : Qt::PointingHandCursor);
    viewport()->update();
}

void FindingsList::mousePressEvent(QMouseEvent* event) {
    pressed_ = event->button() == Qt::LeftButton ? hitAt(event->position().toPoint()) : Hit{};
    if (pressed_.action < 0) QListView::mousePressEvent(event);
}

void FindingsList::mouseReleaseEvent(QMouseEvent* event) {
    const Hit was = std::exchange(pressed_, Hit{});
    if (was.action < 0) return QListView::mouseReleaseEvent(event);
    const Hit now = hitAt(event->position().toPoint());
    if (!was.index.isValid() || now.index != was.index || now.action != was.action) return;
    if (now.action == FindingsDelegate::kHint)
        offer(now.index, event->globalPosition().toPoint());
    else
        act(now.index, now.action);
}

void FindingsList::mouseDoubleClickEvent(QMouseEvent* event) {
    const Hit hit = hitAt(event->position().toPoint());
    if (hit.action >= 0) return mousePressEvent(event); // a quick second try
    if (hit.index.isValid()) Q_EMIT goWanted(hit.index.row());
}

void FindingsList::mouseMoveEvent(QMouseEvent* event) {
    hover(hitAt(event->position().toPoint()));
    QListView::mouseMoveEvent(event);
}

void FindingsList::leaveEvent(QEvent* event) {
    hover({});
    QListView::leaveEvent(event);
}

void FindingsList::contextMenuEvent(QContextMenuEvent* event) {
    const bool byKey = event->reason() == QContextMenuEvent::Keyboard;
    const QModelIndex index = byKey ? currentIndex() : indexAt(event->pos());
    if (!index.isValid()) return;
    const QPoint point =
        byKey ? viewport()->mapToGlobal(visualRect(index).center()) : event->globalPos();
    offer(index, point);
}

void FindingsList::offer(const QModelIndex& index, QPoint globalPoint) {
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    menu->setObjectName(QStringLiteral("tries"));
    const QPersistentModelIndex kept = index;
    const FindingRow& row = model_.at(index.row());
    const auto add = [&](const QString& text, int action) {
        connect(menu->addAction(text), &QAction::triggered, this, [this, kept, action] {
            if (kept.isValid()) act(kept, action);
        });
    };
    for (int n = 0; n < row.actions(); ++n) add(tr("Try: %1").arg(say(row.action(n)->label)), n);
    if (!menu->isEmpty()) menu->addSeparator();
    add(row.accepted() ? tr("Take back") : tr("Accept…"), FindingsDelegate::kAccept);
    if (!row.finding.limitName.empty()) add(tr("Limit…"), FindingsDelegate::kLimit);
    add(tr("Rule…"), FindingsDelegate::kRule);
    connect(menu->addAction(tr("Go to the rows")), &QAction::triggered, this, [this, kept] {
        if (kept.isValid()) Q_EMIT goWanted(kept.row());
    });
    menu->popup(globalPoint);
}

void FindingsList::resizeEvent(QResizeEvent* event) {
    QListView::resizeEvent(event);
    scheduleDelayedItemsLayout(); // sentences wrap anew
}

} // namespace bw
