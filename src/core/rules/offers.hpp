// SPDX-License-Identifier: GPL-3.0-or-later
// What the Shelf has to offer to a draft, in an order of preference, kept for all that ask while a
// month is checked.
#pragma once
#include "blockwright/rules/facts.hpp"

#include <map>
#include <string>

namespace bw {

class Offers {
public:
    explicit Offers(const Facts& facts);

    // Neither retired nor in the draft, and the gym has its kit.
    [[nodiscard]] bool free(const Exercise& e) const;
    // Those that are free and have one of the roles: what this gym has done before first, then by
    // skill, then as the Shelf stands.
    [[nodiscard]] const std::vector<const Exercise*>&
    ofRoles(const std::vector<std::string_view>& roles);
    void rank(std::vector<const Exercise*>& exercises) const; // into that order

private:
    const Gym& gym_; // these two outlive the facts
    const History& history_;
    std::vector<const Exercise*> drafted_;
    std::map<std::string, std::vector<const Exercise*>> known_; // by the roles, joined
};

} // namespace bw
