// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/board/load_table.hpp"

#include <algorithm>

namespace bw {

namespace {
using Look = PagePen::Look;
constexpr double kNameShare = 0.3, kCellShare = 0.22; // of the width, at most
constexpr double kGap = 0.7, kPad = 0.14;             // ems, between columns; above and below a row

class Table {
public:
    Table(const BoardLoads& loads, const TypeRuler& ruler, QSizeF room, double em)
        : loads_(loads), ruler_(ruler), room_(room), em_(em) {
        for (const BoardLoads::Line& line : loads.lines)
            name_ = std::max(name_, ruler.width(line.member, book().type));
        name_ = std::min(name_, kNameShare * room.width());
        for (qsizetype i = 0; i < loads.labels.size(); ++i) widths_.push_back(widthOf(i));
    }
    std::vector<Band> run() const {
        std::vector<Band> boards;
        for (qsizetype from = 0; from < loads_.labels.size();) {
            const qsizetype to = lastThatFits(from);
            fill(boards, from, to);
            from = to;
        }
        return boards;
    }

private:
    [[nodiscard]] Look book() const { return {{em_}, Ink::Text, Rank::Second}; }
    [[nodiscard]] Look head() const { return {{em_, Weight::Bold}, Ink::Accent, Rank::Second}; }
    [[nodiscard]] Look bold() const { return {{em_, Weight::Bold}, Ink::Text, Rank::Second}; }
    [[nodiscard]] double widthOf(qsizetype column) const {
        double width = ruler_.width(loads_.labels[column], head().type);
        for (const BoardLoads::Line& line : loads_.lines)
            width = std::max(width, ruler_.width(line.cells[column], bold().type));
        return std::min(width, kCellShare * room_.width());
    }
    [[nodiscard]] double place(qsizetype from, qsizetype column) const { // its right end
        double x = name_;
        for (qsizetype i = from; i <= column; ++i)
            x += kGap * em_ + widths_[static_cast<std::size_t>(i)];
        return x;
    }
    [[nodiscard]] qsizetype lastThatFits(qsizetype from) const {
        qsizetype to = from + 1;
        while (to < loads_.labels.size() && place(from, to) <= room_.width()) ++to;
        return to;
    }
    Band row(const QString& member, const QStringList& cells, qsizetype from, qsizetype to,
             const Look& look) const {
        Band band;
        PagePen pen(ruler_, band.items);
        qsizetype lines = 1;
        const double base = (0.95 + kPad) * em_;
        const auto put = [&](const QString& text, double width, const auto& at) {
            const QStringList wrapped = ruler_.wrap(text, look.type, width);
            lines = std::max(lines, wrapped.size());
            for (qsizetype i = 0; i < wrapped.size(); ++i)
                at(wrapped[i], base + static_cast<double>(i) * kPitch * em_);
        };
        Look name = look;
        name.type.weight = Weight::Book;
        for (qsizetype c = from; c < to; ++c) {
            const double width = widths_[static_cast<std::size_t>(c)], right = place(from, c);
            put(cells[c], width, [&](const QString& line, double y) {
                pen.right(line, {right, y}, width, look);
            });
        }
        put(member, name_, [&](const QString& line, double y) {
            pen.left(line, {0, y}, name_, name);
        });
        band.height = (static_cast<double>(lines) * kPitch + 2 * kPad) * em_;
        return band;
    }
    static void append(Band& to, const Band& band) {
        for (const Item& item : band.items) to.items.push_back(moved(item, {0, to.height}));
        to.height += band.height;
    }
    void fill(std::vector<Band>& boards, qsizetype from, qsizetype to) const {
        const Band top = row({}, loads_.labels, from, to, head());
        append(boards.emplace_back(), top);
        for (const BoardLoads::Line& line : loads_.lines) {
            const Band next = row(line.member, line.cells, from, to, bold());
            if (boards.back().height + next.height > room_.height() &&
                boards.back().height > top.height)
                append(boards.emplace_back(), top);
            Band& board = boards.back();
            PagePen(ruler_, board.items)
                .line({0, board.height}, {place(from, to - 1), board.height}, 0.02 * em_,
                      Ink::Hair);
            append(board, next);
        }
    }

    const BoardLoads& loads_;
    const TypeRuler& ruler_;
    QSizeF room_;
    double em_, name_ = 0;
    std::vector<double> widths_;
};
} // namespace

std::vector<Band> loadTables(const BoardLoads& loads, const TypeRuler& ruler, QSizeF room,
                             double em) {
    return Table(loads, ruler, room, em).run();
}

} // namespace bw
