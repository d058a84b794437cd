// SPDX-License-Identifier: GPL-3.0-or-later
// The session laid along the clock: when each piece starts and ends this week if all goes as
// planned. No pixels here.
#pragma once
#include "blockwright/model/place.hpp"
#include "blockwright/time/timing.hpp"

#include <optional>
#include <string>
#include <vector>

namespace bw {

struct RailGroup {
    Place place;
    std::string letter;
    ExactTime start{}, end{}; // from the start of class; the rest before the next group left out
    Figures time;
    int openSlots = 0;
};

struct RailPiece {
    enum class Kind { Opening, Section, Closing };
    Kind kind = Kind::Section;
    Place place; // the session, for opening and closing
    SectionKind section = SectionKind::Strength;
    ExactTime start{}, end{};
    Figures time;
    std::optional<Range<Millis>> budget; // counted from start
    std::vector<RailGroup> groups;
    int openSlots = 0;

    [[nodiscard]] ExactTime earliest() const { return start + time.low; }
    [[nodiscard]] ExactTime latest() const { return start + time.high; }
};

struct RailPlan {
    std::vector<RailPiece> pieces; // none: there is no month
    Figures total;
    ExactTime wall{}; // the end of class
    ExactTime
        span{}; // what the scale must hold: whole five minutes, a little more than all there is
    int openSlots = 0;

    static RailPlan of(const GymSettings& gym, const Block& block, const SessionTime& time);
    // Widens the scale for something later; at most by half, so that the plan stays readable.
    void hold(ExactTime latest);

    [[nodiscard]] const RailPiece* sectionAt(Place place) const; // null: none
    [[nodiscard]] const RailGroup* groupAt(Place place) const;
    // Where a step to the right (1) or left (-1) leads, among sections from a section, among the
    // groups of all sections from a group. The end of the rail: stays.
    [[nodiscard]] Place beside(Place from, int step) const;
    [[nodiscard]] Place first() const; // the first section; the session when there is none
    [[nodiscard]] Place last() const;
};

// The section or group that a place belongs to: a slot to its group.
[[nodiscard]] Place railPlace(Place place);

} // namespace bw
