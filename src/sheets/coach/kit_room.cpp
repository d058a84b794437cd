// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/coach/kit_room.hpp"

#include <algorithm>

namespace bw {

namespace {
using Look = PagePen::Look;
constexpr std::size_t kMostAcross = 4;
// In ems of the body:
constexpr double kPad = 0.55, kGap = 1.8, kWall = 0.8, kIndent = 0.9, kPath = 0.9, kHead = 0.28;
constexpr double kTallest = 26; // of a room

struct BoxLine {
    QString text;
    Look look;
    double indent = 0;
};

class Room {
public:
    Room(const SheetFlow& flow, const KitWords& words, const KitSection& section,
         const std::vector<KitMove>& moves, double width)
        : flow_(flow), words_(words), section_(section), moves_(moves), t_(flow.type()),
          inner_(width - 2 * kWall * t_.body), width_(width) {}

    std::optional<Band> band() {
        for (std::size_t i = 0; i < section_.stations.size(); ++i) lines_.push_back(linesOf(i));
        if (!divide()) return std::nullopt;
        place();
        Band out;
        PagePen pen(flow_.ruler(), out.items);
        walls(pen);
        for (std::size_t i = 0; i < boxes_.size(); ++i) box(pen, i);
        ways(pen);
        if (goesRound()) wayBack(pen);
        out.height = height_;
        return out;
    }

private:
    [[nodiscard]] double em() const { return t_.body; }
    [[nodiscard]] bool goesRound() const {
        return !section_.together && boxes_.size() > 1 && rows_ < 3;
    }
    [[nodiscard]] Look letterLook() const {
        return {{1.5 * em(), Weight::Bold}, Ink::Accent, Rank::Key};
    }
    [[nodiscard]] Look startLook() const { return {{t_.small}, Ink::Quiet, Rank::Small}; }

