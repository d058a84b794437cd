// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/must_change.hpp"

#include <QCoreApplication>

namespace bw {

void markMustChange(Draft& draft) {
    if (!draft.block()) return;
    const QString words = QCoreApplication::translate("bw::Bench", "must change");
    std::map<Place, QString> rows;
    for (const Finding& f : draft.verdict().findings) {
        const bool tooLong = f.rule == "staleness" || f.rule == "carry-over";
        if (tooLong && slotAt(*draft.block(), f.place)) rows.emplace(f.place, words);
    }
    if (!rows.empty()) draft.mark(rows, rows.begin()->first);
}

} // namespace bw
