// SPDX-License-Identifier: GPL-3.0-or-later
// All answers within a penalty that is asked for. Asked for one penalty after another, each the
// least that was not ruled out, the first answer is proved best.
#pragma once
#include "core/floor/crew.hpp"
#include "core/propose/walk.hpp"

namespace bw::proposing {

class Search {
public:
    explicit Search(const Model& model);

    // No answer has less.
    [[nodiscard]] double bound() const { return bound_; }
    // An answer of at most this penalty.
    [[nodiscard]] Outcome within(double penalty, const Apart& apart, const Crew& crew) const;
    // The next penalty that an answer can have.
    [[nodiscard]] double next(double penalty) const;

private:
    const Model& model_;
    double bound_ = 0;
};

} // namespace bw::proposing
