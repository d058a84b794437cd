// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/lane_paint.hpp"

#include "desk/bench/minute_rail_paint.hpp"
#include "desk/floor/floor_words.hpp"
#include "desk/frame/words.hpp"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <QPixmap>

#include <algorithm>
#include <array>
#include <cmath>

namespace bw {

namespace {
constexpr double kMargin = 1.02;                   // room right of the last thing
constexpr double kRest = 0.2;                      // of the section's ink
constexpr std::array kStairs{1.0, 0.7, 0.5, 0.36}; // of the lane's height, by slot

QString tr(const char* source) { return QCoreApplication::translate("Floor", source); }

QColor faint(QColor color, double alpha) {
    color.setAlphaF(static_cast<float>(alpha));
    return color;
}

// Diagonal strokes, as fine on a fine screen.
QPixmap hatch(const QColor& ink, double scale) {
    constexpr int kSide = 6;
    QPixmap tile(QSize(kSide, kSide) * scale);
    tile.setDevicePixelRatio(scale);
    tile.fill(Qt::transparent);
    QPainter p(&tile);
    p.setRenderHint(QPainter::Antialiasing);
    p.setPen(QPen(ink, 1.3));
    for (const int shift : {-kSide, 0, kSide})
        p.drawLine(QPointF(shift - 1, kSide + 1), QPointF(shift + kSide + 1, -1));
    return tile;
}

void paintWait(QPainter& p, const QRectF& box, const QPixmap& hatching, const Inks& k) {
    p.setBrushOrigin(box.topLeft());
    p.fillRect(box, QBrush(hatching));
    p.setPen(QPen(k.wall, 1));
    if (box.width() > 3) p.drawRect(box.adjusted(0.5, 0.5, -0.5, -0.5));
}

void paintThrough(QPainter& p, const QRectF& box, const Inks& k) {
    p.setPen(QPen(k.quiet, 1, Qt::DotLine));
    const double y = std::round(box.bottom()) - 0.5;
    p.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
}

// One painting of the lanes; the names say what is inked.
class Lanes {
public:
    Lanes(QPainter& painter, const FloorView& view, const LanePlan& plan,
          const LaneGeometry& geometry, const LaneMarks& marks, const Inks& inks)
        : p_(painter), view_(view), plan_(plan), g_(geometry), marks_(marks), k_(inks),
          font_(painter.font()), small_(smallFont(font_)),
          wait_(hatch(k_.wall, painter.device()->devicePixelRatioF())) {}

    void paint() {
        head();
        p_.save();
        p_.setClipRect(g_.lanes);
        grounds();
        const int count = static_cast<int>(plan_.lanes.size());
        const int first = std::clamp(g_.laneAt(g_.lanes.top()), 0, count);
        const int last = std::clamp(g_.laneAt(g_.lanes.bottom()) + 1, first, count);
        for (int i = first; i < last; ++i) lane(i);
        wall();
        ring(marks_.overLane, marks_.overPiece, k_.quiet, 1.5);
        if (marks_.focus) ring(marks_.lane, marks_.piece, k_.accent, 2.5);
        p_.restore();
        for (int i = first; i < last; ++i) number(i);
    }

private:
    void head() {
        p_.fillRect(g_.names.united(g_.ruler), k_.paper);
        p_.save();
        p_.setClipRect(g_.names.united(g_.ruler).adjusted(g_.gutter - 12, 0, 0, 0));
        for (const LaneSection& section : plan_.sections) name(section);
        ruler();
        classEnd();
        p_.restore();
        p_.setFont(small_);
        p_.setPen(k_.quiet);
        p_.drawText(g_.ruler, Qt::AlignLeft | Qt::AlignTop, tr("member"));
    }

    void classEnd() {
        const double x = std::round(g_.x(plan_.wall));
        p_.setFont(small_);
        p_.setPen(k_.wall);
        const QString text = tr("class ends");
        const double wide = QFontMetricsF(small_).horizontalAdvance(text) + 2;
        const double last = plan_.sections.empty() ? 0 : g_.x(plan_.sections.back().to);
        if (x - wide - 4 > last)
            p_.drawText(QRectF(x - wide - 4, g_.names.top(), wide, g_.names.height() - 3),
                        Qt::AlignRight | Qt::AlignVCenter, text);
    }

