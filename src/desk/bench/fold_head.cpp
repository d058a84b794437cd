// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/fold_head.hpp"

#include "desk/frame/theme.hpp"

#include <QEvent>
#include <QPainter>

namespace bw {

namespace {
constexpr int kPad = 5, kArrow = 16;
} // namespace

FoldHead::FoldHead(const QString& text, QWidget* parent) : QAbstractButton(parent) {
    setText(text);
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setAttribute(Qt::WA_Hover);
}

QSize FoldHead::sizeHint() const {
    return {fontMetrics().horizontalAdvance(text()) + kArrow + 2 * kPad,
            fontMetrics().height() + 2 * kPad};
}

void FoldHead::paintEvent(QPaintEvent*) {
    const Inks& k = inks();
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    if (hasFocus() || underMouse()) {
        p.setPen(QPen(hasFocus() ? k.accent : k.line, hasFocus() ? k.stroke + 1 : k.stroke));
        p.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 3, 3);
    }
    const QPointF middle(kPad + kArrow / 2.0 - 2, height() / 2.0);
    p.translate(middle);
    if (isChecked()) p.rotate(90);
    const QPointF arrow[] = {{-2, -4}, {3, 0}, {-2, 4}};
    p.setPen(QPen(k.quiet, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    p.drawPolyline(arrow, 3);
    p.resetTransform();
    p.setPen(k.ink);
    p.drawText(rect().adjusted(kPad + kArrow, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, text());
}

void FoldHead::changeEvent(QEvent* event) {
    QAbstractButton::changeEvent(event);
    if (event->type() == QEvent::FontChange) updateGeometry();
}

} // namespace bw
