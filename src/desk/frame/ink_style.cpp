// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/ink_style.hpp"

#include "desk/frame/theme.hpp"

#include <QPainter>
#include <QStyleOption>

namespace bw {

InkStyle::InkStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

void InkStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* o, QPainter* p,
                             const QWidget* widget) const {
    if (element != PE_IndicatorCheckBox) return QProxyStyle::drawPrimitive(element, o, p, widget);
    const Inks& k = inks();
    const bool on = o->state & State_On;
    const bool usable = o->state & State_Enabled;
    const QRectF box = QRectF(o->rect).adjusted(1, 1, -1, -1);
    p->save();
    p->setRenderHint(QPainter::Antialiasing);
    p->setPen(QPen(on && usable ? k.accent : k.quiet, o->state & State_HasFocus ? 2 : 1));
    p->setBrush(on && usable ? k.accent : k.paper);
    p->drawRoundedRect(box, 2, 2);
    if (on) {
        p->setPen(
            QPen(usable ? k.onAccent : k.quiet, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        const QPointF tick[] = {
            {box.left() + box.width() * 0.22, box.center().y()},
            {box.left() + box.width() * 0.43, box.bottom() - box.height() * 0.26},
            {box.right() - box.width() * 0.2, box.top() + box.height() * 0.27}};
        p->drawPolyline(tick, 3);
    }
    p->restore();
}

} // namespace bw
