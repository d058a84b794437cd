// SPDX-License-Identifier: GPL-3.0-or-later
// One walk down a part of the tree of all choices. At each step what is left of every seat's
// choices is thinned out: by what it costs beside the choices made, and by the rules that must be
// kept for the penalty that is asked for.
#pragma once
#include "core/propose/casting.hpp"

#include <functional>

namespace bw::proposing {

struct Outcome {
    std::optional<Cast> found; // the first in the order of the search, with any number of threads
    bool complete = true;      // else stopped: nothing found says nothing
    bool cut = false;          // something was left out as it would cost more
};

class Walk {
public:
    Walk(const Model& model, double most, const Apart& apart);

    // Of all answers; above `most` when there is none within it.
    [[nodiscard]] double bound() const { return depths_.front().bound; }
    [[nodiscard]] bool cut() const { return outcome_.cut; } // of the choices to begin with
    // The seat to begin with, and how many choices it has left.
    [[nodiscard]] int firstSeat() const { return narrowest(0); }
    [[nodiscard]] int width() const;
    // All that begins with the one of these choices.
    [[nodiscard]] Outcome from(int first, const std::function<bool()>& ended);

private:
    struct Left {                 // of a seat
        std::vector<int> choices; // cheapest first
        std::vector<double> near; // by choice, alone and beside the choices made
        std::vector<double> most; // by form
        double least = 0;
        bool stale = true; // most and least
    };
    struct Depth {
        double cost = 0; // of the choices made
        double bound = 0;
        std::vector<char> made; // by seat
        std::vector<double> forms;
        std::vector<Left> left;
    };

    [[nodiscard]] bool thin(Depth& d); // false: nothing is left
    void refresh(Depth& d);
    void findRequired(double slack);
    [[nodiscard]] double matters() const;
    [[nodiscard]] bool drop(Depth& d, double slack);
    [[nodiscard]] int narrowest(int depth) const;
    [[nodiscard]] bool step(int depth, int seat, int choice);
    void descend(int depth);
    void arrive();

    const Model& m_;
    double most_;
    const Apart& apart_;
    Picks picks_;
    std::vector<Depth> depths_;
    std::vector<double> widest_; // by form, the most that it can still be
    std::vector<int> required_;  // forms that must not be broken
    Sums room_;
    Outcome outcome_;
    std::function<bool()> ended_;
    int nodes_ = 0;
};

} // namespace bw::proposing
