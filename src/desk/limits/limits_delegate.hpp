// SPDX-License-Identifier: GPL-3.0-or-later
// Paints the limits like print on paper, and opens the line to type one in. What can't be read
// keeps the line open and says what is understood.
#pragma once
#include "blockwright/model/message.hpp"

#include <QStyledItemDelegate>

namespace bw {

class CellEditor;
class LimitsModel;

class LimitsDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    LimitsDelegate(LimitsModel& limits, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model,
                      const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

Q_SIGNALS:
    void typed(const QModelIndex& index, const QString& text) const;
    void trouble(const bw::Message& why) const; // typed text not understood

protected:
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    [[nodiscard]] bool mayLeave(CellEditor* editor) const;

    LimitsModel& limits_;
    mutable QPersistentModelIndex edited_;
};

} // namespace bw
