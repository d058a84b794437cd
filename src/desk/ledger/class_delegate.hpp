// SPDX-License-Identifier: GPL-3.0-or-later
// Paints a cell like a line on paper: what was lifted, below it small last time and the target.
// Text that is not understood keeps the line open when it is left by key, and says why.
#pragma once
#include "blockwright/model/message.hpp"

#include <QStyledItemDelegate>

namespace bw {

class CellEditor;
class ClassModel;

class ClassDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    ClassDelegate(ClassModel& grid, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model,
                      const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

Q_SIGNALS:
    void trouble(const bw::Message& why) const;
    void clear() const;
    void leave(int rows, int columns) const; // typed text was taken; go on by so many cells

protected:
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    bool take(CellEditor* editor);

    ClassModel& grid_;
};

} // namespace bw
