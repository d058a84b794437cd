// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/band.hpp"

#include <algorithm>

namespace bw {

void BandColumn::add(const QString& text, const PagePen::Look& look) {
    for (const QString& line : proseLines(pen_.ruler(), text, look.type, width_)) {
        pen_.left(line, {left_, band_.height + 0.95 * look.type.em}, width_, look);
        band_.height += kPitch * look.type.em;
    }
}

void BandColumn::addFitted(const QString& text, PagePen::Look look, double least) {
    const auto lines = [&] { return pen_.ruler().wrap(text, look.type, width_).size(); };
    while (lines() > 2 && look.type.em > least) look.type.em = std::max(least, 0.94 * look.type.em);
    add(text, look);
}

QStringList proseLines(const TypeRuler& ruler, const QString& text, Type type, double width) {
    const auto full = TypeRuler::Lines::Full;
    const QStringList widest = ruler.wrap(text, type, width, full);
    if (widest.size() < 2) return widest;
    for (double room = width; room > 0.5 * width; room -= 0.05 * width) {
        const QStringList tried = ruler.wrap(text, type, room, full);
        if (tried.size() > widest.size()) break;
        if (ruler.width(tried.back(), type) > 0.25 * width) return tried;
    }
    return widest;
}

} // namespace bw
