// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/minute_rail_paint.hpp"

#include "desk/bench/minute_rail_words.hpp"
#include "desk/frame/outlined.hpp"
#include "desk/frame/paper.hpp"
#include "desk/frame/words.hpp"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
constexpr double kSide = 20, kPad = 8, kGap = 1;
constexpr double kGroupShade = 0.1; // more would take the letters below 4.5:1

QFont boldFont(QFont font) {
    font.setBold(true);
    return font;
}

QColor shade(QColor color, double alpha) {
    color.setAlphaF(static_cast<float>(alpha));
    return color;
}

QString tr(const char* source) { return QCoreApplication::translate("MinuteRail", source); }

double stripHeight(double small) { return std::max(small, 19.0); } // two rows of marks

// One painting of the rail; the names say what is inked.
class Rail {
public:
    Rail(QPainter& painter, const RailPlan& plan, const RailGeometry& geometry,
         const RailMarks& marks, const Inks& inks)
        : p_(painter), plan_(plan), g_(geometry), marks_(marks), k_(inks), font_(painter.font()),
          small_(smallFont(font_)) {}

    void paint() {
        headline();
        if (plan_.pieces.empty()) return;
        ruler();
        for (const RailPiece& piece : plan_.pieces) bar(piece);
        const bool over = plan_.total.planned > plan_.wall;
        if (over) hatch();
        for (const RailPiece& piece : plan_.pieces) words(piece);
        if (over) overrun();
        for (std::size_t i = 0; i < plan_.pieces.size(); ++i) {
            whisker(plan_.pieces[i], static_cast<double>(i % 2));
            bracket(plan_.pieces[i], static_cast<double>(i % 2));
        }
        wall();
        marked();
    }

private:
    void headline() {
        const QString title = tr("Minute rail");
        p_.setFont(boldFont(font_));
        p_.setPen(k_.ink);
        p_.drawText(g_.headline, Qt::AlignLeft | Qt::AlignVCenter, title);
        const double room =
            g_.headline.width() - p_.fontMetrics().horizontalAdvance(title) - 2 * kSide;
        const bool over = plan_.total.planned > plan_.wall && !plan_.pieces.empty();
        p_.setFont(font_);
        p_.setPen(over ? k_.wall : k_.quiet);
        p_.drawText(g_.headline, Qt::AlignRight | Qt::AlignVCenter, fitting(room));
    }

    QString fitting(double room) const {
        QStringList parts = railHeadline(plan_);
        if (!marks_.floor.isEmpty())
            parts.insert(std::min<qsizetype>(2, parts.size()), marks_.floor);
        const QString dot = QStringLiteral("  ·  ");
        while (parts.size() > 1 && p_.fontMetrics().horizontalAdvance(parts.join(dot)) > room)
            parts.removeLast();
        return p_.fontMetrics().elidedText(parts.join(dot), Qt::ElideRight, static_cast<int>(room));
    }

    void ruler() {
        const int minutes = static_cast<int>(plan_.span / std::chrono::minutes(1));
        const double perMinute = g_.x(std::chrono::minutes(1)) - g_.x({});
        const double top = std::round(g_.ruler.top()) + 0.5;
        const int labelEvery = perMinute * 5 > 26 ? 5 : perMinute * 10 > 26 ? 10 : 30;
        p_.setFont(small_);
        p_.setPen(QPen(k_.quiet, 1));
        p_.drawLine(QPointF(g_.bar.left(), top), QPointF(g_.x(plan_.span), top));
        for (int m = 0; m <= minutes; ++m) {
            if (m % 5 != 0 && perMinute < 5) continue;
            const double x = std::round(g_.x(std::chrono::minutes(m))) + 0.5;
            p_.drawLine(QPointF(x, top), QPointF(x, top + (m % 10 == 0 ? 8 : m % 5 == 0 ? 6 : 3)));
            if (m % labelEvery != 0) continue;
            p_.drawText(QRectF(x - 20, top + 8, 40, g_.ruler.height() - 8),
                        Qt::AlignHCenter | Qt::AlignTop, QString::number(m));
        }
    }

    void bar(const RailPiece& piece) {
        const QRectF rect = g_.pieceRect(piece);
        const bool section = piece.kind == RailPiece::Kind::Section;
        const auto kind = static_cast<std::size_t>(piece.section);
        const QColor outside = shade(k_.line, k_.highContrast ? 0.12 : 0.75);
        fillOutlined(p_, rect, section ? k_.section[kind] : outside, k_);
        for (const RailGroup& group : piece.groups)
            p_.fillRect(g_.groupRect(group), shade(inkOn(piece), kGroupShade));
    }

    QColor inkOn(const RailPiece& piece) const {
        const bool section = piece.kind == RailPiece::Kind::Section;
        return section ? k_.onSection[static_cast<std::size_t>(piece.section)] : k_.ink;
    }

