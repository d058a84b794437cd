// SPDX-License-Identifier: GPL-3.0-or-later
// Paints the cells: months in a row run together into one band, a main lift wears a ring, what is
// new says so.
#pragma once
#include "desk/frame/theme.hpp"

#include <QStyledItemDelegate>

namespace bw {

class AlmanacDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
};

// The fill of a band on paper: light enough for ink on it.
[[nodiscard]] QColor bandFill(const Inks& inks);

} // namespace bw
