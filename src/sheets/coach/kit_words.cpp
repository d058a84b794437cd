// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/coach/kit_words.hpp"

#include "blockwright/ledger/mass_text.hpp"

#include <algorithm>

namespace bw {

namespace {
QString massList(const std::set<Mass>& masses, MassUnit unit) {
    QStringList texts;
    for (const Mass m : masses) texts << printed(massNumber(m, unit));
    return texts.join(QStringLiteral(", ")) + QLatin1Char(' ') + printed(std::string(wordOf(unit)));
}

QString loadsText(const KitLine& line, MassUnit unit) {
    QStringList parts;
    if (!line.loads.empty()) parts << massList(line.loads, unit);
    if (line.total) {
        const QString lo = printed(massText(line.total->lo(), unit)),
                      hi = printed(massText(line.total->hi(), unit));
        parts << (line.total->single()
                      ? lo
                      : sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "%1 to %2")).arg(lo, hi));
    }
    if (!line.plates.empty())
        parts << sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "plates %1"))
                     .arg(massList(line.plates, unit));
    return parts.join(QStringLiteral("; "));
}
} // namespace

QString KitWords::name(const KitId& kit) const {
    const KitItem* item = matter_.gym.findKit(kit);
    return printed(item ? item->name : kit.text());
}

QString KitWords::counted(const KitId& kit, int units) const {
    return QString::number(units) + QStringLiteral(" × ") + name(kit);
}

QString KitWords::letter(const KitStation& station) const {
    return printed(groupLetter(matter_.block, station.group));
}

QString KitWords::heading(const KitSection& section) const {
    return sectionName(sectionAt(matter_.block, section.section)->kind);
}

QString KitWords::people(const KitSection& section) const {
    const char* how = section.stations.size() < 2 ? QT_TRANSLATE_NOOP("bw::sheets", "%1 people")
                      : section.together
                          ? QT_TRANSLATE_NOOP("bw::sheets", "%1 people, all at the same station")
                          : QT_TRANSLATE_NOOP("bw::sheets", "%1 people, over the stations");
    return sheetSay(how).arg(matter_.gym.settings.places);
}

QString KitWords::loads(const KitLine& line) const {
    const KitItem* item = matter_.gym.findKit(line.kit);
    const bool known = !line.loads.empty() || line.total;
    if (known || !item || (item->loads.empty() && !item->bar)) return loadsText(line, unit_);
    return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "loads are still to be found"));
}

QString KitWords::standing(const KitMove& move) const {
    if (move.before == 0) return {};
    const QString out =
        move.now > move.before
            ? sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "%1 of them already out")).arg(move.before)
            : sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "already out"));
    if (move.added.empty()) return out;
    return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "%1, but for %2"))
        .arg(out, massList(move.added, unit_));
}

QString KitWords::shortage(const KitLine& line) const {
    if (!line.shared()) return {};
    const char* text = line.units == 0
                           ? QT_TRANSLATE_NOOP("bw::sheets", "the gym has none; %1 would be wanted")
                           : QT_TRANSLATE_NOOP("bw::sheets", "in turns; %1 would be wanted");
    return sheetSay(text).arg(line.wanted);
}

QString KitWords::starting(const KitSection& section, std::size_t station) const {
    const int heads = section.stations[station].heads;
    if (section.stations.size() < 2) return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "all here"));
    if (section.together)
        return station == 0 ? sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "all start here"))
                            : sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "then all here"));
    return sheetSay(heads == 1 ? QT_TRANSLATE_NOOP("bw::sheets", "%1 starts here")
                               : QT_TRANSLATE_NOOP("bw::sheets", "%1 start here"))
        .arg(heads);
}

QString KitWords::sharing(const KitSection& section, std::size_t station, const KitId& kit) const {
    QStringList letters;
    for (const std::size_t other : kitSharers(section, station, kit))
        letters << letter(section.stations[other]);
    if (letters.isEmpty()) return {};
    return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "shared with %1"))
        .arg(letters.join(QStringLiteral(", ")));
}

} // namespace bw
