// SPDX-License-Identifier: GPL-3.0-or-later
// What the coach looks for, in words: parts of a name or a pattern, "main", "new", and "not since"
// with a month (2026-07, July 2026, or July for the latest one).
#pragma once
#include "blockwright/almanac/almanac.hpp"

#include <QString>
#include <QStringList>

namespace bw {

struct AlmanacFilter {
    QStringList words; // each stands in the name or the pattern
    bool main = false, fresh = false;
    std::optional<Month> notSince; // also what no month in view used
    QString trouble;               // what could not be understood; empty when all was

    // `latest` is the last month in view.
    [[nodiscard]] static AlmanacFilter parse(const QString& text, Month latest);
    [[nodiscard]] bool fits(const AlmanacRow& row) const;
};

} // namespace bw
