// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QStyledItemDelegate>

namespace bw {

// A line of the list under an exercise being typed: its name in ink, what it is in quiet small
// print.
class ExerciseLine : public QStyledItemDelegate {
    Q_OBJECT
public:
    static constexpr int kAboutRole = Qt::UserRole + 2; // QString: pattern and kit
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace bw
