// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/sheet_header.hpp"

#include "desk/frame/theme.hpp"

#include <QPainter>

namespace bw {

SheetHeader::SheetHeader(QWidget* parent) : QHeaderView(Qt::Horizontal, parent) {
    setSectionResizeMode(Fixed);
    setSectionsClickable(false);
    setAccessibleName(tr("Columns of the sheet"));
}

void SheetHeader::paintSection(QPainter* p, const QRect& rect, int index) const {
    p->save();
    p->fillRect(rect, inks().paper);
    QFont small = font();
    small.setPointSizeF(small.pointSizeF() * 0.85);
    p->setFont(small);
    p->setPen(inks().quiet);
    p->drawText(rect.adjusted(5, 0, -4, -2), Qt::AlignLeft | Qt::AlignBottom,
                model()->headerData(index, Qt::Horizontal).toString());
    p->restore();
}

} // namespace bw
