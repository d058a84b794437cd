// SPDX-License-Identifier: GPL-3.0-or-later
// Where the coach was, and how wide the parts of each page are, from one start to the next.
#pragma once
#include "blockwright/model/calendar.hpp"

#include <QString>

#include <filesystem>
#include <optional>

class QWidget;

namespace bw {

struct KeptView {
    QString place; // id of the action that leads there; empty: beside the places
    std::optional<Month> month;
    int week = 0; // its number; 0: none
};

// Of one gym file, that of the last one closed; none: it was another.
[[nodiscard]] std::optional<KeptView> keptView(const std::filesystem::path& gymFile);
void keepView(const std::filesystem::path& gymFile, const KeptView& view);

// Gives each splitter below `pages` the sizes it was left with, and keeps what it is dragged to.
void keepSplits(QWidget& pages);

} // namespace bw