    std::vector<BoxLine> linesOf(std::size_t station) const {
        std::vector<BoxLine> out;
        const Look loads{{em()}, Ink::Text, Rank::Second}, quiet = startLook();
        for (const KitLine& line : section_.stations[station].kit) {
            const auto move = std::ranges::find(moves_, line.kit, &KitMove::kit);
            const bool comes = move != moves_.end() && move->comesOut();
            out.push_back({words_.counted(line.kit, line.units),
                           {{em(), comes ? Weight::Bold : Weight::Book}, Ink::Text, Rank::Second},
                           0});
            out.push_back({words_.loads(line), loads, kIndent * em()});
            out.push_back({words_.sharing(section_, station, line.kit), quiet, kIndent * em()});
        }
        std::erase_if(out, [](const BoxLine& line) { return line.text.isEmpty(); });
        if (out.empty())
            out.push_back({sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "free floor")),
                           {{em()}, Ink::Quiet, Rank::Second},
                           0});
        return out;
    }
    // The width of a box that breaks no word.
    [[nodiscard]] double leastWidth() const {
        double widest = 0;
        for (const auto& lines : lines_)
            for (const BoxLine& line : lines)
                for (const QString& word : line.text.split(QLatin1Char(' ')))
                    widest =
                        std::max(widest, line.indent + flow_.ruler().width(word, line.look.type));
        for (std::size_t i = 0; i < lines_.size(); ++i)
            for (const QString& word : words_.starting(section_, i).split(QLatin1Char(' ')))
                widest = std::max(widest, flow_.ruler().width(word, startLook().type));
        return widest + 2 * kPad * em();
    }
    bool divide() {
        const double least = leastWidth(), gap = kGap * em();
        if (least > inner_) return false;
        const auto fit = static_cast<std::size_t>((inner_ + gap) / (least + gap));
        const std::size_t all = lines_.size();
        const std::size_t most = std::clamp<std::size_t>(fit, 1, kMostAcross);
        rows_ = (all + most - 1) / most;
        across_ = (all + rows_ - 1) / rows_; // rows as even as can be
        const auto n = static_cast<double>(across_);
        boxWidth_ = (inner_ - (n - 1) * gap) / n;
        if (across_ == 1) boxWidth_ = std::max(least, (inner_ - gap) / 2);
        return true;
    }
    // People walk the rows to and fro, so that the next station is always the neighbour.
    [[nodiscard]] std::size_t column(std::size_t station) const {
        const std::size_t at = station % across_;
        return station / across_ % 2 == 0 ? at : across_ - 1 - at;
    }
    void place() {
        double y = kWall * em();
        for (std::size_t row = 0; row < rows_; ++row) {
            const std::size_t first = row * across_, end = std::min(first + across_, lines_.size());
            double tall = 0;
            for (std::size_t i = first; i < end; ++i) tall = std::max(tall, boxHeight(i));
            for (std::size_t i = first; i < end; ++i) {
                const double share = inner_ / static_cast<double>(across_);
                const double middle = (static_cast<double>(column(i)) + 0.5) * share;
                // boxes that fill the room stand from wall to wall
                const double left =
                    across_ == 1 ? middle - boxWidth_ / 2
                                 : static_cast<double>(column(i)) * (boxWidth_ + kGap * em());
                boxes_.emplace_back(kWall * em() + left, y, boxWidth_, tall);
            }
            y += tall + (row + 1 < rows_ ? kGap * em() : 0);
        }
        if (goesRound() && rows_ == 1) y += kPath * em();
        height_ = y + kWall * em();
    }
    [[nodiscard]] double boxHeight(std::size_t station) const {
        return written(station, boxWidth_ - 2 * kPad * em(), 0).height;
    }
    // Letter and heads on one line where they fit, then the kit.
    [[nodiscard]] Band written(std::size_t station, double room, double left) const {
        Band band;
        PagePen pen(flow_.ruler(), band.items);
        const QString letter = words_.letter(section_.stations[station]),
                      start = words_.starting(section_, station);
        const double used = flow_.ruler().width(letter, letterLook().type) + em();
        const bool beside = used + flow_.ruler().width(start, startLook().type) <= room;
        band.height = kPad * em();
        if (beside)
            pen.right(start, {left + room, band.height + 0.95 * letterLook().type.em}, room - used,
                      startLook());
        BandColumn column(band, flow_.ruler(), room, left);
        column.add(letter, letterLook());
        if (!beside) column.add(start, startLook());
        column.space(0.15 * em());
        for (const BoxLine& line : lines_[station])
            BandColumn(band, flow_.ruler(), room - line.indent, left + line.indent)
                .add(line.text, line.look);
        band.height += kPad * em();
        return band;
    }
    void walls(PagePen& pen) const {
        const double w = 2.5 * t_.hair;
        QPolygonF wall(QRectF(w, w, width_ - 2 * w, height_ - 2 * w));
        wall << wall[1]; // once more along the top closes the corner
        pen.stroke(wall, 2 * w, Ink::Hair);
    }
    void box(PagePen& pen, std::size_t station) const {
        const QRectF& frame = boxes_[station];
        const double pad = kPad * em();
        pen.fill(QPolygonF(frame), Ink::Tint);
        pen.stroke(QPolygonF(frame), 2 * t_.hair, Ink::Hair);
        pen.put(written(station, frame.width() - 2 * pad, frame.left() + pad).items,
                {0, frame.top()});
    }
    void head(PagePen& pen, QPointF at, QPointF towards) const {
        const QPointF along = kHead * em() * towards, across(-along.y(), along.x());
        pen.stroke({{at - along + across, at + along, at - along - across}}, 3 * t_.hair,
                   Ink::Accent);
    }
    void ways(PagePen& pen) const {
        for (std::size_t i = 0; i + 1 < boxes_.size(); ++i) {
            const QRectF &from = boxes_[i], &to = boxes_[i + 1];
            if (to.top() > from.top())
                head(pen, {to.center().x(), (from.bottom() + to.top()) / 2}, {0, 1});
            else
                head(pen, {(from.center().x() + to.center().x()) / 2, from.center().y()},
                     {to.left() > from.left() ? 1.0 : -1.0, 0});
        }
    }
    // From the last station to the first: below a single row, else at the left of the second.
    void wayBack(PagePen& pen) const {
        const QRectF &first = boxes_.front(), &last = boxes_.back();
        const double x = first.center().x(), w = 2 * t_.hair;
        const QPointF end(x, first.bottom());
        if (rows_ == 1) {
            const double y = last.bottom() + kPath * em();
            const QPointF start(last.center().x(), last.bottom());
            pen.stroke({{start, QPointF(start.x(), y), QPointF(x, y), end}}, w, Ink::Hair);
        } else if (last.left() > first.left()) {
            const double y = last.center().y();
            pen.stroke({{QPointF(last.left(), y), QPointF(x, y), end}}, w, Ink::Hair);
        } else {
            pen.stroke({{QPointF(x, last.top()), end}}, w, Ink::Hair);
        }
        head(pen, end + QPointF(0, 1.7 * kHead * em()), {0, -1});
    }

    const SheetFlow& flow_;
    const KitWords& words_;
    const KitSection& section_;
    const std::vector<KitMove>& moves_;
    const SheetType& t_;
    double inner_, width_;
    std::vector<std::vector<BoxLine>> lines_; // by station
    std::size_t rows_ = 1, across_ = 1;
    double boxWidth_ = 0, height_ = 0;
    std::vector<QRectF> boxes_;
};
} // namespace

std::optional<Band> kitRoom(const SheetFlow& flow, const KitWords& words, const KitSection& section,
                            const std::vector<KitMove>& moves, double width) {
    auto band = Room(flow, words, section, moves, width).band();
    if (band && band->height > kTallest * flow.type().body) return std::nullopt;
    return band;
}

void putStationLines(SheetFlow& flow, const KitWords& words, const KitSection& section) {
    for (std::size_t i = 0; i < section.stations.size(); ++i) {
        QStringList kit;
        for (const KitLine& line : section.stations[i].kit) {
            QStringList parts{words.counted(line.kit, line.units), words.loads(line),
                              words.sharing(section, i, line.kit)};
            parts.removeAll(QString());
            kit << parts.join(QStringLiteral(", "));
        }
        if (kit.isEmpty()) kit << sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "free floor"));
        flow.text(words.letter(section.stations[i]) + QStringLiteral(": ") +
                      words.starting(section, i) + QStringLiteral("; ") +
                      kit.join(QStringLiteral("; ")) + QLatin1Char('.'),
                  {{flow.type().body}, Ink::Text, Rank::Second}, 0.4 * flow.type().body);
    }
}

} // namespace bw
