// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ledger/trend_chart.hpp"

#include "blockwright/ledger/mass_text.hpp"
#include "desk/floor/lane_marks.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/words.hpp"
#include "desk/ledger/ledger_words.hpp"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QLocale>
#include <QPainter>
#include <QPainterPath>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
constexpr double kKgPerLb = 0.45359237;

// 1, 2 or 5 times a power of ten, so that about four of them make the span.
double niceStep(double span) {
    const double rough = std::max(span / 4, 1e-3),
                 power = std::pow(10, std::floor(std::log10(rough)));
    for (const double step : {1.0, 2.0, 5.0})
        if (step * power >= rough) return step * power;
    return 10 * power;
}

double daysOf(Date date) { return static_cast<double>(date.days().time_since_epoch().count()); }
} // namespace

TrendChart::TrendChart(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Days of the exercise"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize TrendChart::sizeHint() const { return {300, fontMetrics().height() * 10}; }

double TrendChart::shown(double kg) const { return unit_ == MassUnit::Kg ? kg : kg / kKgPerLb; }

std::optional<double> TrendChart::dot(const LedgerDay& day) const {
    if (!loaded_) return day.top.reps;
    if (!day.top.load) return std::nullopt;
    return shown(day.top.load->kg());
}

void TrendChart::show(std::vector<LedgerDay> days, MassUnit unit) {
    days_ = std::move(days);
    unit_ = unit;
    loaded_ =
        std::any_of(days_.begin(), days_.end(), [](auto& d) { return d.top.load.has_value(); });
    now_ = static_cast<int>(days_.size()) - 1;
    measure();
    setAccessibleDescription(words());
    setVisible(!days_.empty());
    Q_EMIT told(words());
    update();
}

void TrendChart::measure() {
    double least = 1e9, most = 0;
    const auto take = [&](double value) {
        least = std::min(least, value);
        most = std::max(most, value);
    };
    for (const LedgerDay& d : days_) {
        if (const auto value = dot(d)) take(*value);
        if (!loaded_ || !d.estimate) continue;
        take(shown(d.estimate->lowKg));
        take(shown(d.estimate->highKg));
    }
    if (most < least) least = most = 0;
    tick_ = niceStep(std::max(most - least, 1.0));
    if (!loaded_) tick_ = std::max(tick_, 1.0);
    low_ = std::max(0.0, std::floor(least / tick_) * tick_);
    high_ = std::max(low_ + tick_, std::ceil(most / tick_) * tick_);
}

double TrendChart::x(Date date) const {
    const double first = daysOf(days_.front().top.date), last = daysOf(days_.back().top.date);
    if (last <= first) return room_.center().x();
    return room_.left() + room_.width() * (daysOf(date) - first) / (last - first);
}
double TrendChart::y(double value) const {
    return room_.bottom() - room_.height() * (value - low_) / (high_ - low_);
}

int TrendChart::dayAt(double at) const {
    int best = -1;
    for (int i = 0; i < static_cast<int>(days_.size()); ++i)
        if (best < 0 || std::abs(x(days_[static_cast<std::size_t>(i)].top.date) - at) <
                            std::abs(x(days_[static_cast<std::size_t>(best)].top.date) - at))
            best = i;
    return best;
}

QString TrendChart::wordsOf(int day) const {
    if (day < 0 || day >= static_cast<int>(days_.size())) return {};
    const LedgerDay& d = days_[static_cast<std::size_t>(day)];
    QString text = dayText(d.top.date) + QStringLiteral(": ") + say(setText(d.top, unit_));
    if (!d.estimate) return text;
    const Estimate& e = *d.estimate;
    const QString once = plain(kgText(e.kg, unit_));
    if (e.atLeast) return text + tr("; could lift at least %1 once").arg(once);
    return text + tr("; could lift %1 once (%2 to %3)")
                      .arg(once, plain(kgText(e.lowKg, unit_)), plain(kgText(e.highKg, unit_)));
}
QString TrendChart::words() const { return wordsOf(now_); }

void TrendChart::go(int day) {
    const int to = std::clamp(day, 0, std::max(0, static_cast<int>(days_.size()) - 1));
    if (days_.empty() || to == now_) return;
    now_ = to;
    setAccessibleDescription(words());
    Q_EMIT told(words());
    update();
}

void TrendChart::paintScale(QPainter& p) const {
    p.setFont(smallFont(font()));
    for (double v = low_; v <= high_ + tick_ / 2; v += tick_) {
        p.setPen(QPen(faint(inks().line, 0.7), 1));
        p.drawLine(QPointF(room_.left(), y(v)), QPointF(room_.right(), y(v)));
        p.setPen(inks().quiet);
        p.drawText(QRectF(0, y(v) - 10, room_.left() - 6, 20),
                   static_cast<int>(Qt::AlignRight | Qt::AlignVCenter),
                   QLocale().toString(v, 'g', 4));
    }
}

// As many as there is room for, and the year with the first and each January.
void TrendChart::paintMonths(QPainter& p) const {
    const double wide = p.fontMetrics().horizontalAdvance(QStringLiteral("Mmmm 0000")) * 1.1;
    double free = room_.left() - wide;
    const Month last = days_.back().top.date.month();
    for (Month m = days_.front().top.date.month().plus(1); m <= last; m = m.plus(1)) {
        const double at = x(Date::of(m.year(), m.month(), 1).value());
        if (at < free + wide || at + wide * 0.6 > room_.right()) continue;
        free = at;
        p.setPen(QPen(inks().line, inks().stroke));
        p.drawLine(QPointF(at, room_.bottom()), QPointF(at, room_.bottom() + 4));
        p.setPen(inks().quiet);
        const QString name = QLocale().standaloneMonthName(m.month(), QLocale::ShortFormat) +
                             QLatin1Char(' ') + QString::number(m.year());
        p.drawText(QRectF(at, room_.bottom() + 4, wide, 18), Qt::AlignLeft | Qt::AlignVCenter,
                   name);
    }
}

void TrendChart::paintBand(QPainter& p) const {
    QPolygonF upper, lower, middle;
    for (const LedgerDay& d : days_) {
        if (!d.estimate) continue;
        const double at = x(d.top.date);
        middle << QPointF(at, y(shown(d.estimate->kg)));
        upper << QPointF(at, y(shown(d.estimate->highKg)));
        lower.prepend(QPointF(at, y(shown(d.estimate->lowKg))));
    }
    if (middle.size() < 2) return;
    p.setPen(Qt::NoPen);
    p.setBrush(faint(inks().accent, 0.18));
    p.drawPolygon(upper + lower);
    p.setPen(QPen(inks().accent, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    p.setBrush(Qt::NoBrush);
    p.drawPolyline(middle);
}

void TrendChart::paintDots(QPainter& p) const {
    const double size = days_.size() > 80 ? 1.6 : 2.6;
    for (std::size_t i = 0; i < days_.size(); ++i) {
        const auto value = dot(days_[i]);
        const bool now = static_cast<int>(i) == now_ && hasFocus();
        const double at = x(days_[i].top.date);
        if (now) {
            p.setPen(QPen(inks().ink, 1));
            p.drawLine(QPointF(at, room_.top()), QPointF(at, room_.bottom()));
        }
        if (!value) continue;
        p.setPen(Qt::NoPen);
        p.setBrush(now ? inks().ink : inks().quiet);
        p.drawEllipse(QPointF(at, y(*value)), now ? 4 : size, now ? 4 : size);
    }
}

void TrendChart::paintEvent(QPaintEvent*) {
    if (days_.empty()) return;
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    const QFontMetricsF metrics(smallFont(font()));
    room_ = QRectF(rect()).adjusted(metrics.horizontalAdvance(QStringLiteral("0000")) + 8, 8, -8,
                                    -metrics.height() - 8);
    paintScale(p);
    paintMonths(p);
    if (loaded_) paintBand(p);
    paintDots(p);
    if (!hasFocus()) return;
    p.setBrush(Qt::NoBrush);
    p.setPen(QPen(inks().accent, inks().stroke + 1));
    p.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
}

bool TrendChart::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    QToolTip::showText(help->globalPos(), wordsOf(dayAt(help->pos().x())), this);
    return true;
}

void TrendChart::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left: return go(now_ - 1);
    case Qt::Key_Right: return go(now_ + 1);
    case Qt::Key_Home: return go(0);
    case Qt::Key_End: return go(static_cast<int>(days_.size()) - 1);
    default: QWidget::keyPressEvent(event);
    }
}
void TrendChart::mousePressEvent(QMouseEvent* event) { go(dayAt(event->position().x())); }
void TrendChart::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}
void TrendChart::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

} // namespace bw
