// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QStyledItemDelegate>

namespace bw {

// A line of the index: the words, a row of dots, and the key or the reason why not. A heading has
// neither.
class CommandDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    enum Role { AtRole = Qt::UserRole, RightRole, AwayRole }; // At: which line; none: a heading

    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;
};

} // namespace bw
