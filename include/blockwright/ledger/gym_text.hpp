// SPDX-License-Identifier: GPL-3.0-or-later
// What a gym says of itself and of its kit, as a coach reads and writes it, a line each.
//   class length  60 min      opening  3:00      a warm-up set counts  0.25
//   loads  8x2, 12x4, 16      bar  20            plates  20x8, 10x8, 1.25x4
// What the text functions write, the others read back to the same.
#pragma once
#include "blockwright/ledger/stock_text.hpp"
#include "blockwright/model/gym.hpp"

#include <string>
#include <string_view>

namespace bw {

enum class GymField {
    Name,
    Unit,
    Paper,
    Minutes,
    Places,
    OpeningTime,
    ClosingTime,
    WarmUp, // how much a set of the section counts
    Power,
    Strength,
    Finisher
};
enum class KitField { Name, Units, Claim, Loads, Bar, Plates };

[[nodiscard]] std::string gymFieldText(const GymSettings& settings, GymField field);
// Why() says what is not understood, and what is.
[[nodiscard]] Result<GymSettings> withGymField(GymSettings settings, GymField field,
                                               std::string_view typed);

// Loads in the gym's unit; empty: not told.
[[nodiscard]] std::string kitFieldText(const Gym& gym, const KitItem& item, KitField field);
// A load that was shown rounded and is typed so again stays what it was. Kit that is held through
// the group is as many as its loads; loads of kit that nobody has counted yet make it owned.
[[nodiscard]] Result<KitItem> withKitField(const Gym& gym, KitItem item, KitField field,
                                           std::string_view typed);

} // namespace bw