    void name(const LaneSection& section) {
        const auto kind = static_cast<std::size_t>(section.kind);
        const QRectF box(g_.x(section.from) + 0.5, g_.names.top(),
                         g_.x(section.to) - g_.x(section.from) - 1, g_.names.height() - 3);
        if (box.width() < 1) return;
        p_.fillRect(box, k_.section[kind]);
        const QString clock = floorClock(section.to - section.from);
        const QString name = sectionName(*view_.block, section.place.section);
        const QString both = name + QStringLiteral("  ") + clock;
        QFont bold = small_;
        bold.setBold(true);
        p_.setFont(bold);
        p_.setPen(k_.onSection[kind]);
        const QFontMetricsF wide(bold);
        const QRectF room =
            box.intersected(g_.names.adjusted(g_.gutter, 0, 0, 0)).adjusted(4, 0, -4, 0);
        const QString text = wide.horizontalAdvance(both) <= room.width() ? both : name;
        if (wide.horizontalAdvance(text) <= room.width())
            p_.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, text);
    }

    void ruler() {
        const double top = std::round(g_.ruler.top()) + 0.5;
        const int every = g_.perMinute * 5 > 26 ? 5 : g_.perMinute * 10 > 26 ? 10 : 30;
        const int minutes =
            static_cast<int>(std::ceil((g_.lanes.width() + g_.scrolledX) / g_.perMinute));
        p_.setFont(small_);
        p_.setPen(QPen(k_.quiet, 1));
        for (int m = 0; m <= minutes; m += every) {
            const double x = std::round(g_.x(std::chrono::minutes(m))) + 0.5;
            p_.drawLine(QPointF(x, g_.ruler.bottom() - 3), QPointF(x, g_.ruler.bottom()));
            p_.drawText(QRectF(x - 20, top, 40, g_.ruler.height() - 3),
                        Qt::AlignHCenter | Qt::AlignTop, QString::number(m));
        }
    }

    // Over all lanes: opening and closing, the coach's talks, where a section ends.
    void grounds() {
        band(Millis{0}, plan_.opening, tr("opening"));
        for (const LaneSection& s : plan_.sections) band(s.from, s.talked, tr("talk"));
        const Millis last = plan_.sections.empty() ? plan_.opening : plan_.sections.back().to;
        band(last, plan_.finish, tr("closing"));
        p_.setPen(QPen(k_.quiet, 1));
        for (const LaneSection& s : plan_.sections) {
            const double x = std::round(g_.x(s.to)) + 0.5;
            p_.drawLine(QPointF(x, g_.lanes.top()), QPointF(x, g_.lanes.bottom()));
        }
    }

    void band(Millis from, Millis to, const QString& word) {
        const QRectF box(g_.x(from), g_.lanes.top(), g_.x(to) - g_.x(from), g_.lanes.height());
        if (box.width() < 1) return;
        p_.fillRect(box, faint(k_.line, 0.45));
        p_.setFont(small_);
        p_.setPen(k_.quiet);
        const QFontMetricsF wide(small_);
        if (box.width() < wide.height()) return;
        p_.save();
        p_.translate(box.center());
        p_.rotate(-90);
        p_.drawText(QRectF(-box.height() / 2, -box.width() / 2, box.height(), box.width()),
                    Qt::AlignCenter, word);
        p_.restore();
    }

    void lane(int index) {
        const Lane& lane = plan_.lanes[static_cast<std::size_t>(index)];
        const double line = std::round(g_.top(index) + g_.high) - 0.5;
        p_.setPen(QPen(faint(k_.line, 0.6), 1));
        p_.drawLine(QPointF(g_.lanes.left(), line), QPointF(g_.lanes.right(), line));
        for (const LaneStay& stay : lane.stays) bracket(index, stay);
        for (const LanePiece& piece : lane.pieces) this->piece(index, piece);
    }

