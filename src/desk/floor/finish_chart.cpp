// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/finish_chart.hpp"

#include "desk/floor/floor_words.hpp"
#include "desk/floor/span_mark.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/theme.hpp"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>

namespace bw {

namespace {
using std::chrono::minutes;
using std::chrono::seconds;
constexpr std::array kWidths{Millis(seconds(15)), Millis(seconds(30)), Millis(minutes(1)),
                             Millis(minutes(2)),  Millis(minutes(5)),  Millis(minutes(15))};
constexpr int kMostBins = 36;

Millis floorTo(Millis time, Millis step) {
    const auto n = static_cast<double>(time.count()) / static_cast<double>(step.count());
    return step * static_cast<std::int64_t>(std::floor(n));
}
} // namespace

FinishChart::FinishChart(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("When the class ends"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize FinishChart::sizeHint() const {
    return {280, 62 + static_cast<int>(std::ceil(QFontMetricsF(smallFont(font())).height() + 18))};
}

FinishChart::Bins FinishChart::binsOf(const std::vector<Millis>& finishes, Millis wall) {
    if (finishes.empty()) return {};
    const auto [least, most] = std::ranges::minmax(finishes);
    Bins bins;
    bins.width = kWidths.back();
    for (const Millis width : kWidths)
        if ((most - least) / width < kMostBins) {
            bins.width = width;
            break;
        }
    // A class that ends on the wall is not over it: bins hold their later border.
    const auto bin = [&](Millis time) { return floorTo(time - wall - Millis(1), bins.width); };
    bins.first = wall + bin(least);
    bins.counts.resize(static_cast<std::size_t>((bin(most) - bin(least)) / bins.width) + 1);
    for (const Millis time : finishes)
        ++bins.counts[static_cast<std::size_t>((bin(time) - bin(least)) / bins.width)];
    return bins;
}

void FinishChart::show(const FloorView& view) {
    bins_ = {};
    if (view.answer) {
        wall_ = minutes(view.gym->settings.classMinutes);
        finish_ = view.answer->finish;
        bins_ = binsOf(view.answer->finishes, wall_);
        const Millis last = bins_.first + bins_.width * static_cast<int>(bins_.counts.size());
        from_ = floorTo(std::min(bins_.first, wall_) - minutes(1), minutes(1));
        to_ = std::max(last, wall_) + minutes(1);
        setAccessibleDescription(finishSentence(view));
    }
    update();
}

double FinishChart::x(Millis time) const {
    return room_.left() + room_.width() * static_cast<double>((time - from_).count()) /
                              static_cast<double>((to_ - from_).count());
}

void FinishChart::paintBins(QPainter& p) const {
    const Inks& k = inks();
    const double most = *std::ranges::max_element(bins_.counts);
    for (std::size_t i = 0; i < bins_.counts.size(); ++i) {
        const Millis from = bins_.first + bins_.width * static_cast<int>(i);
        const double high = std::ceil(bins_.counts[i] / most * room_.height());
        const QRectF bar(x(from) + 0.5, room_.bottom() - high,
                         std::max(1.0, x(from + bins_.width) - x(from) - 1), high);
        p.fillRect(bar, from >= wall_ ? k.wall : k.accent);
        if (from >= wall_) p.fillRect(bar, QBrush(k.paper, Qt::BDiagPattern));
    }
}

void FinishChart::paintAxis(QPainter& p) const {
    const Inks& k = inks();
    const double y = std::round(room_.bottom()) + 0.5;
    p.setPen(QPen(k.quiet, 1));
    p.drawLine(QPointF(room_.left(), y), QPointF(room_.right(), y));
    p.setFont(smallFont(font()));
    const double wide = QFontMetricsF(p.font()).horizontalAdvance(QStringLiteral("000")) + 6;
    const double perMinute = x(from_ + minutes(1)) - x(from_);
    const int every = perMinute * 1 > wide    ? 1
                      : perMinute * 5 > wide  ? 5
                      : perMinute * 15 > wide ? 15
                                              : 60;
    for (Millis t = floorTo(from_ + minutes(every), minutes(every)); t <= to_;
         t += minutes(every)) {
        p.setPen(QPen(k.quiet, 1));
        p.drawLine(QPointF(x(t), y), QPointF(x(t), y + 3));
        p.drawText(QRectF(x(t) - 20, y + 14, 40, 20), Qt::AlignHCenter | Qt::AlignTop,
                   QString::number(t / minutes(1)));
    }
    p.fillRect(QRectF(std::round(x(wall_)) - 1, 0, 2.5, y + 12), k.wall);
}

void FinishChart::paintSpan(QPainter& p) const {
    const bool over = finish_.p90 > wall_;
    paintSpanMark(p, x(finish_.p10), x(finish_.p50), x(finish_.p90), room_.bottom() + 8,
                  over ? inks().wall : inks().ink, inks().paper);
}

void FinishChart::paintEvent(QPaintEvent*) {
    if (bins_.counts.empty()) return;
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    const double below = std::ceil(QFontMetricsF(smallFont(font())).height() + 16);
    room_ = QRectF(rect()).adjusted(1, 2, -1, -below);
    paintBins(p);
    paintAxis(p);
    paintSpan(p);
}

} // namespace bw
