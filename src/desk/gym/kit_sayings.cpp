// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/gym/kit_sayings.hpp"

#include "blockwright/ledger/stock_text.hpp"
#include "desk/floor/floor_words.hpp"
#include "desk/frame/words.hpp"

#include <QCoreApplication>
#include <QStringList>

namespace bw {

namespace {
struct Sayings {
    Q_DECLARE_TR_FUNCTIONS(bw::KitSayings)
};

QString marksOf(const Block& block, const std::vector<Place>& places) {
    QStringList marks;
    for (const Place& place : places) marks << slotMark(block, place);
    return marks.join(QStringLiteral(", "));
}

QString first(const std::vector<const Exercise*>& exercises) {
    constexpr std::size_t kNamed = 4;
    QStringList names;
    for (const Exercise* e : exercises) {
        if (names.size() == static_cast<qsizetype>(kNamed)) break;
        names << plain(e->name);
    }
    const QString list = names.join(QStringLiteral(", "));
    return exercises.size() > kNamed ? Sayings::tr("%1 and others").arg(list) : list;
}
} // namespace

QString kitNeeded(const Gym& gym, const KitItem& item, KitUse use, std::optional<Month> month) {
    QStringList said;
    said << (use.can == 0 ? Sayings::tr("No exercise of the Shelf asks for it.")
                          : Sayings::tr("Exercises that can use it: %1. That need it: %2.")
                                .arg(use.can)
                                .arg(use.must));
    const auto block = month ? gym.block(*month) : nullptr;
    const auto places = block ? slotsAsking(gym, *block, item.id) : std::vector<Place>();
    if (!places.empty())
        said << Sayings::tr("In %1: %2.").arg(monthName(*month), marksOf(*block, places));
    const int told = piecesOf(item.loads);
    if (told > 0 && item.units > 0 && item.claim == Claim::Group && told != item.units)
        said << Sayings::tr("Its weights make %1, not %2.").arg(told).arg(item.units);
    return QStringLiteral("%1: %2").arg(plain(item.name), said.join(QLatin1Char(' ')));
}

QString kitLost(const Gym& gym, const KitItem& item, const KitLoss& loss,
                std::optional<Month> month) {
    QStringList said;
    if (!loss.exercises.empty())
        said << Sayings::tr("Exercises that can't be done here now: %1 (%2).")
                    .arg(loss.exercises.size())
                    .arg(first(loss.exercises));
    const auto block = month ? gym.block(*month) : nullptr;
    const auto at = block ? loss.slots.find(*month) : loss.slots.end();
    if (at != loss.slots.end())
        said << Sayings::tr("%1 stands on it in %2.")
                    .arg(monthName(*month), marksOf(*block, at->second));
    if (said.isEmpty()) return {};
    return QStringLiteral("%1: %2").arg(plain(item.name), said.join(QLatin1Char(' ')));
}

} // namespace bw
