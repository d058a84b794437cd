// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/shelf/entry_view.hpp"

#include "desk/shelf/entry_delegate.hpp"

#include <QKeyEvent>

namespace bw {

EntryView::EntryView(EntryModel& model, QWidget* parent) : QListView(parent), entry_(model) {
    auto* delegate = new EntryDelegate(model, this);
    setModel(&model);
    setItemDelegate(delegate);
    setAccessibleName(tr("All of the exercise"));
    setAccessibleDescription(tr("Enter opens a line, Delete empties it, Esc leads back."));
    setFrameShape(NoFrame);
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    setSelectionMode(SingleSelection);
    setEditTriggers(AnyKeyPressed | EditKeyPressed | DoubleClicked | SelectedClicked);
    setTabKeyNavigation(false);
    connect(delegate, &EntryDelegate::trouble, this, &EntryView::trouble);
    connect(delegate, &EntryDelegate::clear, this, &EntryView::clear);
}

void EntryView::keyPressEvent(QKeyEvent* event) {
    const QModelIndex now = currentIndex();
    const int key = event->key();
    const bool bare = !(event->modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier));
    if (!bare || !now.isValid() || state() == EditingState) return QListView::keyPressEvent(event);
    const bool enter = key == Qt::Key_Return || key == Qt::Key_Enter;
    if (key == Qt::Key_Escape) return Q_EMIT left();
    if (enter && entry_.useAt(now.row())) return Q_EMIT monthWanted(now.row());
    if (!(entry_.flags(now) & Qt::ItemIsEditable)) return QListView::keyPressEvent(event);
    if (enter) return edit(now);
    if (key == Qt::Key_Delete || key == Qt::Key_Backspace) {
        entry_.setData(now, QString(), Qt::EditRole);
        return;
    }
    if (!event->text().isEmpty() && event->text().at(0).isPrint()) {
        (void)edit(now, AnyKeyPressed, event); // what was typed takes the place of what is there
        return;
    }
    QListView::keyPressEvent(event);
}

void EntryView::mouseDoubleClickEvent(QMouseEvent* event) {
    const QModelIndex at = indexAt(event->position().toPoint());
    if (entry_.useAt(at.row())) return Q_EMIT monthWanted(at.row());
    QListView::mouseDoubleClickEvent(event);
}

void EntryView::resizeEvent(QResizeEvent* event) {
    QListView::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) scheduleDelayedItemsLayout();
}

} // namespace bw
