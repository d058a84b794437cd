// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/lane_paint.hpp"

#include "desk/floor/floor_words.hpp"
#include "desk/floor/lane_marks.hpp"
#include "desk/frame/outlined.hpp"
#include "desk/frame/paper.hpp"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
QString tr(const char* source) { return QCoreApplication::translate("Floor", source); }

QString laneName(const FloorView& view, const LanePlan& plan, std::size_t index) {
    const Lane& lane = plan.lanes[index];
    if (lane.member >= 0) return QString::number(lane.member + 1);
    const QString kit = kitName(*view.gym, *lane.kit);
    if (lane.unit < 0) return tr("%1: waiting").arg(kit);
    const bool first = index == 0 || plan.lanes[index - 1].kit != lane.kit;
    const QString unit = QString::number(lane.unit + 1);
    return first ? kit + QLatin1Char(' ') + unit : unit;
}

// One painting of the lanes; the names say what is inked.
class Lanes {
public:
    Lanes(QPainter& painter, const FloorView& view, const LanePlan& plan,
          const LaneGeometry& geometry, const LaneMarks& marks, const Inks& inks)
        : p_(painter), view_(view), plan_(plan), g_(geometry), marks_(marks), k_(inks),
          font_(painter.font()), small_(smallFont(font_)),
          wait_(waitHatch(k_.wall, painter.device()->devicePixelRatioF())) {}

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
        p_.restore();
        p_.setFont(small_);
        p_.setPen(k_.quiet);
        const QRectF room(g_.ruler.left(), g_.ruler.top(), g_.gutter - 6, g_.ruler.height());
        p_.drawText(room, Qt::AlignRight | Qt::AlignTop,
                    plan_.order == LaneOrder::Kit ? tr("kit") : tr("member"));
    }

    void name(const LaneSection& section) {
        const auto kind = static_cast<std::size_t>(section.kind);
        const QRectF box(g_.x(section.from) + 0.5, g_.names.top(),
                         g_.x(section.to) - g_.x(section.from) - 1, g_.names.height() - 3);
        if (box.width() < 1) return;
        fillOutlined(p_, box, k_.section[kind], k_);
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
        p_.fillRect(box, faint(k_.line, k_.highContrast ? 0.12 : 0.45));
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
        const auto next = static_cast<std::size_t>(index) + 1;
        const bool last = next == plan_.lanes.size() || plan_.lanes[next].kit != lane.kit;
        p_.setPen(QPen(last && lane.kit ? k_.line : faint(k_.line, 0.6), 1));
        p_.drawLine(QPointF(g_.lanes.left(), line), QPointF(g_.lanes.right(), line));
        for (const LaneStay& stay : lane.stays) bracket(index, stay);
        for (const LanePiece& piece : lane.pieces) this->piece(index, piece);
    }

    std::size_t kindAt(Place place) const {
        const Section* section = sectionAt(*view_.block, place);
        return static_cast<std::size_t>(section ? section->kind : SectionKind::Strength);
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
            p_.fillRect(box, restInk(k_.section[kindAt(piece.place)]));
            return;
        case LanePiece::Kind::Through: return paintThrough(p_, box, k_);
        case LanePiece::Kind::Line: return line(box, piece);
        case LanePiece::Kind::Hold: return hold(box, piece);
        }
    }

    void set(const QRectF& box, const LanePiece& piece) {
        const std::size_t kind = kindAt(piece.place);
        fillOutlined(p_, box, k_.section[kind], k_);
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

    // As many as wait, on a ground of its own.
    void line(const QRectF& box, const LanePiece& piece) {
        paintWait(p_, box, wait_, k_);
        const QString number = QString::number(piece.count);
        p_.setFont(small_);
        const double wide = QFontMetricsF(small_).horizontalAdvance(number) + 4;
        if (wide + 2 > box.width()) return;
        const QRectF ground(box.center().x() - wide / 2, box.top() + 1, wide, box.height() - 2);
        p_.fillRect(ground, k_.paper);
        p_.setPen(k_.wall);
        p_.drawText(ground.adjusted(0, -4, 0, 4), Qt::AlignCenter, number);
    }

    void hold(const QRectF& box, const LanePiece& piece) {
        const std::size_t kind = kindAt(piece.place);
        fillOutlined(p_, box, k_.section[kind], k_);
        const QString member = QString::number(piece.member + 1);
        p_.setFont(small_);
        if (QFontMetricsF(small_).horizontalAdvance(member) + 2 > box.width()) return;
        p_.setPen(k_.onSection[kind]);
        p_.drawText(box.adjusted(-2, -4, 2, 4), Qt::AlignCenter, member);
    }

    void wall() {
        const double x = std::round(g_.x(plan_.wall));
        if (plan_.finish > plan_.wall)
            p_.fillRect(QRectF(x, g_.lanes.top(), g_.x(plan_.finish) - x, g_.lanes.height()),
                        faint(k_.wall, 0.08));
        paintWall(p_, x, g_.lanes.top(), g_.lanes.bottom(), k_);
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
        p_.setFont(plan_.order == LaneOrder::Kit ? small_ : font_);
        p_.setPen(index == marks_.lane && marks_.focus ? k_.accent : k_.ink);
        const QString name = laneName(view_, plan_, static_cast<std::size_t>(index));
        p_.drawText(
            room, Qt::AlignRight | Qt::AlignVCenter,
            p_.fontMetrics().elidedText(name, Qt::ElideMiddle, static_cast<int>(room.width())));
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

double laneNamesWidth(const FloorView& view, const LanePlan& plan, const QFont& font) {
    const QFontMetricsF small(smallFont(font)), large(font);
    double width = small.horizontalAdvance(tr("member"));
    const bool kit = plan.order == LaneOrder::Kit;
    for (std::size_t i = 0; i < plan.lanes.size(); ++i)
        width = std::max(width, (kit ? small : large).horizontalAdvance(laneName(view, plan, i)));
    return width;
}

void paintLanes(QPainter& painter, const FloorView& view, const LanePlan& plan,
                const LaneGeometry& geometry, const LaneMarks& marks, const Inks& inks) {
    Lanes(painter, view, plan, geometry, marks, inks).paint();
}

} // namespace bw
