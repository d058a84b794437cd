// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/floor_lanes.hpp"

#include "desk/floor/floor_words.hpp"

#include <QAccessibleWidget>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
constexpr double kNearest = 12, kZoomStep = 1.25;
constexpr int kPad = 10; // around the picture

QAccessibleInterface* accessibleLanes(const QString& name, QObject* object) {
    auto* lanes =
        name == QLatin1String("bw::FloorLanes") ? qobject_cast<FloorLanes*>(object) : nullptr;
    return lanes ? new QAccessibleWidget(lanes, QAccessible::Chart) : nullptr;
}

void installOnce() {
    static const bool installed = [] {
        QAccessible::installFactory(accessibleLanes);
        return true;
    }();
    (void)installed;
}
} // namespace

FloorLanes::FloorLanes(QWidget* parent) : QAbstractScrollArea(parent) {
    installOnce();
    setFrameShape(NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    setMinimumSize(320, 160);
    viewport()->setMouseTracking(true);
    viewport()->setBackgroundRole(QPalette::Base);
    describe();
}

void FloorLanes::show(FloorView view) {
    view_ = std::move(view);
    layOut();
}

void FloorLanes::setOrder(LaneOrder order) {
    if (order == order_) return;
    order_ = order;
    marks_.lane = 0;
    layOut();
}

void FloorLanes::layOut() {
    const LanePiece* before = piece();
    const Millis when = before ? before->from : Millis{0};
    plan_ = LanePlan::of(view_, order_);
    names_ = laneNamesWidth(view_, plan_, font());
    const int last = static_cast<int>(plan_.lanes.size()) - 1;
    marks_.lane = std::min(std::max(marks_.lane, 0), last);
    marks_.piece = plan_.pieceAt(marks_.lane, when);
    marks_.overLane = marks_.overPiece = -1;
    measure();
    describe();
    Q_EMIT moved();
}

LaneGeometry FloorLanes::geometryNow() const {
    LaneGeometry g = laneGeometry(QRectF(viewport()->rect()).adjusted(kPad, kPad, -kPad, 0), plan_,
                                  names_, font(), zoom_);
    g.scrolledX = horizontalScrollBar()->value();
    g.scrolledY = verticalScrollBar()->value();
    return g;
}

const LanePiece* FloorLanes::at(Spot spot) const {
    if (spot.lane < 0 || spot.lane >= static_cast<int>(plan_.lanes.size())) return nullptr;
    const auto& pieces = plan_.lanes[static_cast<std::size_t>(spot.lane)].pieces;
    if (spot.piece < 0 || spot.piece >= static_cast<int>(pieces.size())) return nullptr;
    return &pieces[static_cast<std::size_t>(spot.piece)];
}

const LanePiece* FloorLanes::piece() const { return at({marks_.lane, marks_.piece}); }

QString FloorLanes::wordsAt(Spot spot) const {
    const LanePiece* found = at(spot);
    return found ? pieceWords(view_, plan_.lanes[static_cast<std::size_t>(spot.lane)], *found)
                 : QString();
}

QString FloorLanes::words() const { return wordsAt({marks_.lane, marks_.piece}); }

void FloorLanes::describe() {
    const QString here = words();
    const QString name = here.isEmpty() ? tr("Lanes of the class") : tr("Lanes. %1").arg(here);
    if (name != accessibleName()) setAccessibleName(name);
    const QString what = view_.answer ? floorSummary(view_) : QString();
    if (what != accessibleDescription()) setAccessibleDescription(what);
}

void FloorLanes::setZoom(double zoom) {
    const double next = std::clamp(zoom, 1.0, kNearest);
    if (next == zoom_) return;
    const double middle = viewport()->width() / 2.0;
    const Millis there = geometryNow().time(middle);
    zoom_ = next;
    measure();
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() +
                                    static_cast<int>(std::lround(geometryNow().x(there) - middle)));
}

void FloorLanes::measure() {
    const LaneGeometry g = geometryNow();
    const auto set = [](QScrollBar* bar, double all, double room) {
        bar->setPageStep(static_cast<int>(room));
        bar->setSingleStep(24);
        bar->setRange(0, std::max(0, static_cast<int>(std::ceil(all - room))));
    };
    set(horizontalScrollBar(), g.lanes.width() * zoom_, g.lanes.width());
    set(verticalScrollBar(), g.high * static_cast<double>(plan_.lanes.size()), g.lanes.height());
    viewport()->update();
}

FloorLanes::Spot FloorLanes::spotAt(QPointF point) const {
    const LaneGeometry g = geometryNow();
    if (!g.lanes.contains(point)) return {};
    const Spot spot{g.laneAt(point.y()), plan_.pieceAt(g.laneAt(point.y()), g.time(point.x()))};
    const LanePiece* found = at(spot);
    return found && found->holds(g.time(point.x())) ? spot : Spot{};
}

void FloorLanes::moveTo(Spot spot) {
    if (!at(spot) || spot == Spot{marks_.lane, marks_.piece}) return;
    marks_.lane = spot.lane;
    marks_.piece = spot.piece;
    bringIntoView();
    describe();
    viewport()->update();
    Q_EMIT moved();
}