    std::size_t kindAt(Place place) const {
        return static_cast<std::size_t>(sectionAt(*view_.block, place)->kind);
    }

    bool seen(double from, double to) const {
        return to >= g_.lanes.left() && from <= g_.lanes.right();
    }

    // The letter of a group, and a line as long as the stay in it.
    void bracket(int index, const LaneStay& stay) {
        const double from = g_.x(stay.from), to = g_.x(stay.to);
        if (!seen(from, to)) return;
        const QRectF room(from, g_.top(index) + 1, to - from - 1, g_.bracket);
        const QString letter = slotMark(*view_.block, stay.group);
        p_.setFont(small_);
        const double wide = QFontMetricsF(small_).horizontalAdvance(letter);
        double line = room.left();
        if (wide + 2 <= room.width()) {
            p_.setPen(k_.ink);
            p_.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, letter);
            line += wide + 3;
        }
        const double y = std::round(room.center().y());
        if (line < room.right())
            p_.fillRect(QRectF(line, y, room.right() - line, 2), k_.section[kindAt(stay.group)]);
    }

    void piece(int index, const LanePiece& piece) {
        const QRectF box = g_.pieceRect(index, piece);
        if (!seen(box.left(), box.right())) return;
        switch (piece.kind) {
        case LanePiece::Kind::Talk: return; // a band over all lanes
        case LanePiece::Kind::Wait: return paintWait(p_, box, wait_, k_);
        case LanePiece::Kind::Set: return set(box, piece);
        case LanePiece::Kind::Rest:
            p_.fillRect(box, faint(k_.section[kindAt(piece.place)], kRest));
            return;
        case LanePiece::Kind::Through: return paintThrough(p_, box, k_);
        }
    }

    void set(const QRectF& box, const LanePiece& piece) {
        const std::size_t kind = kindAt(piece.place);
        p_.fillRect(box, k_.section[kind]);
        p_.setFont(small_);
        const QFontMetricsF wide(small_);
        if (box.height() < wide.ascent() - 1) return;
        const QString number = QString::number(piece.place.slot + 1);
        const QString mark = slotMark(*view_.block, piece.place);
        const QString text = wide.horizontalAdvance(mark) + 3 <= box.width() ? mark : number;
        if (wide.horizontalAdvance(text) + 2 > box.width()) return;
        p_.setPen(k_.onSection[kind]);
        p_.drawText(box.adjusted(-2, -4, 2, 4), Qt::AlignCenter, text);
    }

    void wall() {
        const double x = std::round(g_.x(plan_.wall));
        if (plan_.finish > plan_.wall)
            p_.fillRect(QRectF(x, g_.lanes.top(), g_.x(plan_.finish) - x, g_.lanes.height()),
                        faint(k_.wall, 0.08));
        p_.fillRect(QRectF(x - 1, g_.lanes.top(), 2.5, g_.lanes.height()), k_.wall);
    }

    void ring(int lane, int piece, const QColor& ink, double wide) {
        if (lane < 0 || lane >= static_cast<int>(plan_.lanes.size())) return;
        const auto& pieces = plan_.lanes[static_cast<std::size_t>(lane)].pieces;
        if (piece < 0 || piece >= static_cast<int>(pieces.size())) return;
        const QRectF box =
            g_.pieceRect(lane, pieces[static_cast<std::size_t>(piece)]).adjusted(-2, -2, 2, 2);
        p_.setRenderHint(QPainter::Antialiasing);
        p_.setBrush(Qt::NoBrush);
        p_.setPen(QPen(k_.paper, wide + 2.5));
        p_.drawRect(box);
        p_.setPen(QPen(ink, wide));
        p_.drawRect(box);
        p_.setRenderHint(QPainter::Antialiasing, false);
    }

