// SPDX-License-Identifier: GPL-3.0-or-later
// What a coach says of the gym and its kit. Each is one undoable step; no kind of kit is ever taken
// away, only owned no more, so exercises and past months keep its name.
#pragma once
#include "blockwright/ledger/gym_text.hpp"
#include "edit/block_verbs.hpp"

namespace bw {

[[nodiscard]] Did writeGymField(OpenGym& gym, GymField field, std::string_view typed);
[[nodiscard]] Did writeKitField(OpenGym& gym, const KitId& id, KitField field,
                                std::string_view typed);

// Owned: as many as its loads, else as many as are usual for the gym's places; what is owned
// already stays as it is. Not owned: none, its loads are kept.
[[nodiscard]] Did ownKit(OpenGym& gym, const KitId& id, bool owned);
// What most small gyms have, of what this one knows and does not own yet.
[[nodiscard]] Did ownUsualKit(OpenGym& gym);

// A kind of kit that the gym did not know; it owns one. Why() when the name can't be taken.
[[nodiscard]] Result<KitId> addKit(OpenGym& gym, std::string_view name);

// How many a gym with so many places usually has, at least 1.
[[nodiscard]] int usualUnits(const KitId& id, int places);
[[nodiscard]] bool usuallyOwned(const KitId& id);

} // namespace bw
