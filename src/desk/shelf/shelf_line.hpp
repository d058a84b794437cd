// SPDX-License-Identifier: GPL-3.0-or-later
// An exercise as a line of the Shelf's table: what its cells say, and what a word finds it by.
#pragma once
#include "blockwright/model/gym.hpp"

#include <QString>

#include <array>
#include <optional>

namespace bw {

struct ShelfLine {
    enum Column { Name, Pattern, Roles, Kit, Demands, Load, Last, Months, kColumns };

    Shelf::Entry entry;
    std::array<QString, kColumns> cells;
    QString words;             // small, each word behind a blank
    std::optional<Month> last; // that used it
    int months = 0;            // that used it

    void setUse(std::optional<Month> lastUsed, int monthsUsed);
};

[[nodiscard]] ShelfLine shelfLine(const Gym& gym, Shelf::Entry entry);
// Small letters, hyphens and commas as blanks, a blank before.
[[nodiscard]] QString findable(const QString& text);

} // namespace bw