    void number(int index) {
        const QRectF room(g_.lanes.left() - g_.gutter, g_.top(index), g_.gutter - 6, g_.high);
        p_.save();
        p_.setClipRect(g_.lanes.adjusted(-g_.gutter, 0, 0, 0));
        p_.setFont(font_);
        p_.setPen(index == marks_.lane && marks_.focus ? k_.accent : k_.ink);
        p_.drawText(room, Qt::AlignRight | Qt::AlignVCenter,
                    QString::number(plan_.lanes[static_cast<std::size_t>(index)].member + 1));
        p_.restore();
    }

    QPainter& p_;
    const FloorView& view_;
    const LanePlan& plan_;
    const LaneGeometry& g_;
    const LaneMarks& marks_;
    const Inks& k_;
    QFont font_, small_;
    QPixmap wait_;
};
} // namespace

Millis LaneGeometry::time(double x) const {
    if (perMinute <= 0) return Millis{0};
    return Millis{std::llround((x - lanes.left() + scrolledX) / perMinute * 60'000)};
}

int LaneGeometry::laneAt(double y) const {
    return high > 0 ? static_cast<int>(std::floor((y - lanes.top() + scrolledY) / high)) : -1;
}

QRectF LaneGeometry::pieceRect(int index, const LanePiece& piece) const {
    QRectF box(x(piece.from), top(index) + bracket + 1, x(piece.to) - x(piece.from),
               high - bracket - 3);
    if (piece.kind == LanePiece::Kind::Set) {
        const auto step =
            std::min<std::size_t>(static_cast<std::size_t>(piece.place.slot), kStairs.size() - 1);
        box.setTop(box.bottom() - std::round(box.height() * kStairs[step]));
        box.setWidth(std::max(box.width() - 0.75, 1.0)); // two sets don't run together
    }
    return box;
}

double laneHeightLeast(const QFont& font) {
    return std::ceil(QFontMetricsF(smallFont(font)).height() * 2 + 2);
}

double laneHeadHeight(const QFont& font) {
    const double small = QFontMetricsF(smallFont(font)).height();
    return std::ceil(small + 7) + std::ceil(small + 4);
}

LaneGeometry laneGeometry(QRectF area, const LanePlan& plan, const QFont& font, double zoom) {
    const double small = QFontMetricsF(smallFont(font)).height();
    LaneGeometry g;
    g.gutter = std::ceil(QFontMetricsF(smallFont(font)).horizontalAdvance(tr("member")) + 10);
    g.names = QRectF(area.left(), area.top(), area.width(), std::ceil(small + 7));
    g.ruler = QRectF(area.left(), g.names.bottom(), area.width(), std::ceil(small + 4));
    g.lanes = area.adjusted(g.gutter, laneHeadHeight(font), 0, 0);
    const auto count = static_cast<double>(std::max<std::size_t>(1, plan.lanes.size()));
    const double least = laneHeightLeast(font);
    g.high = std::floor(std::clamp(g.lanes.height() / count, least, least * 1.7));
    g.bracket = std::floor(small * 0.95);
    const double minutes = static_cast<double>(plan.latest().count()) / 60'000 * kMargin;
    if (minutes > 0) g.perMinute = g.lanes.width() / minutes * zoom;
    return g;
}

void paintLaneMark(QPainter& p, LaneMark mark, const QRectF& box, const Inks& k) {
    const QColor ink = k.section[static_cast<std::size_t>(SectionKind::Strength)];
    const double half = box.width() / 2;
    switch (mark) {
    case LaneMark::Sets:
        p.fillRect(box.adjusted(0, 0, -half - 0.75, 0), ink);
        p.fillRect(box.adjusted(half, box.height() * (1 - kStairs[1]), 0, 0), ink);
        return;
    case LaneMark::Wait:
        return paintWait(p, box, hatch(k.wall, p.device()->devicePixelRatioF()), k);
    case LaneMark::Rest: p.fillRect(box, faint(ink, kRest)); return;
    case LaneMark::Through: paintThrough(p, box, k);
    }
}

void paintLanes(QPainter& painter, const FloorView& view, const LanePlan& plan,
                const LaneGeometry& geometry, const LaneMarks& marks, const Inks& inks) {
    Lanes(painter, view, plan, geometry, marks, inks).paint();
}

} // namespace bw
