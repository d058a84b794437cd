// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/sheets/sheet_preview.hpp"

#include "desk/frame/theme.hpp"
#include "sheets/sheet_painter.hpp"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
constexpr double kRoom = 18; // pixels of desk around the paper
constexpr double kNearest = 6;
} // namespace

SheetPreview::SheetPreview(QWidget* parent) : QAbstractScrollArea(parent) {
    setFrameShape(NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    setMinimumSize(240, 240);
    viewport()->setBackgroundRole(QPalette::Window);
    describe();
}

void SheetPreview::show(Layout layout, const QString& name) {
    layout_ = std::move(layout);
    name_ = name;
    empty_.clear();
    page_ = std::clamp(page_, 0, std::max(0, static_cast<int>(layout_.pages.size()) - 1));
    measure();
    describe();
    Q_EMIT changed();
}

void SheetPreview::clear(const QString& why) {
    layout_ = {};
    name_.clear();
    empty_ = why;
    page_ = 0;
    measure();
    describe();
    Q_EMIT changed();
}

void SheetPreview::turn(int pages) {
    const int last = static_cast<int>(layout_.pages.size()) - 1;
    const int next = std::clamp(page_ + pages, 0, std::max(0, last));
    if (next == page_) return;
    page_ = next;
    verticalScrollBar()->setValue(0);
    describe();
    viewport()->update();
    Q_EMIT changed();
}

void SheetPreview::setZoom(double zoom) {
    zoom_ = std::clamp(zoom, 1.0, kNearest);
    measure();
    Q_EMIT changed();
}

void SheetPreview::describe() {
    const QString text = layout_.pages.empty() ? tr("Preview. %1").arg(empty_)
                                               : tr("Preview of the %1, page %2 of %3")
                                                     .arg(name_)
                                                     .arg(page_ + 1)
                                                     .arg(layout_.pages.size());
    if (text == accessibleName()) return;
    setAccessibleName(text);
    setAccessibleDescription(tr("Page Up and Page Down turn pages, plus and minus bring the page "
                                "nearer or farther, 0 fits it."));
}

void SheetPreview::measure() {
    const QSizeF room(viewport()->width() - 2 * kRoom, viewport()->height() - 2 * kRoom);
    const QSizeF paper = layout_.paper.scaled(room, Qt::KeepAspectRatio) * zoom_;
    const auto set = [](QScrollBar* bar, double beyond, int page) {
        bar->setPageStep(page);
        bar->setSingleStep(24);
        bar->setRange(0, std::max(0, static_cast<int>(std::ceil(beyond))));
    };
    set(horizontalScrollBar(), paper.width() - room.width(), viewport()->width());
    set(verticalScrollBar(), paper.height() - room.height(), viewport()->height());
    viewport()->update();
}

QRectF SheetPreview::paperRect() const {
    const QRectF room = QRectF(viewport()->rect()).adjusted(kRoom, kRoom, -kRoom, -kRoom);
    const QSizeF size = layout_.paper.scaled(room.size(), Qt::KeepAspectRatio) * zoom_;
    const double x = size.width() <= room.width() ? room.center().x() - size.width() / 2
                                                  : room.left() - horizontalScrollBar()->value();
    const double y = size.height() <= room.height() ? room.center().y() - size.height() / 2
                                                    : room.top() - verticalScrollBar()->value();
    return {{x, y}, size};
}

void SheetPreview::paintEvent(QPaintEvent*) {
    const Inks& k = inks();
    QPainter p(viewport());
    p.setRenderHint(QPainter::Antialiasing);
    p.fillRect(viewport()->rect(), k.desk);
    if (layout_.pages.empty()) {
        p.setPen(k.quiet);
        p.drawText(viewport()->rect().adjusted(24, 24, -24, -24),
                   Qt::AlignCenter | Qt::TextWordWrap, empty_);
        return;
    }
    const QRectF paper = paperRect();
    p.fillRect(paper.translated(2, 3), QColor(0, 0, 0, 40));
    p.fillRect(paper, Qt::white);
    p.setPen(QPen(hasFocus() ? k.accent : k.line, hasFocus() ? k.stroke + 1 : k.stroke));
    p.drawRect(paper.adjusted(-0.5, -0.5, 0.5, 0.5));
    p.save();
    p.setClipRect(paper);
    p.translate(paper.topLeft());
    p.scale(paper.width() / layout_.paper.width(), paper.height() / layout_.paper.height());
    paintPage(p, layout_, page_);
    p.restore();
}

void SheetPreview::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_PageUp: return turn(-1);
    case Qt::Key_PageDown: return turn(1);
    case Qt::Key_Plus:
    case Qt::Key_Equal: return setZoom(zoom_ * 1.25);
    case Qt::Key_Minus: return setZoom(zoom_ / 1.25);
    case Qt::Key_0: return setZoom(1);
    default: QAbstractScrollArea::keyPressEvent(event);
    }
}

void SheetPreview::wheelEvent(QWheelEvent* event) {
    if (event->modifiers() & Qt::ControlModifier)
        return setZoom(zoom_ * (event->angleDelta().y() > 0 ? 1.25 : 0.8));
    QAbstractScrollArea::wheelEvent(event);
}

void SheetPreview::focusInEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusInEvent(event);
    viewport()->update();
}

void SheetPreview::focusOutEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusOutEvent(event);
    viewport()->update();
}

void SheetPreview::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    measure();
}

} // namespace bw
