// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QHeaderView>

namespace bw {

// The names of the columns in small print on the same paper, without boxes.
class SheetHeader : public QHeaderView {
    Q_OBJECT
public:
    explicit SheetHeader(QWidget* parent);

protected:
    void paintSection(QPainter* painter, const QRect& rect, int logicalIndex) const override;
};

} // namespace bw
