// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/exercise_line.hpp"

#include "desk/frame/theme.hpp"

#include <QPainter>

namespace bw {

void ExerciseLine::paint(QPainter* p, const QStyleOptionViewItem& o, const QModelIndex& i) const {
    const Inks& k = inks();
    const bool lit = o.state & QStyle::State_Selected;
    p->save();
    p->fillRect(o.rect, lit ? k.accent : k.paper);
    const QRect r = o.rect.adjusted(6, 0, -8, 0);
    p->setFont(o.font);
    p->setPen(lit ? k.onAccent : k.ink);
    const QString name = i.data(Qt::DisplayRole).toString();
    p->drawText(r, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, name);
    const int used = p->fontMetrics().horizontalAdvance(name) + 16;
    QFont small = o.font;
    small.setPointSizeF(small.pointSizeF() * 0.88);
    p->setFont(small);
    p->setPen(lit ? k.onAccent : k.quiet);
    const QRect rest = r.adjusted(used, 0, 0, 0);
    p->drawText(
        rest, Qt::AlignRight | Qt::AlignVCenter | Qt::TextSingleLine,
        p->fontMetrics().elidedText(i.data(kAboutRole).toString(), Qt::ElideRight, rest.width()));
    p->restore();
}

QSize ExerciseLine::sizeHint(const QStyleOptionViewItem& o, const QModelIndex&) const {
    return {400, o.fontMetrics.height() * 3 / 2};
}

} // namespace bw
