// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/propose/model.hpp"

namespace bw::proposing {

// Answers that are taken already, and how many seats another must do differently from each.
struct Apart {
    std::vector<Cast> from;
    int seats = 1;
    [[nodiscard]] bool holds(const Cast& cast) const;
};

// A member of each seat's choice, no exercise twice, apart from the answers before; the first of
// them by the order of the members. None when there is none.
[[nodiscard]] std::optional<Cast> castOf(const Model& model, const Picks& picks,
                                         const Apart& apart);

} // namespace bw::proposing
