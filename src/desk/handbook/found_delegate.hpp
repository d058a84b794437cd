// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QStyledItemDelegate>

namespace bw {

// A part of the Handbook that was found: its heading, and below it the line with the word.
class FoundDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    static constexpr int kLine = Qt::UserRole + 1;
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace bw
