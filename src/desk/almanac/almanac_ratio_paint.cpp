// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/almanac/almanac_ratio_paint.hpp"

#include "desk/almanac/almanac_words.hpp"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
constexpr double kMost = 2.5;
constexpr int kRoomy = 48; // a cell this wide has room for every figure

double yOf(const QRectF& r, double ratio) {
    const double pad = r.height() / 5; // above and below
    return r.top() + pad + ratioHeight(ratio) * (r.height() - 2 * pad);
}

std::optional<double> ratioAt(const AlmanacLine& line, std::size_t column) {
    return column < line.ratios.size() ? line.ratios[column] : std::nullopt;
}

bool outside(const AlmanacLine& line, double ratio) {
    return line.band.band && (ratio < line.band.lo || ratio > line.band.hi);
}

void paintGround(QPainter& p, const QRectF& r, const AlmanacLine& line, const Inks& k) {
    if (line.band.band) {
        QColor fill = k.accent;
        fill.setAlphaF(0.13F);
        const double top = yOf(r, line.band.hi), bottom = yOf(r, line.band.lo);
        p.fillRect(QRectF(r.left(), top, r.width(), bottom - top), fill);
    }
    p.setPen(QPen(k.quiet, 1, Qt::DotLine));
    const double middle = std::round(yOf(r, 1)) + 0.5;
    p.drawLine(QPointF(r.left(), middle), QPointF(r.right() + 1, middle));
}

// The half of a stroke that lies in this cell.
void paintStroke(QPainter& p, const QRectF& r, double here, double there, bool towardsRight) {
    const double edge = towardsRight ? r.right() : r.left();
    const double half = (yOf(r, here) + yOf(r, there)) / 2;
    p.drawLine(QPointF(r.center().x(), yOf(r, here)), QPointF(edge, half));
}

void paintPoint(QPainter& p, const QRectF& r, const AlmanacLine& line, double ratio,
                const Inks& k) {
    const bool out = outside(line, ratio);
    const double radius = out ? 4 : 2.8;
    p.setPen(QPen(k.ink, 1.6));
    p.setBrush(out ? k.paper : k.ink);
    p.drawEllipse(QPointF(r.center().x(), yOf(r, ratio)), radius, radius);
}

void paintFigure(QPainter& p, const QRectF& r, const AlmanacLine& line, double ratio, QFont font) {
    const bool out = outside(line, ratio);
    font.setPointSizeF(font.pointSizeF() * 0.8);
    font.setBold(out);
    p.setFont(font);
    const double y = yOf(r, ratio), high = QFontMetricsF(font).height(), off = 5;
    const bool fitsAbove = y - off - high >= r.top(), fitsBelow = y + off + high <= r.bottom();
    const bool above = ratio < 1 ? !fitsBelow : fitsAbove;
    p.drawText(QRectF(r.left() - 4, above ? y - off - high : y + off, r.width() + 8, high),
               Qt::AlignCenter, ratioText(ratio));
}
} // namespace

double ratioHeight(double ratio) {
    const double most = std::log(kMost);
    const double at = ratio > 0 ? std::clamp(std::log(ratio), -most, most) : -most;
    return (most - at) / (2 * most);
}

void paintRatio(QPainter& p, const QRect& cell, const QFont& font, const AlmanacLine& line,
                std::size_t column, bool marked, const Inks& k) {
    const QRectF r(cell);
    paintGround(p, r, line, k);
    const auto here = ratioAt(line, column);
    if (!here) return;
    p.setPen(QPen(k.ink, 1.6));
    if (column > 0)
        if (const auto before = ratioAt(line, column - 1)) paintStroke(p, r, *here, *before, false);
    if (const auto after = ratioAt(line, column + 1)) paintStroke(p, r, *here, *after, true);
    paintPoint(p, r, line, *here, k);
    if (marked || outside(line, *here) || cell.width() >= kRoomy)
        paintFigure(p, r, line, *here, font);
}

} // namespace bw
