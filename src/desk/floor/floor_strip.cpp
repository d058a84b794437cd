// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/floor_strip.hpp"

#include "desk/floor/floor_words.hpp"
#include "desk/floor/span_mark.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/words.hpp"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
constexpr double kRow = 9; // pixels; neighbours stand in two rows, so that they may overlap
} // namespace

FloorStrip::FloorStrip(Draft& draft, FloorRunner& runner, MinuteRail& rail)
    : QWidget(&rail), draft_(draft), runner_(runner), rail_(rail) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    rail_.installEventFilter(this);
    connect(&runner_, &FloorRunner::told, this, &FloorStrip::refresh);
    connect(&draft_, &Draft::changed, this, &FloorStrip::refresh);
    refresh();
}

void FloorStrip::refresh() {
    readEnds();
    Millis latest{0};
    for (const End& end : ends_) latest = std::max(latest, end.times.p90);
    const FloorView& view = runner_.usual();
    rail_.showFloor(latest, draft_.block() ? floorInShort(view) : QString());
    now_ = std::clamp(now_, 0, std::max(0, static_cast<int>(ends_.size()) - 1));
    describe();
    place();
    update();
}

// The plan is the draft's, the ends are of the last class played: only what both have is shown.
void FloorStrip::readEnds() {
    ends_.clear();
    const FloorAnswer* answer = runner_.usual().answer.get();
    const RailPlan& plan = rail_.plan();
    if (!answer || plan.pieces.size() < 2) return;
    for (std::size_t s = 0; s < answer->sections.size(); ++s) {
        const Place place{static_cast<int>(s), -1, -1};
        const RailPiece* piece = rail_.plan().sectionAt(place);
        if (!piece || piece->section != answer->sections[s].kind) continue;
        const FloorTimes& end = answer->sections[s].end;
        ends_.push_back({place,
                         sectionEndSentence(sectionName(*runner_.usual().block, place.section), end,
                                            roundHalvesUp(piece->end)),
                         piece->end, end});
    }
    ends_.push_back({{}, floorSummary(runner_.usual()), plan.pieces.back().end, answer->finish});
}

void FloorStrip::describe() {
    const FloorView& view = runner_.usual();
    const QString here = ends_.empty() ? QString() : ends_[static_cast<std::size_t>(now_)].words;
    const QString name = view.why         ? tr("Floor. %1").arg(say(*view.why))
                         : here.isEmpty() ? tr("Floor")
                                          : tr("Floor. %1").arg(here);
    if (name != accessibleName()) setAccessibleName(name);
    const QString all = floorSummary(view);
    if (all != accessibleDescription()) setAccessibleDescription(all);
}

void FloorStrip::place() { setGeometry(rail_.stripRect().toAlignedRect()); }

bool FloorStrip::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize || event->type() == QEvent::FontChange) place();
    return QWidget::eventFilter(watched, event);
}

QRectF FloorStrip::markRect(std::size_t index) const {
    const FloorTimes& t = ends_[index].times;
    const double from = rail_.xOf(t.p10) - x(), to = rail_.xOf(t.p90) - x();
    const double row = static_cast<double>(index % 2) * kRow;
    return {from, 1 + row, std::max(to - from, 4.0), kSpanMarkHigh};
}

void FloorStrip::paintEnd(QPainter& p, std::size_t index) const {
    const Inks& k = inks();
    const End& end = ends_[index];
    const QRectF box = markRect(index);
    const double y = box.center().y();
    const double half = rail_.xOf(end.times.p50) - x();
    const double planned = std::round(rail_.xOf(end.planned) - x()) + 0.5;
    const bool over = end.place.isSession() && ExactTime(end.times.p90) > rail_.plan().wall;
    const QColor ink = over ? k.wall : end.place.isSession() ? k.ink : k.quiet;
    if (!end.place.isSession()) { // the class is as late as its last section
        p.setPen(QPen(ink, 1));
        p.drawLine(QPointF(planned, y), QPointF(half, y));
        p.drawLine(QPointF(planned, y - 3), QPointF(planned, y + 3));
    }
    paintSpanMark(p, box.left(), half, box.right(), y, ink, k.paper);
    if (!hasFocus() || static_cast<int>(index) != now_) return;
    p.setPen(QPen(k.accent, k.stroke + 1));
    p.drawRoundedRect(box.adjusted(-2, -1, 2, 1), 4, 4);
}

// What is later than the scale holds is told at its end.
void FloorStrip::paintBeyond(QPainter& p) const {
    const double end = rail_.xOf(rail_.plan().span) - x();
    const double last = rail_.xOf(ends_.back().times.p90) - x();
    if (last <= end) return;
    const QString text = floorClock(ends_.back().times.p90) + QStringLiteral(" ›");
    p.setFont(smallFont(font()));
    const double wide = p.fontMetrics().horizontalAdvance(text) + 6;
    const QRectF box(width() - wide, 0, wide, height());
    p.fillRect(box, inks().paper);
    p.setPen(inks().wall);
    p.drawText(box, Qt::AlignRight | Qt::AlignVCenter, text);
}

void FloorStrip::paintEvent(QPaintEvent*) {
    const Inks& k = inks();
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    p.setFont(smallFont(font()));
    const FloorView& view = runner_.usual();
    p.setPen(view.why ? k.level[0] : k.quiet);
    const QString word = view.why         ? tr("floor: %1").arg(say(*view.why))
                         : draft_.block() ? tr("floor")
                                          : QString();
    const double room = view.why ? width() : rail_.xOf(std::chrono::minutes(3)) - x();
    p.drawText(QRectF(0, 0, room, height()), Qt::AlignLeft | Qt::AlignVCenter,
               p.fontMetrics().elidedText(word, Qt::ElideRight, static_cast<int>(room)));
    for (std::size_t i = 0; i < ends_.size(); ++i) paintEnd(p, i);
    if (!ends_.empty()) paintBeyond(p);
    if (!hasFocus() || !ends_.empty()) return;
    p.setPen(QPen(k.accent, k.stroke + 1));
    p.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
}

QString FloorStrip::tipAt(QPointF point) const {
    const FloorView& view = runner_.usual();
    if (view.why) return say(*view.why);
    for (std::size_t i = 0; i < ends_.size(); ++i)
        if (markRect(i).adjusted(-6, -1, 6, 1).contains(point)) return ends_[i].words;
    return floorSummary(view);
}

bool FloorStrip::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    QToolTip::showText(help->globalPos(), tipAt(help->pos()), this);
    return true;
}

void FloorStrip::keyPressEvent(QKeyEvent* event) {
    const int last = static_cast<int>(ends_.size()) - 1;
    switch (event->key()) {
    case Qt::Key_Left: now_ = std::max(0, now_ - 1); break;
    case Qt::Key_Right: now_ = std::max(0, std::min(last, now_ + 1)); break;
    case Qt::Key_Home: now_ = 0; break;
    case Qt::Key_End: now_ = std::max(0, last); break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space: Q_EMIT floorWanted(); return;
    default: QWidget::keyPressEvent(event); return;
    }
    describe();
    update();
}

void FloorStrip::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) Q_EMIT floorWanted();
}

void FloorStrip::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void FloorStrip::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

} // namespace bw
