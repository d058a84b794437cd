// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/floor/kit_plan.hpp"

#include "blockwright/model/fitting.hpp"
#include "core/floor/floor_plan.hpp"
#include "core/floor/served.hpp"

#include <algorithm>

namespace bw {

namespace {
using Lines = std::map<KitId, KitLine>;

KitLine& at(Lines& lines, const KitId& kit) {
    return lines.try_emplace(kit, KitLine{kit, 0, 0, {}, {}, {}}).first->second;
}

class KitPlanner {
public:
    KitPlanner(const Gym& gym, const Block& block) : gym_(gym), block_(block) {}

    void take(const Member& member, const std::vector<SlotTargets>& slots) {
        for (const SlotTargets& slot : slots)
            for (const WeekTarget& week : slot.weeks)
                if (week.target.loading && week.target.loading->kit)
                    take(member, slot.place, *week.target.loading);
    }
    KitSection section(int s) const {
        const Section& section = *sectionAt(block_, {s});
        const int groups = static_cast<int>(section.groups.size());
        KitSection out{{s}, std::holds_alternative<StartTogether>(section.start), {}, {}};
        if (groups == 0) return out;
        std::vector<int> heads(section.groups.size(), 0);
        for (const int g : startsOf(section.start, groups, gym_.settings.places))
            ++heads[static_cast<std::size_t>(g)];
        const int crowd = *std::max_element(heads.begin(), heads.end());
        Lines all;
        for (int g = 0; g < groups; ++g) {
            const Lines lines = stationLines({s, g}, crowd);
            for (const auto& [id, line] : lines) merge(at(all, id), line, out.together);
            out.stations.push_back({{s, g}, heads[static_cast<std::size_t>(g)], inOrder(lines)});
        }
        out.kit = inOrder(all);
        return out;
    }

private:
    // What members' cards ask for of a kind of kit at a station.
    struct Asked {
        KitLine line;
        int pieces = 1;
        std::set<MemberId> members;
    };

    void take(const Member& member, Place slot, const Loading& loading) {
        const std::pair key{Place{slot.section, slot.group}, *loading.kit};
        Asked& asked =
            cards_.try_emplace(key, Asked{KitLine{*loading.kit, 0, 0, {}, {}, {}}, 1, {}})
                .first->second;
        asked.members.insert(member.id);
        asked.pieces = std::max(asked.pieces, loading.pieces);
        if (!loading.empty) {
            asked.line.loads.insert(
                Mass::fromMicrograms(loading.total.micrograms() / loading.pieces).value());
            return;
        }
        asked.line.plates.insert(loading.plates.begin(), loading.plates.end());
        widen(asked.line.total, Range<Mass>(loading.total));
    }
    static void widen(std::optional<Range<Mass>>& total, const std::optional<Range<Mass>>& by) {
        if (!by) return;
        total = total ? Range<Mass>::between(std::min(total->lo(), by->lo()),
                                             std::max(total->hi(), by->hi()))
                      : *by;
    }
    Lines stationLines(Place group, int crowd) const {
        Lines lines;
        for (const Slot& slot : groupAt(block_, group)->slots) {
            const Exercise* e = slot.exercise ? gym_.shelf.find(*slot.exercise) : nullptr;
            const auto* needs = e ? kitAtHand(gym_, *e) : nullptr;
            if (!needs) continue;
            for (const auto& [id, count] : countsOf(*needs)) {
                KitLine& line = at(lines, id);
                line.wanted = std::max(line.wanted, crowd * count);
            }
        }
        for (const auto& [key, asked] : cards_) {
            if (key.first != group) continue;
            const auto [it, other] = lines.try_emplace(key.second, asked.line);
            if (other) // kit that the cards take instead, such as heavier bells
                it->second.wanted =
                    asked.pieces * std::min(crowd, static_cast<int>(asked.members.size()));
            else
                addLoads(it->second, asked.line);
        }
        return lines;
    }
    static void addLoads(KitLine& line, const KitLine& from) {
        line.loads.insert(from.loads.begin(), from.loads.end());
        line.plates.insert(from.plates.begin(), from.plates.end());
        widen(line.total, from.total);
    }
    static void merge(KitLine& sum, const KitLine& line, bool together) {
        sum.wanted = together ? std::max(sum.wanted, line.wanted) : sum.wanted + line.wanted;
        addLoads(sum, line);
    }
    // Of the loads on the cards, where the gym has told how many of each.
    static int stockFor(const KitItem& item, const KitLine& line) {
        if (line.loads.empty() || item.loads.empty()) return item.units;
        int sum = 0;
        for (const auto& [load, count] : item.loads)
            if (line.loads.contains(load)) sum += count;
        return std::min(sum, item.units);
    }
    std::vector<KitLine> inOrder(const Lines& lines) const {
        std::vector<KitLine> out;
        for (const KitItem& item : gym_.kit)
            if (const auto it = lines.find(item.id); it != lines.end()) {
                out.push_back(it->second);
                out.back().units = std::min(stockFor(item, it->second), it->second.wanted);
            }
        return out;
    }

    const Gym& gym_;
    const Block& block_;
    std::map<std::pair<Place, KitId>, Asked> cards_;
};
} // namespace

std::vector<KitSection> kitPlan(const Gym& gym, const Block& block, const Ledger* ledger) {
    KitPlanner planner(gym, block);
    if (ledger) {
        MonthTargets targets(gym, block);
        for (const Member& member : gym.members)
            if (member.active) planner.take(member, targets.of(*ledger, member));
    }
    std::vector<KitSection> out;
    out.reserve(block.sections.size());
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s)
        out.push_back(planner.section(s));
    return out;
}

} // namespace bw
