// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/command_delegate.hpp"

#include "desk/frame/paper.hpp"
#include "desk/frame/theme.hpp"

#include <QPainter>

#include <algorithm>

namespace bw {

namespace {
constexpr int kIndent = 18, kEdge = 12; // pixels

void paintHeading(QPainter* p, const QRect& r, const QFont& font, const QString& text) {
    QFont small = smallFont(font);
    small.setBold(true);
    p->setFont(small);
    p->setPen(inks().quiet);
    p->drawText(r.adjusted(kEdge, 0, -kEdge, -3), Qt::AlignLeft | Qt::AlignBottom, text);
}

void paintDots(QPainter* p, int from, int to, int baseline) {
    constexpr int kStep = 6;
    for (int x = to - to % kStep; x > from; x -= kStep) // one below the other in all lines
        p->fillRect(x, baseline - 1, 1, 1, inks().quiet);
}
} // namespace

void CommandDelegate::paint(QPainter* p, const QStyleOptionViewItem& o,
                            const QModelIndex& index) const {
    const QRect r = o.rect;
    const QString text = index.data().toString();
    p->save();
    if (!index.data(AtRole).isValid()) {
        paintHeading(p, r, o.font, text);
        return p->restore();
    }
    const bool away = index.data(AwayRole).toBool();
    if (o.state & QStyle::State_Selected) {
        p->fillRect(r, inks().wash);
        p->fillRect(r.left(), r.top(), 3, r.height(), inks().accent);
    }
    if (o.state & QStyle::State_HasFocus) {
        p->setPen(QPen(inks().accent, inks().stroke + 1));
        p->drawRect(r.adjusted(1, 1, -2, -2));
    }
    QFont rightFont = o.font;
    rightFont.setItalic(away);
    const QString right = index.data(RightRole).toString();
    const int rightWidth = QFontMetrics(rightFont).horizontalAdvance(right);
    const int room = r.width() - kIndent - kEdge - (right.isEmpty() ? 0 : rightWidth + 16);
    const QString left = o.fontMetrics.elidedText(text, Qt::ElideRight, std::max(40, room));
    const int leftEnd = r.left() + kIndent + o.fontMetrics.horizontalAdvance(left);
    const QRect line = r.adjusted(kIndent, 0, -kEdge, 0);
    if (!right.isEmpty())
        paintDots(p, leftEnd + 6, line.right() - rightWidth - 6,
                  r.center().y() + o.fontMetrics.ascent() / 2);
    p->setPen(away ? inks().quiet : inks().ink);
    p->setFont(o.font);
    p->drawText(line, Qt::AlignLeft | Qt::AlignVCenter, left);
    p->setFont(rightFont);
    p->drawText(line, Qt::AlignRight | Qt::AlignVCenter, right);
    p->restore();
}

QSize CommandDelegate::sizeHint(const QStyleOptionViewItem& o, const QModelIndex& index) const {
    return {100, o.fontMetrics.height() + (index.data(AtRole).isValid() ? 8 : 12)};
}

} // namespace bw
