// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/minute_rail_plan.hpp"

#include <algorithm>

namespace bw {

namespace {
constexpr ExactTime kStep = std::chrono::minutes(5);
constexpr ExactTime kMargin = std::chrono::minutes(1);

int countOpen(const Group& group) {
    return static_cast<int>(std::count_if(group.slots.begin(), group.slots.end(),
                                          [](const Slot& slot) { return slot.open(); }));
}

ExactTime middleRest(const Group& group) {
    return ExactTime{(group.rest.lo() + group.rest.hi()).count() * 2};
}

RailPiece edge(RailPiece::Kind kind, ExactTime start, Millis length) {
    RailPiece piece;
    piece.kind = kind;
    piece.start = start;
    piece.end = start + length;
    piece.time = {length, length, length};
    return piece;
}

RailPiece sectionPiece(const Block& block, int index, const SectionTime& time, ExactTime start) {
    const Section& section = block.sections[static_cast<std::size_t>(index)];
    RailPiece piece;
    piece.place = {index, -1, -1};
    piece.section = section.kind;
    piece.start = start;
    piece.end = start + time.total.planned;
    piece.time = time.total;
    piece.budget = section.budget;
    ExactTime at = start + section.talk;
    for (std::size_t g = 0; g < section.groups.size(); ++g) {
        const Place place{index, static_cast<int>(g), -1};
        const Figures& took = time.groups[g].total;
        const int open = countOpen(section.groups[g]);
        piece.groups.push_back(
            {place, groupLetter(block, place), at, at + took.planned, took, open});
        piece.openSlots += open;
        at += took.planned + middleRest(section.groups[g]);
    }
    return piece;
}

ExactTime scaleFor(ExactTime most) { return ((most + kMargin) / kStep + 1) * kStep; }

ExactTime spanOf(const RailPlan& plan) {
    ExactTime most = plan.wall;
    for (const RailPiece& piece : plan.pieces)
        most = std::max({most, piece.end, piece.latest(),
                         piece.budget ? piece.start + piece.budget->hi() : ExactTime{}});
    return scaleFor(most);
}

std::vector<Place> placesLike(const RailPlan& plan, Place like) {
    std::vector<Place> places;
    for (const RailPiece& piece : plan.pieces) {
        if (piece.kind != RailPiece::Kind::Section) continue;
        if (like.isSection())
            places.push_back(piece.place);
        else
            for (const RailGroup& group : piece.groups) places.push_back(group.place);
    }
    return places;
}
} // namespace

RailPlan RailPlan::of(const GymSettings& gym, const Block& block, const SessionTime& time) {
    RailPlan plan;
    plan.total = time.total;
    plan.wall = std::chrono::minutes(gym.classMinutes);
    plan.openSlots = time.openSlots;
    plan.pieces.reserve(block.sections.size() + 2);
    plan.pieces.push_back(edge(RailPiece::Kind::Opening, ExactTime{}, gym.opening));
    for (std::size_t s = 0; s < block.sections.size(); ++s)
        plan.pieces.push_back(
            sectionPiece(block, static_cast<int>(s), time.sections[s], plan.pieces.back().end));
    plan.pieces.push_back(edge(RailPiece::Kind::Closing, plan.pieces.back().end, gym.closing));
    plan.span = spanOf(plan);
    return plan;
}

void RailPlan::hold(ExactTime latest) {
    if (pieces.empty()) return;
    span = std::max(span, std::min(scaleFor(latest), span + span / 2));
}

const RailPiece* RailPlan::sectionAt(Place place) const {
    const auto index = static_cast<std::size_t>(place.section + 1); // behind the opening
    if (place.isSession() || index + 1 >= pieces.size()) return nullptr;
    return &pieces[index];
}

const RailGroup* RailPlan::groupAt(Place place) const {
    const RailPiece* piece = sectionAt(place);
    if (!piece || place.group < 0 || place.group >= static_cast<int>(piece->groups.size()))
        return nullptr;
    return &piece->groups[static_cast<std::size_t>(place.group)];
}

Place RailPlan::beside(Place from, int step) const {
    const auto places = placesLike(*this, from);
    const auto here = std::find(places.begin(), places.end(), from);
    if (here == places.end()) return first();
    const auto index = static_cast<int>(here - places.begin()) + step;
    if (index < 0 || index >= static_cast<int>(places.size())) return from;
    return places[static_cast<std::size_t>(index)];
}

Place RailPlan::first() const { return pieces.size() > 2 ? pieces[1].place : Place{}; }
Place RailPlan::last() const {
    return pieces.size() > 2 ? pieces[pieces.size() - 2].place : Place{};
}

Place railPlace(Place place) {
    place.slot = -1;
    return place;
}

} // namespace bw
