// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/stair/estimate_ruler.hpp"

#include "desk/frame/paper.hpp"
#include "desk/frame/theme.hpp"
#include "desk/stair/stair_words.hpp"

#include <QEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
constexpr double kSide = 14, kKgOfPound = 0.45359237;

double inUnit(double kg, MassUnit unit) { return unit == MassUnit::Kg ? kg : kg / kKgOfPound; }

// A round step that leaves some six marks.
double markEvery(double span) {
    const double power = std::pow(10, std::floor(std::log10(span / 6)));
    for (const double nice : {1.0, 2.0, 5.0})
        if (span / (power * nice) <= 7) return power * nice;
    return power * 10;
}
} // namespace

EstimateRuler::EstimateRuler(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize EstimateRuler::sizeHint() const {
    return {260, 2 * QFontMetrics(smallFont(font())).height() + 36};
}

void EstimateRuler::show(const SlotTargets* targets, MassUnit unit, int week) {
    steps_.clear();
    low_ = middle_ = high_ = 0;
    week_ = week;
    if (targets && targets->estimate && !targets->estimate->atLeast) {
        const Estimate& e = *targets->estimate;
        low_ = inUnit(e.lowKg, unit);
        middle_ = inUnit(e.kg, unit);
        high_ = inUnit(e.highKg, unit);
        for (const WeekTarget& w : targets->weeks)
            if (w.target.loading)
                steps_.push_back(
                    {w.plan.week.number(), inUnit(w.target.loading->total.kg(), unit)});
        from_ = low_;
        to_ = high_;
        for (const Step& s : steps_) {
            from_ = std::min(from_, s.load);
            to_ = std::max(to_, s.load);
        }
        const double margin = std::max(1.0, 0.06 * (to_ - from_));
        from_ -= margin;
        to_ += margin;
    }
    setVisible(high_ > 0);
    update();
}

double EstimateRuler::x(double load) const {
    return kSide + (width() - 2 * kSide) * (load - from_) / (to_ - from_);
}

void EstimateRuler::paintEvent(QPaintEvent*) {
    if (high_ <= 0) return;
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    p.setFont(smallFont(font()));
    paintEstimate(p);
    paintWeeks(p);
    paintScale(p);
}

void EstimateRuler::paintScale(QPainter& p) {
    const double small = p.fontMetrics().height();
    const double y = std::round(height() - small - 10) + 0.5;
    p.setPen(QPen(inks().quiet, 1));
    p.drawLine(QPointF(kSide, y), QPointF(width() - kSide, y));
    const double every = markEvery(to_ - from_);
    for (double at = std::ceil(from_ / every) * every; at <= to_; at += every) {
        const double at_x = std::round(x(at)) + 0.5;
        p.drawLine(QPointF(at_x, y), QPointF(at_x, y + 5));
        p.drawText(QRectF(at_x - 30, y + 6, 60, small), Qt::AlignHCenter | Qt::AlignTop,
                   QString::number(std::round(at * 10) / 10));
    }
}

void EstimateRuler::paintEstimate(QPainter& p) {
    const Inks& k = inks();
    const double small = p.fontMetrics().height(), y = height() - small - 10;
    const QRectF band(x(low_), y - 11, x(high_) - x(low_), 10);
    p.fillRect(band, k.wash);
    p.setPen(QPen(k.accent, 1));
    p.drawRect(band);
    p.fillRect(QRectF(x(middle_) - 1.5, y - 15, 3, 14), k.accent);
}

void EstimateRuler::paintWeeks(QPainter& p) {
    const Inks& k = inks();
    const double small = p.fontMetrics().height(), y = height() - small - 10;
    for (std::size_t i = 0; i < steps_.size();) {
        std::size_t last = i; // of the weeks in a row with the same load
        while (last + 1 < steps_.size() && steps_[last + 1].load == steps_[i].load) ++last;
        const double at = std::round(x(steps_[i].load)) + 0.5;
        const bool now = steps_[i].week <= week_ + 1 && week_ + 1 <= steps_[last].week;
        p.setPen(QPen(now ? k.accent : k.ink, now ? 2 : 1));
        p.drawLine(QPointF(at, y), QPointF(at, y - 18));
        QFont own = smallFont(font());
        own.setBold(now);
        p.setFont(own);
        p.setPen(k.ink);
        const QString weeks =
            last == i ? QString::number(steps_[i].week)
                      : QStringLiteral("%1–%2").arg(steps_[i].week).arg(steps_[last].week);
        p.drawText(QRectF(at - 20, y - 19 - small, 40, small), Qt::AlignHCenter | Qt::AlignBottom,
                   weeks);
        i = last + 1;
    }
    p.setFont(smallFont(font()));
}

void EstimateRuler::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) updateGeometry();
}

} // namespace bw
