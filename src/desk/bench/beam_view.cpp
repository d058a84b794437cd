// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/beam_view.hpp"

#include "desk/frame/paper.hpp"

#include <QAccessibleWidget>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>

namespace bw {

namespace {
constexpr int kMargin = 10, kGap = 12;

QAccessibleInterface* accessibleBeam(const QString& name, QObject* object) {
    auto* beam = name == QLatin1String("bw::BeamView") ? qobject_cast<BeamView*>(object) : nullptr;
    return beam ? new QAccessibleWidget(beam, QAccessible::Chart) : nullptr;
}
void installOnce() {
    static const bool installed = [] {
        QAccessible::installFactory(accessibleBeam);
        return true;
    }();
    (void)installed;
}
} // namespace

BeamView::BeamView(QWidget* parent) : QWidget(parent) {
    installOnce();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void BeamView::show(std::vector<BeamScale> scales) {
    if (scales == scales_) return;
    scales_ = std::move(scales);
    QString spoken;
    for (const BeamScale& scale : scales_) spoken += scale.spoken() + QLatin1Char(' ');
    setAccessibleDescription(spoken.trimmed());
    moveCursor(std::min(cursor_, std::max(0, static_cast<int>(scales_.size()) * 2 - 1)));
}

QSize BeamView::sizeHint() const { return {300, beamHeight(smallFont(font())) + 2}; }
QSize BeamView::minimumSizeHint() const { return {240, beamHeight(smallFont(font())) + 2}; }

QRectF BeamView::room(std::size_t scale) const {
    const double n = std::max<double>(1, static_cast<double>(scales_.size()));
    const double wide = (width() - 2 * kMargin - (n - 1) * kGap) / n;
    return {kMargin + static_cast<double>(scale) * (wide + kGap), 0, wide,
            static_cast<double>(height())};
}

int BeamView::sideAt(QPointF point) const {
    const QFont small = smallFont(font());
    for (std::size_t i = 0; i < scales_.size(); ++i) {
        const BeamGeometry g = BeamGeometry::of(room(i), small);
        if (g.half(BeamSide::Left).contains(point)) return static_cast<int>(i) * 2;
        if (g.half(BeamSide::Right).contains(point)) return static_cast<int>(i) * 2 + 1;
    }
    return -1;
}

const std::vector<Pattern>& BeamView::patternsOf(int side) const {
    const BeamScale& scale = scales_[static_cast<std::size_t>(side / 2)];
    return side % 2 == 0 ? scale.leftPatterns : scale.rightPatterns;
}

std::vector<Pattern> BeamView::patternsAt(QPointF point) const {
    const int side = sideAt(point);
    return side < 0 ? std::vector<Pattern>{} : patternsOf(side);
}

void BeamView::moveCursor(int side) {
    cursor_ = side;
    QString name = tr("Beam");
    if (!scales_.empty()) {
        const BeamScale& scale = scales_[static_cast<std::size_t>(side / 2)];
        name = tr("Beam. %1. Enter goes to the rows of %2.")
                   .arg(scale.spoken(), side % 2 == 0 ? scale.left : scale.right);
    }
    if (name != accessibleName()) setAccessibleName(name);
    update();
}

bool BeamView::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const int side = sideAt(help->pos());
    if (side < 0)
        QToolTip::hideText();
    else
        QToolTip::showText(help->globalPos(), scales_[static_cast<std::size_t>(side / 2)].spoken(),
                           this);
    return true;
}

void BeamView::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    const QFont small = smallFont(font());
    for (std::size_t i = 0; i < scales_.size(); ++i) {
        const bool here = hasFocus() && cursor_ / 2 == static_cast<int>(i);
        const BeamSide cursor = !here              ? BeamSide::None
                                : cursor_ % 2 == 0 ? BeamSide::Left
                                                   : BeamSide::Right;
        paintBeam(p, scales_[i], BeamGeometry::of(room(i), small), small, cursor, inks());
    }
}

void BeamView::keyPressEvent(QKeyEvent* event) {
    const int last = static_cast<int>(scales_.size()) * 2 - 1;
    switch (event->key()) {
    case Qt::Key_Left: return moveCursor(std::max(0, cursor_ - 1));
    case Qt::Key_Right: return moveCursor(std::max(0, std::min(last, cursor_ + 1)));
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        if (last >= 0) Q_EMIT picked(patternsOf(cursor_), event->key() != Qt::Key_Space);
        return;
    default: QWidget::keyPressEvent(event);
    }
}

void BeamView::mousePressEvent(QMouseEvent* event) {
    const int side = sideAt(event->position());
    if (event->button() != Qt::LeftButton || side < 0) return;
    moveCursor(side);
    Q_EMIT picked(patternsOf(side), false);
}

void BeamView::mouseMoveEvent(QMouseEvent* event) {
    setCursor(sideAt(event->position()) < 0 ? Qt::ArrowCursor : Qt::PointingHandCursor);
}

void BeamView::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}
void BeamView::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

void BeamView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) updateGeometry();
    update();
}

} // namespace bw
