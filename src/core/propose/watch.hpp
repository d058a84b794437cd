// SPDX-License-Identifier: GPL-3.0-or-later
// A filling of all seats that changes one seat at a time, and how good it would be with any other
// choice: cheaper than the whole penalty, and finer, as it tells how far off each rule is.
#pragma once
#include "core/propose/model.hpp"

namespace bw::proposing {

class Watch {
public:
    explicit Watch(const Model& model);

    [[nodiscard]] const Picks& picks() const { return picks_; }
    void enter(const Picks& picks);
    void change(std::size_t seat, int choice);
    // Less is better. A rule that is not kept counts half as much again for each exchange that it
    // is away from being kept, up to four.
    [[nodiscard]] double score(std::size_t seat, int choice) const;
    // Would two seats have one and the same exercise, and no other to choose?
    [[nodiscard]] bool clash(std::size_t seat, int choice) const;

private:
    [[nodiscard]] double near(std::size_t seat, int choice) const;
    [[nodiscard]] double whole() const; // of room_

    const Model& m_;
    std::vector<std::vector<const PairTable*>> tables_; // by seat
    std::vector<std::vector<const Exercise*>> only_;    // by seat, choice; null: several
    std::vector<double> stride_;                        // by form: the most that an exchange adds
    Picks picks_;
    std::vector<double> values_; // of the forms
    mutable std::vector<double> room_;
};

} // namespace bw::proposing
