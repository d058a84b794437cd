// SPDX-License-Identifier: GPL-3.0-or-later
// Sets the rows and the loads of a section onto as few boards as they take, as large as those have
// room for.
#pragma once
#include "sheets/band.hpp"
#include "sheets/board/board_words.hpp"

namespace bw {

// Of the type that is read from afar, for what may be read from nearer.
inline constexpr double kBoardLesser = 0.6;

class BoardSetter {
public:
    // `room` is for one board; no type that is read from afar is smaller than `least`, an em in
    // millimetres, but for a single row that is too long for a whole board.
    BoardSetter(const TypeRuler& ruler, QSizeF room, double least)
        : ruler_(ruler), room_(room), least_(least) {}

    [[nodiscard]] std::vector<Band> rows(const BoardPart& part) const;
    [[nodiscard]] std::vector<Band> loads(const BoardLoads& loads) const;

private:
    struct Columns {
        double left = 0, label = 0, name = 0, dose = 0, tempo = 0;
    };
    [[nodiscard]] Columns columnsOf(const BoardPart& part, double em) const;
    [[nodiscard]] std::vector<Band> rowsAt(const BoardPart& part, double em) const;
    [[nodiscard]] Band headOf(const BoardGroup& group, double em) const;
    [[nodiscard]] Band rowOf(const BoardRow& row, const Columns& c, double em, double most) const;
    [[nodiscard]] std::vector<Band> loadsAt(const BoardLoads& loads, double em) const;

    const TypeRuler& ruler_;
    QSizeF room_;
    double least_;
};

} // namespace bw
