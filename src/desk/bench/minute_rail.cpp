// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/minute_rail.hpp"

#include "desk/bench/minute_rail_words.hpp"

#include <QAccessibleWidget>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>

namespace bw {

namespace {
QAccessibleInterface* accessibleRail(const QString& name, QObject* object) {
    auto* rail =
        name == QLatin1String("bw::MinuteRail") ? qobject_cast<MinuteRail*>(object) : nullptr;
    return rail ? new QAccessibleWidget(rail, QAccessible::Chart) : nullptr;
}

void installOnce() {
    static const bool installed = [] {
        QAccessible::installFactory(accessibleRail);
        return true;
    }();
    (void)installed;
}
} // namespace

MinuteRail::MinuteRail(Draft& draft, QWidget* parent) : QWidget(parent), draft_(draft) {
    installOnce();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&draft_, &Draft::changed, this, &MinuteRail::refresh);
    connect(&draft_, &Draft::placeChanged, this, &MinuteRail::follow);
    refresh();
    follow(draft_.place());
}

QSize MinuteRail::sizeHint() const { return {900, railHeight(font()) + 6}; }
QSize MinuteRail::minimumSizeHint() const { return {320, railHeight(font())}; }

RailGeometry MinuteRail::geometryNow() const { return railGeometry(rect(), plan_, font()); }

void MinuteRail::refresh() {
    const Block* block = draft_.block();
    plan_ = block ? RailPlan::of(draft_.gym().gym().settings, *block, draft_.time()) : RailPlan{};
    plan_.hold(latest_);
    if (!plan_.sectionAt(cursor_) || (cursor_.isGroup() && !plan_.groupAt(cursor_)))
        cursor_ = plan_.first();
    const QString summary = railSummary(plan_);
    if (summary != accessibleDescription()) setAccessibleDescription(summary); // tells the readers
    moveCursor(cursor_);
    update();
}

void MinuteRail::showFloor(ExactTime latest, const QString& words) {
    if (latest == latest_ && words == floorWords_) return;
    latest_ = latest;
    floorWords_ = words;
    refresh();
}

void MinuteRail::follow(Place place) {
    const Place piece = railPlace(place);
    moveCursor(plan_.sectionAt(piece) ? piece : plan_.first());
    update();
}

void MinuteRail::moveCursor(Place place) {
    cursor_ = place;
    const QString here = sentenceFor(place);
    const QString name = here.isEmpty() ? tr("Minute rail") : tr("Minute rail. %1").arg(here);
    if (name != accessibleName()) setAccessibleName(name);
    update();
}

void MinuteRail::pick(Place place) {
    if (!plan_.sectionAt(place)) return;
    moveCursor(place);
    draft_.setPlace(place);
    Q_EMIT picked(place);
}

QString MinuteRail::sentenceFor(Place place) const {
    const RailPiece* piece = plan_.sectionAt(place);
    if (!piece) return {};
    const RailGroup* group = plan_.groupAt(place);
    return group ? groupSentence(*piece, *group) : pieceSentence(*piece);
}

Place MinuteRail::placeAt(QPointF point) const {
    const RailGeometry g = geometryNow();
    for (const RailPiece& piece : plan_.pieces) {
        for (const RailGroup& group : piece.groups)
            if (g.groupRect(group).contains(point)) return group.place;
        QRectF column = g.pieceRect(piece);
        column.setTop(g.whiskers.top());
        column.setBottom(g.ruler.bottom());
        if (column.contains(point)) return piece.place;
    }
    return {};
}

QString MinuteRail::tipAt(QPointF point) const {
    const QString sentence = sentenceFor(placeAt(point));
    if (!sentence.isEmpty()) return sentence;
    const RailGeometry g = geometryNow();
    for (const RailPiece& piece : plan_.pieces)
        if (g.pieceRect(piece).contains(point)) return pieceSentence(piece);
    return {};
}

bool MinuteRail::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const QString tip = tipAt(help->pos());
    if (tip.isEmpty())
        QToolTip::hideText();
    else
        QToolTip::showText(help->globalPos(), tip, this);
    return true;
}

void MinuteRail::paintEvent(QPaintEvent*) {
    const Inks& k = inks();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), k.paper);
    painter.setFont(font());
    paintRail(painter, plan_, geometryNow(),
              {railPlace(draft_.place()), cursor_, hasFocus(), floorWords_}, k);
}

Place MinuteRail::keyTarget(int key) const {
    const RailPiece* section = plan_.sectionAt(cursor_);
    switch (key) {
    case Qt::Key_Left: return plan_.beside(cursor_, -1);
    case Qt::Key_Right: return plan_.beside(cursor_, 1);
    case Qt::Key_Home: return plan_.first();
    case Qt::Key_End: return plan_.last();
    case Qt::Key_Down:
        return cursor_.isSection() && !section->groups.empty() ? section->groups.front().place
                                                               : cursor_;
    default: return {cursor_.section, -1, -1}; // Up
    }
}

void MinuteRail::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_Home:
    case Qt::Key_End:
    case Qt::Key_Down:
    case Qt::Key_Up:
        if (plan_.sectionAt(cursor_)) moveCursor(keyTarget(event->key()));
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space: pick(cursor_); return;
    default: QWidget::keyPressEvent(event);
    }
}

void MinuteRail::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) pick(placeAt(event->position()));
}

void MinuteRail::mouseMoveEvent(QMouseEvent* event) {
    const bool piece = !placeAt(event->position()).isSession();
    setCursor(piece ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

void MinuteRail::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void MinuteRail::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) updateGeometry();
    update();
}

} // namespace bw
