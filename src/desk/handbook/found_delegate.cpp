// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/handbook/found_delegate.hpp"

#include "desk/frame/paper.hpp"
#include "desk/frame/theme.hpp"

#include <QListView>
#include <QPainter>

namespace bw {

namespace {
constexpr int kPad = 6, kApart = 2, kMostLines = 2; // logical pixels; lines of the text

QFont strong(QFont font) {
    font.setBold(true);
    return font;
}
} // namespace

QSize FoundDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    const int line = QFontMetrics(smallFont(option.font)).lineSpacing();
    const int high = QFontMetrics(strong(option.font)).height() + kApart + kMostLines * line;
    const auto* list = qobject_cast<const QListView*>(option.widget);
    return {list ? list->viewport()->width() : 200, high + 2 * kPad};
}

void FoundDelegate::paint(QPainter* p, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    const Inks& k = inks();
    const bool chosen = option.state & QStyle::State_Selected;
    const QFont head = strong(option.font), small = smallFont(option.font);
    const QRect in = option.rect.adjusted(kPad + 2, kPad, -kPad, -kPad);
    p->save();
    p->fillRect(option.rect, chosen ? k.wash : k.paper);
    if (chosen) p->fillRect(QRect(option.rect.topLeft(), QSize(3, option.rect.height())), k.accent);
    p->setPen(k.ink);
    p->setFont(head);
    const QFontMetrics heading(head);
    p->drawText(in, Qt::AlignLeft | Qt::AlignTop,
                heading.elidedText(index.data().toString(), Qt::ElideRight, in.width()));
    p->setPen(k.quiet);
    p->setFont(small);
    p->drawText(in.adjusted(0, heading.height() + kApart, 0, 0),
                Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, index.data(kLine).toString());
    p->setPen(k.line);
    p->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    if (option.state & QStyle::State_HasFocus) {
        p->setPen(QPen(k.accent, k.stroke + 1));
        p->drawRect(option.rect.adjusted(1, 1, -1, -2));
    }
    p->restore();
}

} // namespace bw
