// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/finding_counts.hpp"

#include "desk/bench/draft.hpp"
#include "desk/frame/theme.hpp"

#include <QPainter>

namespace bw {

namespace {
constexpr int kPad = 8, kGap = 12;
constexpr std::array kLevels{Level::Stop, Level::Look, Level::Note};

QString partText(const Draft& draft, Level level) {
    return levelShape(level) + QLatin1Char(' ') + QString::number(draft.verdict().count(level));
}
} // namespace

FindingCounts::FindingCounts(Draft& draft, QWidget* parent)
    : QAbstractButton(parent), draft_(draft) {
    setFocusPolicy(Qt::TabFocus);
    connect(&draft_, &Draft::changed, this, &FindingCounts::follow);
    follow();
}

void FindingCounts::follow() {
    const CheckResult& verdict = draft_.verdict();
    const auto accepted = static_cast<int>(verdict.accepted.size());
    setAccessibleName(tr("Findings: %1 stop, %2 look, %3 note; %4 accepted. Go to the next one")
                          .arg(verdict.count(Level::Stop))
                          .arg(verdict.count(Level::Look))
                          .arg(verdict.count(Level::Note))
                          .arg(accepted));
    setToolTip(accepted == 0
                   ? tr("Go to the next finding")
                   : tr("Go to the next finding (%n accepted, not counted)", nullptr, accepted));
    updateGeometry();
    update();
}

QSize FindingCounts::sizeHint() const {
    int width = 2 * kPad - kGap;
    for (const Level level : kLevels)
        width += fontMetrics().horizontalAdvance(partText(draft_, level)) + kGap;
    return {width, fontMetrics().height() + 12};
}

void FindingCounts::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Inks& k = inks();
    if (hasFocus() || underMouse()) {
        painter.setPen(QPen(hasFocus() ? k.accent : k.line, hasFocus() ? k.stroke + 1 : k.stroke));
        painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 3, 3);
    }
    int x = kPad;
    for (const Level level : kLevels) {
        const QString text = partText(draft_, level);
        const bool none = draft_.verdict().count(level) == 0;
        painter.setPen(none ? k.quiet : k.level[static_cast<std::size_t>(level)]);
        painter.drawText(QRect(x, 0, width() - x, height()), Qt::AlignVCenter, text);
        x += fontMetrics().horizontalAdvance(text) + kGap;
    }
}

} // namespace bw
