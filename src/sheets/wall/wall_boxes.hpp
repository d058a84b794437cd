// SPDX-License-Identifier: GPL-3.0-or-later
// Every row, group and section of a wall sheet with its text broken into lines and its height.
#pragma once
#include "sheets/wall/wall_columns.hpp"

#include <vector>

namespace bw {

struct RowBox {
    QStringList name, dose, stacked, hints;
    double nameEm = 0;
    double height = 0;
};

struct GroupBox {
    QStringList rounds, rest;
    double noteHeight = 0;
    std::vector<RowBox> rows;
    // Of the rows from `first` to before `end`, the note beside them included.
    [[nodiscard]] double height(std::size_t first, std::size_t end) const;
    [[nodiscard]] double rowsHeight(std::size_t first, std::size_t end) const;
};

struct SectionBox {
    double head = 0;  // height above the first group
    double least = 0; // height that the name in the margin needs
    std::vector<GroupBox> groups;
};

struct WallBoxes {
    std::vector<SectionBox> sections;
    bool cramped = false;   // a name of usual length needs more than two lines
    double smallestKey = 0; // em of the smallest name; 0 without rows
};

[[nodiscard]] WallBoxes wallBoxes(const WallContent& content, const WallStyle& style,
                                  const WallType& type, const WallColumns& columns,
                                  const TypeRuler& ruler);

} // namespace bw
