// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/ink_style.hpp"

#include "desk/frame/theme.hpp"

#include <QPainter>
#include <QStyleOption>

namespace bw {

InkStyle::InkStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

void InkStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* o, QPainter* p,
                             const QWidget* widget) const {
    if (element == PE_FrameFocusRect) return drawFocus(*o, *p);
    if (element == PE_IndicatorCheckBox) return drawBox(*o, *p);
    QProxyStyle::drawPrimitive(element, o, p, widget);
    const bool framed = element == PE_FrameLineEdit || element == PE_FrameGroupBox ||
                        element == PE_FrameMenu || element == PE_FrameTabWidget ||
                        element == PE_PanelButtonCommand || element == PE_Frame;
    if (!inks().highContrast || !framed) return;
    p->save(); // the plain style's own lines are greys
    p->setPen(QPen(inks().line, 1, o->state & State_Enabled ? Qt::SolidLine : Qt::DashLine));
    p->setBrush(Qt::NoBrush);
    p->drawRect(o->rect.adjusted(0, 0, -1, -1));
    p->restore();
}

void InkStyle::drawFocus(const QStyleOption& o, QPainter& p) {
    const auto* at = qstyleoption_cast<const QStyleOptionFocusRect*>(&o);
    const bool onAccent = at && at->backgroundColor == inks().accent; // a chosen line
    p.save();
    p.setPen(QPen(onAccent ? inks().onAccent : inks().accent, inks().stroke));
    p.setBrush(Qt::NoBrush);
    p.drawRect(QRectF(o.rect).adjusted(0.5, 0.5, -0.5, -0.5));
    p.restore();
}

void InkStyle::drawBox(const QStyleOption& o, QPainter& p) {
    const Inks& k = inks();
    const bool on = o.state & State_On;
    const bool usable = o.state & State_Enabled;
    const QRectF box = QRectF(o.rect).adjusted(1, 1, -1, -1);
    p.save();
    p.setRenderHint(QPainter::Antialiasing);
    p.setPen(QPen(on && usable ? k.accent : k.quiet,
                  o.state & State_HasFocus ? k.stroke + 1 : k.stroke));
    p.setBrush(on && usable ? k.accent : k.paper);
    p.drawRoundedRect(box, 2, 2);
    if (on) {
        p.setPen(
            QPen(usable ? k.onAccent : k.quiet, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        const QPointF tick[] = {
            {box.left() + box.width() * 0.22, box.center().y()},
            {box.left() + box.width() * 0.43, box.bottom() - box.height() * 0.26},
            {box.right() - box.width() * 0.2, box.top() + box.height() * 0.27}};
        p.drawPolyline(tick, 3);
    }
    p.restore();
}

} // namespace bw