    void words(const RailPiece& piece) {
        QRectF label = g_.pieceRect(piece).adjusted(5, 1, -5, 0);
        if (piece.kind == RailPiece::Kind::Section) label.setBottom(g_.groups.top());
        labelled(label, piece, inkOn(piece));
        for (const RailGroup& group : piece.groups) groupCell(group, inkOn(piece));
    }

    // Name and clock if both fit, else the one or the other, else neither: the pointer tells.
    void labelled(const QRectF& room, const RailPiece& piece, const QColor& ink) {
        const QString name = pieceName(piece);
        const QString clock = railClock(piece.time.planned);
        const double nameWide = QFontMetricsF(boldFont(font_)).horizontalAdvance(name);
        const double clockWide = QFontMetricsF(font_).horizontalAdvance(clock);
        const bool bothFit = nameWide + clockWide + 10 <= room.width();
        const bool upright = piece.kind != RailPiece::Kind::Section;
        p_.setPen(ink);
        if (nameWide <= room.width() && (bothFit || !upright)) {
            p_.setFont(boldFont(font_));
            p_.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, name);
        }
        p_.setFont(font_);
        if (bothFit)
            p_.drawText(room, Qt::AlignRight | Qt::AlignVCenter, clock);
        else if (upright && clockWide <= room.width())
            p_.drawText(room, Qt::AlignCenter, clock);
        else if (nameWide > room.width() && clockWide <= room.width())
            p_.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, clock);
    }

    void groupCell(const RailGroup& group, const QColor& ink) {
        const QRectF cell = g_.groupRect(group);
        const bool now = group.place == marks_.now;
        if (now) p_.fillRect(cell, ink);
        if (group.openSlots > 0) {
            p_.setPen(QPen(now ? QColor(Qt::white) : ink, 1, Qt::DashLine));
            p_.drawRect(cell.adjusted(0.5, 0.5, -0.5, -0.5));
        }
        const QString letter = plain(group.letter);
        p_.setFont(small_);
        if (p_.fontMetrics().horizontalAdvance(letter) > cell.width()) return;
        p_.setPen(now ? QColor(Qt::white) : ink);
        p_.drawText(cell, Qt::AlignCenter, letter);
    }

    QRectF beyondWall() const {
        const double wall = g_.x(plan_.wall);
        return {wall, g_.bar.top(), g_.x(plan_.total.planned) - wall, g_.bar.height()};
    }

    // White, so that what is written over it keeps its contrast in either theme.
    void hatch() {
        const QRectF over = beyondWall();
        p_.save();
        p_.setClipRect(over, Qt::IntersectClip);
        p_.setPen(QPen(QColor(255, 255, 255, 150), 2.5));
        for (double x = over.left() - over.height(); x < over.right(); x += 8)
            p_.drawLine(QPointF(x, over.bottom()), QPointF(x + over.height(), over.top()));
        p_.restore();
    }

    void overrun() {
        const QRectF over = beyondWall();
        p_.setPen(QPen(k_.wall, 2));
        p_.drawRect(over.adjusted(1, 1, -1, -1));
        const QString text = QLatin1Char('+') + railClock(plan_.total.planned - plan_.wall);
        p_.setFont(boldFont(font_));
        const double wide = QFontMetricsF(p_.font()).horizontalAdvance(text);
        const double room = g_.x(plan_.span) - over.right();
        if (wide + 6 > room) return;
        p_.setPen(k_.wall);
        p_.drawText(QRectF(over.right() + 6, over.top(), room, over.height()),
                    Qt::AlignLeft | Qt::AlignVCenter, text);
    }

    void whisker(const RailPiece& piece, double row) {
        if (piece.kind != RailPiece::Kind::Section || piece.time.low == piece.time.high) return;
        const double y = std::round(g_.whiskers.top() + 5 + 6 * row) + 0.5;
        const double from = g_.x(piece.earliest()), to = g_.x(piece.latest());
        p_.setPen(QPen(k_.ink, 1.2));
        p_.drawLine(QPointF(from, y), QPointF(to, y));
        for (const double x : {from, to}) p_.drawLine(QPointF(x, y - 3), QPointF(x, y + 3));
        const double at = g_.x(piece.end);
        const QPointF plumb[] = {{at - 3.5, y - 3}, {at + 3.5, y - 3}, {at, y + 4}};
        p_.setBrush(k_.ink);
        p_.setPen(Qt::NoPen);
        p_.drawPolygon(plumb, 3);
        p_.setBrush(Qt::NoBrush);
    }

    void bracket(const RailPiece& piece, double row) {
        if (!piece.budget) return;
        const bool fits = piece.time.planned <= ExactTime(piece.budget->hi());
        const double top = g_.budgets.top() + 2;
        const double y = std::round(top + 3 + 5 * row) + 0.5;
        const double from = g_.x(piece.start) + 1.5;
        const double lo = g_.x(piece.start + piece.budget->lo());
        const double hi = g_.x(piece.start + piece.budget->hi());
        const QColor ink = fits ? k_.quiet : k_.wall;
        p_.setPen(QPen(ink, 1));
        p_.drawLine(QPointF(from, top), QPointF(from, y));
        p_.drawLine(QPointF(from, y), QPointF(hi, y));
        p_.drawLine(QPointF(hi, top), QPointF(hi, y));
        p_.fillRect(QRectF(lo, y - 1.5, hi - lo, 3), ink);
    }

    void wall() {
        const double x = std::round(g_.x(plan_.wall));
        p_.fillRect(QRectF(x - 1, g_.strip.top(), 2.5, g_.ruler.top() + 9 - g_.strip.top()),
                    k_.wall);
        const QString text = tr("class ends");
        p_.setFont(small_);
        p_.setPen(k_.wall);
        const double wide = QFontMetricsF(small_).horizontalAdvance(text) + 2;
        const bool free = plan_.total.planned <= plan_.wall; // nothing is drawn right of the wall
        const bool right = x + 6 + wide <= g_.headline.right();
        const QRectF& lane = free && right ? g_.bar : g_.strip;
        p_.drawText(QRectF(right ? x + 6 : x - 6 - wide, lane.top(), wide, lane.height()),
                    Qt::AlignVCenter | (right ? Qt::AlignLeft : Qt::AlignRight), text);
    }

    void marked() {
        if (const RailPiece* piece = plan_.sectionAt(marks_.now)) {
            p_.setPen(QPen(k_.ink, 2));
            p_.drawRect(g_.pieceRect(*piece).adjusted(1, 1, -1, -1));
        }
        if (!marks_.focus) return;
        QRectF ring;
        if (const RailGroup* group = plan_.groupAt(marks_.cursor))
            ring = g_.groupRect(*group);
        else if (const RailPiece* piece = plan_.sectionAt(marks_.cursor))
            ring = g_.pieceRect(*piece);
        if (ring.isEmpty()) return;
        p_.setPen(QPen(k_.paper, 5));
        p_.drawRect(ring.adjusted(-2, -2, 2, 2));
        p_.setPen(QPen(k_.accent, 2.5));
        p_.drawRect(ring.adjusted(-2, -2, 2, 2));
    }

    QPainter& p_;
    const RailPlan& plan_;
    const RailGeometry& g_;
    const RailMarks& marks_;
    const Inks& k_;
    QFont font_, small_;
};
} // namespace