void FloorLanes::bringIntoView() {
    const LaneGeometry g = geometryNow();
    const QRectF box = g.pieceRect(marks_.lane, *piece());
    const auto shift = [](double from, double to, double least, double most) {
        if (from < least) return from - least;
        return to > most ? std::min(to - most, from - least) : 0.0;
    };
    const auto scroll = [](QScrollBar* bar, double by) {
        bar->setValue(bar->value() + static_cast<int>(std::lround(by)));
    };
    scroll(horizontalScrollBar(),
           shift(box.left() - 4, box.right() + 4, g.lanes.left(), g.lanes.right()));
    const double top = g.top(marks_.lane);
    scroll(verticalScrollBar(), shift(top, top + g.high, g.lanes.top(), g.lanes.bottom()));
}

FloorLanes::Spot FloorLanes::beside(int step) const { return {marks_.lane, marks_.piece + step}; }

FloorLanes::Spot FloorLanes::above(int step) const {
    const LanePiece* now = piece();
    const int last = static_cast<int>(plan_.lanes.size()) - 1;
    const int lane = std::clamp(marks_.lane + step, 0, std::max(0, last));
    return now ? Spot{lane, plan_.pieceAt(lane, now->from + (now->to - now->from) / 2)} : Spot{};
}

// Along the lane, then on to the next lanes, round and round.
FloorLanes::Spot FloorLanes::nextWait() const {
    const int lanes = static_cast<int>(plan_.lanes.size());
    for (int n = 0; n <= lanes; ++n) {
        Spot spot{(marks_.lane + n) % std::max(1, lanes), n == 0 ? marks_.piece + 1 : 0};
        for (; const LanePiece* found = at(spot); ++spot.piece)
            if (found->kind == LanePiece::Kind::Wait || found->kind == LanePiece::Kind::Line)
                return spot;
    }
    return {};
}

bool FloorLanes::walk(int key) {
    const int page = std::max(
        1, static_cast<int>(geometryNow().lanes.height() / std::max(1.0, geometryNow().high)) - 1);
    switch (key) {
    case Qt::Key_Left: moveTo(beside(-1)); return true;
    case Qt::Key_Right: moveTo(beside(1)); return true;
    case Qt::Key_Up: moveTo(above(-1)); return true;
    case Qt::Key_Down: moveTo(above(1)); return true;
    case Qt::Key_PageUp: moveTo(above(-page)); return true;
    case Qt::Key_PageDown: moveTo(above(page)); return true;
    case Qt::Key_Home: moveTo({marks_.lane, 0}); return true;
    case Qt::Key_End: moveTo({marks_.lane, plan_.pieceAt(marks_.lane, plan_.finish)}); return true;
    case Qt::Key_W: moveTo(nextWait()); return true;
    default: return false;
    }
}

void FloorLanes::keyPressEvent(QKeyEvent* event) {
    if (event->modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier))
        return QAbstractScrollArea::keyPressEvent(event);
    switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal: return setZoom(zoom_ * kZoomStep);
    case Qt::Key_Minus: return setZoom(zoom_ / kZoomStep);
    case Qt::Key_0: return setZoom(1);
    case Qt::Key_Return:
    case Qt::Key_Enter: return pick();
    default:
        if (!walk(event->key())) QAbstractScrollArea::keyPressEvent(event);
    }
}

void FloorLanes::pick() {
    if (const LanePiece* now = piece(); now && !now->place.isSession()) Q_EMIT picked(now->place);
}

void FloorLanes::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) moveTo(spotAt(event->position()));
}

void FloorLanes::mouseDoubleClickEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton && at(spotAt(event->position()))) pick();
}

void FloorLanes::mouseMoveEvent(QMouseEvent* event) {
    const Spot over = spotAt(event->position());
    if (over == Spot{marks_.overLane, marks_.overPiece}) return;
    marks_.overLane = over.lane;
    marks_.overPiece = over.piece;
    viewport()->update();
}

void FloorLanes::wheelEvent(QWheelEvent* event) {
    if (event->modifiers() & Qt::ControlModifier)
        return setZoom(zoom_ * (event->angleDelta().y() > 0 ? kZoomStep : 1 / kZoomStep));
    QAbstractScrollArea::wheelEvent(event);
}

bool FloorLanes::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::Leave) {
        marks_.overLane = marks_.overPiece = -1;
        viewport()->update();
    }
    if (event->type() != QEvent::ToolTip) return QAbstractScrollArea::viewportEvent(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    QToolTip::showText(help->globalPos(), wordsAt(spotAt(help->pos())), viewport());
    return true;
}

void FloorLanes::paintEvent(QPaintEvent*) {
    QPainter painter(viewport());
    painter.setFont(font());
    painter.fillRect(viewport()->rect(), inks().paper);
    if (plan_.lanes.empty()) {
        const double wide = inks().stroke + 1;
        painter.setPen(QPen(hasFocus() ? inks().accent : inks().paper, wide));
        painter.drawRect(QRectF(viewport()->rect()).adjusted(wide / 2, wide / 2, -wide, -wide));
        return;
    }
    marks_.focus = hasFocus();
    paintLanes(painter, view_, plan_, geometryNow(), marks_, inks());
}

void FloorLanes::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    measure();
}

void FloorLanes::focusInEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusInEvent(event);
    viewport()->update();
}

void FloorLanes::focusOutEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusOutEvent(event);
    viewport()->update();
}

void FloorLanes::changeEvent(QEvent* event) {
    QAbstractScrollArea::changeEvent(event);
    if (event->type() == QEvent::FontChange && view_.gym) layOut();
}

} // namespace bw
