// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/floor/lane_plan.hpp"

#include <algorithm>
#include <span>

namespace bw {

namespace {
LanePiece::Kind kindOf(FloorDoing doing) {
    switch (doing) {
    case FloorDoing::Talk: return LanePiece::Kind::Talk;
    case FloorDoing::Wait: return LanePiece::Kind::Wait;
    case FloorDoing::Rest: return LanePiece::Kind::Rest;
    case FloorDoing::Set: break;
    }
    return LanePiece::Kind::Set;
}

std::vector<LaneSection> sectionsOf(const FloorView& view, Millis opening) {
    const Block& block = *view.block;
    std::vector<LaneSection> out;
    Millis at = opening;
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s) {
        const Section& section = block.sections[static_cast<std::size_t>(s)];
        out.push_back({{s, -1, -1}, section.kind, at, at + section.talk, at + section.talk});
        for (const FloorRow& row : view.answer->timeline)
            if (row.place.section == s) out.back().to = std::max(out.back().to, row.to);
        at = out.back().to;
    }
    return out;
}

void addStay(Lane& lane, const LanePiece& piece) {
    if (piece.kind != LanePiece::Kind::Set && piece.kind != LanePiece::Kind::Wait) return;
    const Place group{piece.place.section, piece.place.group, -1};
    if (lane.stays.empty() || lane.stays.back().group != group)
        lane.stays.push_back({group, piece.from, piece.to});
    lane.stays.back().to = piece.to;
}

void endSection(Lane& lane, const LaneSection& section) {
    const Millis last = lane.pieces.empty() ? section.from : lane.pieces.back().to;
    const Millis from = std::max(last, section.talked);
    if (from < section.to)
        lane.pieces.push_back(
            {LanePiece::Kind::Through, section.place, 0, from, section.to, -1, 0, {}});
}

Lane laneOf(int member, std::span<const FloorRow> rows, const std::vector<LaneSection>& sections) {
    Lane lane;
    lane.member = member;
    auto row = rows.begin();
    for (const LaneSection& section : sections) {
        for (; row != rows.end() && row->place.section == section.place.section; ++row) {
            lane.pieces.push_back({kindOf(row->doing), row->place, row->round, row->from, row->to,
                                   -1, 0, row->lacked});
            addStay(lane, lane.pieces.back());
        }
        endSection(lane, section);
    }
    return lane;
}
} // namespace

std::vector<Lane> memberLanes(const FloorAnswer& answer, const std::vector<LaneSection>& sections) {
    std::vector<Lane> lanes;
    const std::span<const FloorRow> rows = answer.timeline;
    for (int m = 0; m < answer.members; ++m) {
        const auto mine = std::ranges::equal_range(rows, m, {}, &FloorRow::member);
        lanes.push_back(laneOf(m, {mine.begin(), mine.end()}, sections));
    }
    return lanes;
}

LanePlan LanePlan::of(const FloorView& view, LaneOrder order) {
    LanePlan plan;
    plan.order = order;
    if (!view.answer || view.answer->timeline.empty()) return plan;
    const GymSettings& gym = view.gym->settings;
    plan.opening = gym.opening;
    plan.wall = std::chrono::minutes(gym.classMinutes);
    plan.finish = view.answer->finish.p50;
    plan.sections = sectionsOf(view, gym.opening);
    plan.lanes =
        order == LaneOrder::Kit ? kitLanes(*view.answer) : memberLanes(*view.answer, plan.sections);
    return plan;
}

int LanePlan::pieceAt(int lane, Millis time) const {
    if (lane < 0 || lane >= static_cast<int>(lanes.size())) return -1;
    const auto& pieces = lanes[static_cast<std::size_t>(lane)].pieces;
    const auto after = std::ranges::upper_bound(pieces, time, {}, &LanePiece::from);
    const auto index = static_cast<int>(after - pieces.begin());
    return pieces.empty() ? -1 : std::max(0, index - 1);
}

} // namespace bw
