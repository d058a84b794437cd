// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/shelf/family_node.hpp"

#include "desk/frame/paper.hpp"
#include "desk/frame/theme.hpp"

#include <QKeyEvent>
#include <QPainter>

namespace bw {

namespace {
constexpr int kSide = 6, kTop = 4;

QString said(const FamilyNode::Who& who) {
    if (!who.kin) return FamilyNode::tr("%1, of this family").arg(who.name);
    const QString kin = kinName(*who.kin);
    return who.exercise ? FamilyNode::tr("%1: %2", "easier, name").arg(kin, who.name)
                        : FamilyNode::tr("Add: %1").arg(kin);
}
} // namespace

QString kinName(Kin kin) {
    if (kin == Kin::Easier) return FamilyNode::tr("easier");
    return kin == Kin::Harder ? FamilyNode::tr("harder") : FamilyNode::tr("swap");
}

FamilyNode::FamilyNode(Who who, QWidget* parent) : QAbstractButton(parent) {
    setFocusPolicy(who.kin ? Qt::ClickFocus : Qt::StrongFocus); // arrows lead from it to the kin
    setCursor(who.kin ? Qt::PointingHandCursor : Qt::ArrowCursor);
    setWho(std::move(who));
}

void FamilyNode::setWho(Who who) {
    who_ = std::move(who);
    setText(who_.exercise ? who_.name : QStringLiteral("+"));
    setAccessibleName(said(who_));
    setToolTip(accessibleName());
    update();
}

bool FamilyNode::focusNextPrevChild(bool next) {
    if (who_.kin) Q_EMIT leaving();
    return QAbstractButton::focusNextPrevChild(next);
}

QFont FamilyNode::printFont() const {
    QFont print = smallFont(font());
    print.setItalic(who_.faint);
    if (!who_.kin) print.setWeight(QFont::DemiBold);
    return print;
}

int FamilyNode::heightFor(int width) const {
    const QRect room(0, 0, width - 2 * kSide, 1000);
    return QFontMetrics(printFont()).boundingRect(room, Qt::TextWordWrap, text()).height() +
           2 * kTop;
}

void FamilyNode::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left: return Q_EMIT moved(-1, 0);
    case Qt::Key_Right: return Q_EMIT moved(1, 0);
    case Qt::Key_Up: return Q_EMIT moved(0, -1);
    case Qt::Key_Down: return Q_EMIT moved(0, 1);
    case Qt::Key_Return:
    case Qt::Key_Enter: return click();
    case Qt::Key_Delete: return Q_EMIT removeWanted();
    case Qt::Key_Escape: return Q_EMIT left();
    default: QAbstractButton::keyPressEvent(event);
    }
}

void FamilyNode::paintEvent(QPaintEvent*) {
    const Inks& k = inks();
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    const bool empty = !who_.exercise, lit = hasFocus() || underMouse();
    p.setPen(QPen(hasFocus() ? k.accent
                  : lit      ? k.quiet
                             : k.line,
                  hasFocus() ? k.stroke + 1 : k.stroke, empty ? Qt::DashLine : Qt::SolidLine));
    p.setBrush(who_.kin ? k.paper : k.wash);
    p.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 3, 3);
    p.setPen(empty || who_.faint ? k.quiet : k.ink);
    p.setFont(printFont());
    p.drawText(rect().adjusted(kSide, kTop, -kSide, -kTop), Qt::AlignCenter | Qt::TextWordWrap,
               text());
}

} // namespace bw
