// SPDX-License-Identifier: GPL-3.0-or-later
// Depth first through all choices, leaving out what can't stay within a penalty that is asked for.
// Asked for one penalty after another, each the least that was not ruled out, the first answer is
// proved best.
#pragma once
#include "core/floor/crew.hpp"
#include "core/propose/casting.hpp"

namespace bw::proposing {

struct Outcome {
    std::optional<Cast> found; // the first in the order of the search, with any number of threads
    bool complete = true;      // else stopped: nothing found says nothing
    bool cut = false;          // something was left out as it would cost more
};

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
    friend class Walk;
    struct Level { // of a seat: its choices by what they cost alone
        std::vector<double> alone;
        std::vector<double> most; // by choice, then form: the most of the choices up to it
    };
    // With a seat's choice made, the least that a later seat then costs, alone and together.
    struct Pull {
        int seat;
        const PairTable* table;
        std::vector<double> least;
    };

    const Model& model_;
    std::size_t forms_;
    std::vector<int> order_; // of the seats
    std::vector<Level> levels_;
    std::vector<std::vector<Pull>> later_; // by seat: seats that come later in the order
    double start_ = 0;                     // fixed part and the least of all matters
    double bound_ = 0;
};

} // namespace bw::proposing
