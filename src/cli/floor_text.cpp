// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shorthand.hpp"
#include "cli/floor_words.hpp"
#include "cli/heading.hpp"
#include "cli/table.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

namespace bw::cli {

namespace {
using enum Table::Align;

std::string clock(MeanTime t) { return clockText(Millis{std::llround(t.count())}); }
std::string percent(double share) { return fmt::format("{:.0f} %", share * 100); }

std::string nameOf(const Gym& gym, const KitId& id) {
    const KitItem* item = gym.findKit(id);
    return item ? item->name : id.text();
}

std::string endsText(const Gym& gym, const Block& block, const FloorAnswer& a) {
    Table table({Left, Right, Right, Right, Right, Left});
    table.add({"ends at", "mean", "10 %", "half", "90 %"});
    const auto add = [&](std::string name, const FloorTimes& t, std::string over) {
        table.add({std::move(name), clock(t.mean), clock(t.p10), clock(t.p50), clock(t.p90),
                   std::move(over)});
    };
    for (std::size_t s = 0; s < a.sections.size(); ++s)
        add(std::string(wordOf(a.sections[s].kind)), a.sections[s].end,
            block.sections[s].budget ? percent(a.sections[s].overBudget) + " over budget" : "");
    add("class", a.finish,
        fmt::format("{} over {}", percent(a.overrunChance),
                    clockText(std::chrono::minutes{gym.settings.classMinutes})));
    return table.text();
}

std::string roundsText(const Block& block, const FloorAnswer& a) {
    Table table({Left, Right, Right});
    table.add({"group", "rounds", "reach all"});
    for (std::size_t s = 0; s < a.sections.size(); ++s)
        for (std::size_t g = 0; g < a.sections[s].groups.size(); ++g) {
            const Place place{static_cast<int>(s), static_cast<int>(g), -1};
            const FloorGroupRounds& done = a.sections[s].groups[g];
            table.add({groupLetter(block, place), fmt::format("{:.2f}", done.mean),
                       percent(done.reachedHigh)});
        }
    return table.text();
}

std::string waitsText(const Gym& gym, const FloorAnswer& a) {
    Table table({Left, Right, Right, Right});
    table.add({"waiting of a member", "mean", "90 %", "in use"});
    for (const FloorKitUse& use : a.kit)
        table.add(
            {nameOf(gym, use.kit), clock(use.wait.mean), clock(use.wait.p90), percent(use.busy)});
    table.add({"in all", clock(a.wait.mean), clock(a.wait.p90)});
    return table.text();
}

std::string headsText(const Block& block, const FloorHeads& heads) {
    std::string text;
    for (std::size_t s = 0; s < heads.counts.size(); ++s) {
        if (heads.counts[s].empty()) continue;
        if (!text.empty()) text += "; ";
        text += wordOf(block.sections[s].kind);
        for (std::size_t g = 0; g < heads.counts[s].size(); ++g) {
            const Place place{static_cast<int>(s), static_cast<int>(g), -1};
            text += fmt::format(" {}{}", groupLetter(block, place), heads.counts[s][g]);
        }
    }
    return heads.allTried ? text : text + " (not all could be tried)";
}

// ", 16 kg", ", 2 × 16 kg"; empty where loads are not looked at.
std::string loadText(const Gym& gym, const OneMoreUnit& more) {
    if (!more.load) return {};
    const std::string times = more.units > 1 ? fmt::format("{} × ", more.units) : "";
    return gym.settings.massUnit == MassUnit::Lb
               ? fmt::format(", {}{:.4g} lb", times, more.load->lb())
               : fmt::format(", {}{:.4g} kg", times, more.load->kg());
}

std::string changeText(const Gym& gym, const Block& block, const FloorBuy& buy) {
    if (const auto* unit = std::get_if<OneMoreUnit>(&buy.change)) {
        return "one more: " + nameOf(gym, unit->kit) + loadText(gym, *unit);
    }
    if (const auto* best = std::get_if<BestHeads>(&buy.change))
        return "starting at " + headsText(block, best->heads);
    return "one member fewer";
}

std::string buysText(const Gym& gym, const Block& block, const FloorAnswer& a) {
    if (a.buys.empty()) return {};
    std::string text = "\nwhat buys the most, on average\n";
    for (const FloorBuy& buy : a.buys)
        text += fmt::format("  {:>+7.0f} s  {}\n", -buy.saves.count() / 1000,
                            wrapped(changeText(gym, block, buy), 76, 13));
    return text;
}

std::string doingText(const Block& block, const FloorRow& row) {
    const std::string place = placeText(block, row.place);
    switch (row.doing) {
    case FloorDoing::Wait: return "waits for " + place;
    case FloorDoing::Set: return fmt::format("{} round {}", place, row.round + 1);
    case FloorDoing::Rest: return "rests";
    case FloorDoing::Talk: return "listens";
    }
    return {};
}

std::string timelineText(const Block& block, const FloorAnswer& a) {
    if (a.timeline.empty()) return {};
    Table table({Right, Right, Right, Left});
    table.add({"member", "from", "to", fmt::format("in run {}", a.medianRun + 1)});
    for (const FloorRow& row : a.timeline)
        table.add({std::to_string(row.member + 1), clockText(row.from), clockText(row.to),
                   doingText(block, row)});
    return '\n' + table.text();
}
} // namespace

std::string floorText(const Gym& gym, const Block& block, const FloorOptions& options,
                      const FloorAnswer& a) {
    std::string text =
        fmt::format("{} · week {} · {} {} · {}{}\n\n", headingOf(gym, block), options.week.number(),
                    a.members, a.members == 1 ? "member" : "members",
                    options.steady ? std::string("steady")
                                   : fmt::format("{} {}, seed {}", a.runs,
                                                 a.runs == 1 ? "run" : "runs", options.seed),
                    options.loadAware ? " · by load" : "");
    text += endsText(gym, block, a) + '\n' + roundsText(block, a) + '\n' + waitsText(gym, a);
    if (a.best) text += "\nbest start: " + wrapped(headsText(block, *a.best), 76, 12) + '\n';
    return text + buysText(gym, block, a) + timelineText(block, a);
}

} // namespace bw::cli
