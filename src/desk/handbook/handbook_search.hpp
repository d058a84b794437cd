// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "desk/handbook/handbook_pages.hpp"

#include <QStringList>

namespace bw {

struct HandbookHit {
    HandbookSpot spot;
    QString line; // the first in which a word stands, without marks; empty: only in the heading
};

// Lower case, each once.
[[nodiscard]] QStringList handbookWords(const QString& typed);
// The parts in which all words stand, each at least as the beginning of a word; those that have
// them in the heading first, then in the order of the pages.
[[nodiscard]] QList<HandbookHit> searchHandbook(const QString& typed);

} // namespace bw
