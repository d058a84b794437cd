// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/board/board_setter.hpp"
#include "sheets/board/load_table.hpp"
#include "sheets/sheet_words.hpp"

#include <algorithm>

namespace bw {

namespace {
using Look = PagePen::Look;
constexpr double kLargest = 1.6, kStep = 0.96; // times the least em; from one try to the next
constexpr double kSlack = 0.001;               // mm, of adding up
constexpr double kGap = 0.35;                  // ems, between columns and between groups
constexpr double kDoseShare = 0.3, kTempoShare = 0.2; // of the width, at most

double add(Band& to, const Band& band) {
    for (const Item& item : band.items) to.items.push_back(moved(item, {0, to.height}));
    return to.height += band.height;
}

// The largest type that takes no more boards than the least does; below that only for what is
// higher than a whole board.
template <class Set> std::vector<Band> largest(double least, double room, const Set& set) {
    const auto fits = [&](const std::vector<Band>& boards) {
        return std::ranges::all_of(boards,
                                   [&](const Band& b) { return b.height <= room + kSlack; });
    };
    const std::size_t count = set(least).size();
    for (double em = kLargest * least;; em = em > least ? std::max(least, kStep * em) : kStep * em)
        if (std::vector<Band> tried = set(em);
            fits(tried) && (em <= least || tried.size() <= count))
            return tried;
}
} // namespace

std::vector<Band> BoardSetter::rows(const BoardPart& part) const {
    return largest(least_, room_.height(), [&](double em) { return rowsAt(part, em); });
}

std::vector<Band> BoardSetter::loads(const BoardLoads& loads) const {
    return largest(kBoardLesser * least_, room_.height(),
                   [&](double em) { return loadsAt(loads, em); });
}

BoardSetter::Columns BoardSetter::columnsOf(const BoardPart& part, double em) const {
    const Type bold{em, Weight::Bold}, book{em};
    Columns c;
    c.left = 0.3 * em;
    for (const BoardGroup& group : part.groups)
        for (const BoardRow& row : group.rows) {
            c.label = std::max(c.label, ruler_.width(row.label, bold));
            c.dose = std::max(c.dose, ruler_.width(row.dose, bold));
            c.tempo = std::max(c.tempo, ruler_.width(row.tempo, book));
        }
    const double gap = kGap * em;
    c.label += gap;
    c.dose = std::min(c.dose, kDoseShare * room_.width());
    c.tempo = std::min(c.tempo, kTempoShare * room_.width());
    c.name = room_.width() - c.left - c.label - (c.dose > 0 ? c.dose + gap : 0) -
             (c.tempo > 0 ? c.tempo + gap : 0);
    return c;
}

// Between groups where it can be, else between rows with the head again.
std::vector<Band> BoardSetter::rowsAt(const BoardPart& part, double em) const {
    const Columns columns = columnsOf(part, em);
    const double gap = kGap * em;
    std::vector<Band> boards(1);
    for (const BoardGroup& group : part.groups) {
        const Band head = headOf(group, em);
        std::vector<Band> rows;
        double whole = head.height;
        for (const BoardRow& row : group.rows) {
            rows.push_back(rowOf(row, columns, em, room_.height() - head.height));
            whole += rows.back().height;
        }
        if (boards.back().height > 0 && boards.back().height + gap + whole > room_.height())
            boards.emplace_back();
        Band* board = &boards.back();
        if (board->height > 0) board->height += gap;
        double top = add(*board, head);
        const auto bracket = [&] {
            PagePen(ruler_, board->items)
                .line({0.05 * em, top + 0.12 * em}, {0.05 * em, board->height - 0.05 * em},
                      0.06 * em, Ink::Accent);
        };
        for (const Band& row : rows) {
            if (board->height + row.height > room_.height() && board->height > top) {
                bracket();
                board = &boards.emplace_back();
                top = add(*board, head);
            }
            add(*board, row);
        }
        bracket();
    }
    return boards;
}

Band BoardSetter::headOf(const BoardGroup& group, double em) const {
    Band band;
    BandColumn(band, ruler_, room_.width())
        .add(group.head, {{kBoardLesser * em, Weight::Bold}, Ink::Accent, Rank::Second});
    return band;
}

Band BoardSetter::rowOf(const BoardRow& row, const Columns& c, double em, double most) const {
    Band band;
    PagePen pen(ruler_, band.items);
    const double base = 0.95 * em;
    const Look label{{em, Weight::Bold}, Ink::Accent, Rank::Key};
    pen.left(row.label, {c.left, base}, c.label, label);
    double lines = 1;
    const auto column = [&](const QString& text, double right, double width, const Look& look) {
        double y = base;
        const QStringList wrapped = ruler_.wrap(text, look.type, width);
        for (const QString& line : wrapped) {
            pen.right(line, {right, y}, width, look);
            y += kPitch * em;
        }
        lines = std::max(lines, static_cast<double>(wrapped.size()));
    };
    const double right = room_.width();
    column(row.tempo, right, c.tempo, {{em}, Ink::Text, Rank::Key});
    column(row.dose, right - (c.tempo > 0 ? c.tempo + kGap * em : 0), c.dose,
           {{em, Weight::Bold}, Ink::Text, Rank::Key});
    Look name{{em, row.main ? Weight::Bold : Weight::Book}, Ink::Text, Rank::Key};
    QStringList wrapped = ruler_.wrap(row.name, name.type, c.name);
    const auto height = [&] {
        return kPitch * (em + static_cast<double>(wrapped.size() - 1) * name.type.em);
    };
    while (height() > most) {
        name.type.em *= kStep;
        wrapped = ruler_.wrap(row.name, name.type, c.name);
    }
    double y = base;
    for (const QString& line : wrapped) {
        pen.left(line, {c.left + c.label, y}, c.name, name);
        y += kPitch * name.type.em;
    }
    band.height = std::max(lines * kPitch * em, height());
    return band;
}

std::vector<Band> BoardSetter::loadsAt(const BoardLoads& loads, double em) const {
    if (!loads.labels.isEmpty()) return loadTables(loads, ruler_, room_, em);
    std::vector<Band> one(1);
    BandColumn(one[0], ruler_, room_.width())
        .add(loads.lines.empty()
                 ? sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "No member is active."))
                 : sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "No loads to choose here.")),
             {{em}, Ink::Quiet, Rank::Second});
    return one;
}

} // namespace bw
