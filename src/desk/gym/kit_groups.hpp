// SPDX-License-Identifier: GPL-3.0-or-later
// The kinds of kit as a coach walks past them, part by part of the floor.
#pragma once
#include "blockwright/model/gym.hpp"

#include <QString>

#include <vector>

namespace bw {

struct KitGroup {
    QString title;
    std::vector<KitId> kit; // in the gym's order
};

// Every kind the gym knows, once; parts without any are left out, but not the last, for what this
// gym has named itself.
[[nodiscard]] std::vector<KitGroup> kitGroups(const Gym& gym);

} // namespace bw
