// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/slot_words.hpp"
#include "blockwright/ledger/mass_text.hpp"
#include "blockwright/model/shorthand.hpp"
#include "sheets/worded.hpp"

#include <array>

namespace bw {

QString slotLabel(const Block& block, Place slot) {
    return printed(groupLetter(block, slot)) + QString::number(slot.slot + 1);
}

QString printedDose(const Dose& dose, Sides sides) {
    return printed(doseText(dose, sides))
        .replace(QLatin1String("/side"), sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "/side")));
}

QString slotDose(const Shelf& shelf, const Slot& slot) {
    if (!slot.dose) return {};
    const Exercise* e = slot.exercise ? shelf.find(*slot.exercise) : nullptr;
    return printedDose(*slot.dose, e ? e->sides : Sides::Both);
}

QString slotPlan(const Shelf& shelf, const Slot& slot) {
    QStringList parts;
    if (const QString dose = slotDose(shelf, slot); !dose.isEmpty()) parts << dose;
    if (slot.tempo) parts << printed(slot.tempo->text());
    if (slot.effort)
        parts << sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "%1 in reserve"))
                     .arg(printed(effortText(*slot.effort)));
    return parts.join(QStringLiteral(" · "));
}

QString roundsAndRest(const Group& group) {
    const bool one = group.rounds == Range<int>(1);
    const QString rounds = sheetSay(one ? QT_TRANSLATE_NOOP("bw::sheets", "%1 round")
                                        : QT_TRANSLATE_NOOP("bw::sheets", "%1 rounds"))
                               .arg(printed(roundsText(group.rounds)));
    if (group.rest.hi() == Millis{0})
        return rounds + QStringLiteral(", ") + sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "no rest"));
    const QString rest = printed(restText(group.rest));
    return rounds + QStringLiteral(", ") +
           sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "rest %1")).arg(rest);
}

QString openSlotWords(const Slot& slot) {
    QStringList wanted;
    if (slot.role) wanted << vocabularyWord(slot.role->text());
    for (const Pattern p : slot.patterns) wanted << vocabularyWord(wordOf(p));
    if (wanted.isEmpty()) return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "open"));
    return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "open: %1"))
        .arg(wanted.join(QStringLiteral(", ")));
}

QString printedDemand(Demand demand) {
    static constexpr std::array words{
        QT_TRANSLATE_NOOP("bw::sheets", "grip"),     QT_TRANSLATE_NOOP("bw::sheets", "lower back"),
        QT_TRANSLATE_NOOP("bw::sheets", "overhead"), QT_TRANSLATE_NOOP("bw::sheets", "knee"),
        QT_TRANSLATE_NOOP("bw::sheets", "impact"),   QT_TRANSLATE_NOOP("bw::sheets", "breath")};
    return sheetSay(words[static_cast<std::size_t>(demand)]);
}

QString rirWords(double reps) {
    return sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "%1 in reserve")).arg(printed(rirText(reps)));
}

void eachGroup(const Block& block, int section,
               const std::function<void(const Group&, Place)>& visit) {
    const Section& s = *sectionAt(block, {section});
    for (int g = 0; g < static_cast<int>(s.groups.size()); ++g)
        if (const Group& group = *groupAt(block, {section, g}); !group.slots.empty())
            visit(group, {section, g});
}

} // namespace bw