QRectF RailGeometry::pieceRect(const RailPiece& piece) const {
    const double from = x(piece.start), to = x(piece.end);
    return {from, bar.top(), std::max(to - from - kGap, 2.0), bar.height()};
}

QRectF RailGeometry::groupRect(const RailGroup& group) const {
    const double from = x(group.start), to = x(group.end);
    return {from, groups.top(), std::max(to - from - kGap, 5.0), groups.height()};
}

int railHeight(const QFont& font) {
    const double line = QFontMetricsF(font).height(),
                 small = QFontMetricsF(smallFont(font)).height();
    return static_cast<int>(std::ceil(2 * kPad + (line + 4) + stripHeight(small) + 17 +
                                      (line + 8 + small + 4) + 14 + (small + 9)));
}

RailGeometry railGeometry(QRectF area, const RailPlan& plan, const QFont& font) {
    const double line = QFontMetricsF(font).height(),
                 small = QFontMetricsF(smallFont(font)).height();
    const double spare = std::clamp(area.height() - railHeight(font), 0.0, 30.0);
    area.adjust(kSide, kPad, -kSide, -kPad);
    RailGeometry g;
    double y = area.top();
    const auto lane = [&](double height) {
        const QRectF rect(area.left(), std::round(y), area.width(), std::round(height));
        y += height;
        return rect;
    };
    g.headline = lane(line + 4);
    g.strip = lane(stripHeight(small));
    g.whiskers = lane(17);
    g.bar = lane(line + 8 + small + 4 + spare);
    g.groups = g.bar;
    g.groups.setTop(g.bar.bottom() - small - 3);
    g.budgets = lane(14);
    g.ruler = lane(small + 9);
    if (plan.span > ExactTime{}) g.perTick = area.width() / static_cast<double>(plan.span.count());
    return g;
}

void paintRail(QPainter& painter, const RailPlan& plan, const RailGeometry& geometry,
               const RailMarks& marks, const Inks& inks) {
    Rail(painter, plan, geometry, marks, inks).paint();
}

} // namespace bw
