// SPDX-License-Identifier: GPL-3.0-or-later
// A gym and its months. Everything but the results of members, which may be millions and stay in
// the gym file. Entries are shared and never change in place, so a copy is a cheap snapshot.
#pragma once
#include "blockwright/model/block.hpp"
#include "blockwright/model/kit.hpp"
#include "blockwright/model/limit_value.hpp"
#include "blockwright/model/member.hpp"
#include "blockwright/model/shelf.hpp"

#include <array>
#include <map>
#include <memory>
#include <string>
#include <vector>

namespace bw {

// Defaults: warm-up 0.25, power 0.5, strength 1, finisher 0.5.
struct SectionWeights {
    std::array<Share, kCount<SectionKind>> of; // by SectionKind
    SectionWeights();
    bool operator==(const SectionWeights&) const = default;
};

struct GymSettings {
    std::string name; // up to 200 characters
    MassUnit massUnit = MassUnit::Kg;
    Paper paper = Paper::A4;
    int classMinutes = 60;                     // 5 to 300
    int places = 12;                           // 1 to 400
    Millis opening{180'000}, closing{120'000}; // 0 to 60 min
    SectionWeights weights;
    std::map<std::string, LimitValue> limits; // rule.limit -> value; see the rule book
    Extras extras;
    bool operator==(const GymSettings&) const = default;
};

struct Gym {
    using BlockPtr = std::shared_ptr<const Block>;

    GymSettings settings;
    std::vector<KitItem> kit;
    Shelf shelf;
    std::map<Month, BlockPtr> blocks;
    std::vector<Member> members;

    [[nodiscard]] const KitItem* findKit(const KitId& id) const; // null when there is none
    [[nodiscard]] const Member* findMember(const MemberId& id) const;
    [[nodiscard]] BlockPtr block(Month m) const; // null when there is none
    [[nodiscard]] BlockPtr latest() const;       // null when there is none at all
    void put(Block block);
    void put(KitItem item); // adds, or takes the place of the one with the same id
    void put(Member member);
};

} // namespace bw
