// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/cell_delegate.hpp"

#include "desk/bench/cell_editor.hpp"
#include "desk/frame/words.hpp"

#include <QKeyEvent>

namespace bw {

void CellDelegate::setEditorData(QWidget* widget, const QModelIndex& index) const {
    edited_ = index;
    auto* editor = static_cast<CellEditor*>(widget);
    if (editor->isModified()) return; // the data came anew: keep what is being typed
    editor->setText(index.data(Qt::EditRole).toString());
    editor->selectAll();
}

void CellDelegate::setModelData(QWidget* widget, QAbstractItemModel* model,
                                const QModelIndex& index) const {
    const auto* editor = static_cast<CellEditor*>(widget);
    if (editor->isModified()) model->setData(index, editor->text(), Qt::EditRole);
}

void CellDelegate::finishTyping(const QWidget& view) {
    for (CellEditor* editor : view.findChildren<CellEditor*>()) {
        if (!editor->isVisibleTo(&view)) continue; // closed already
        Q_EMIT commitData(editor);
        Q_EMIT closeEditor(editor, NoHint);
    }
}

bool CellDelegate::mayLeave(CellEditor* editor) const {
    if (!editor->isModified()) return true;
    const auto why = fault(*editor);
    if (!why) return true;
    editor->setTrouble(say(*why));
    Q_EMIT trouble(*why);
    return false;
}

bool CellDelegate::eventFilter(QObject* object, QEvent* event) {
    auto* editor = qobject_cast<CellEditor*>(object);
    if (editor && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        const bool leaves = key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Tab ||
                            key == Qt::Key_Backtab;
        if (leaves && !mayLeave(editor)) return true;
        if (key == Qt::Key_Escape) Q_EMIT clear();
    }
    return QStyledItemDelegate::eventFilter(object, event);
}

} // namespace bw
