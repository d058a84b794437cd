// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/floor_words.hpp"

namespace bw::cli {

namespace {
Json secondsJson(MeanTime t) { return number(t.count() / 1000); }

Json timesJson(const FloorTimes& t) {
    return {{"mean", secondsJson(t.mean)},
            {"p10", secondsJson(t.p10)},
            {"p50", secondsJson(t.p50)},
            {"p90", secondsJson(t.p90)}};
}

Json sectionJson(const FloorSectionEnd& section) {
    Json groups = Json::array();
    for (const FloorGroupRounds& g : section.groups)
        groups.push_back(
            {{"rounds_mean", number(g.mean)}, {"reached_high", number(g.reachedHigh)}});
    return {{"kind", wordOf(section.kind)},
            {"end", timesJson(section.end)},
            {"over_budget", number(section.overBudget)},
            {"groups", std::move(groups)}};
}

Json buyJson(const FloorBuy& buy) {
    if (const auto* unit = std::get_if<OneMoreUnit>(&buy.change)) {
        Json out{{"change", "one more " + unit->kit.text()},
                 {"saves_mean", secondsJson(buy.saves)},
                 {"kit", unit->kit.text()}};
        if (unit->load) {
            out["load_kg"] = number(unit->load->kg());
            out["units"] = unit->units;
        }
        return out;
    }
    if (const auto* best = std::get_if<BestHeads>(&buy.change))
        return {{"change", "best spread"},
                {"saves_mean", secondsJson(buy.saves)},
                {"heads", best->heads.counts},
                {"all_tried", best->heads.allTried}};
    return {{"change", "one member fewer"}, {"saves_mean", secondsJson(buy.saves)}};
}

std::string_view wordOf(FloorDoing what) {
    switch (what) {
    case FloorDoing::Wait: return "wait";
    case FloorDoing::Set: return "set";
    case FloorDoing::Rest: return "rest";
    case FloorDoing::Talk: return "talk";
    }
    return "";
}

Json rowJson(const FloorRow& row) {
    const auto fromOne = [](int index) { return index < 0 ? Json(nullptr) : Json(index + 1); };
    return {{"member", row.member + 1},
            {"from", secondsJson(row.from)},
            {"to", secondsJson(row.to)},
            {"section", fromOne(row.place.section)},
            {"group", fromOne(row.place.group)},
            {"round", fromOne(row.doing == FloorDoing::Talk ? -1 : row.round)},
            {"slot", fromOne(row.place.slot)},
            {"what", wordOf(row.doing)}};
}

template <class List, class Each> Json listOf(const List& list, Each each) {
    Json out = Json::array();
    for (const auto& x : list) out.push_back(each(x));
    return out;
}
} // namespace

Json floorJson(const FloorOptions& options, const FloorAnswer& a) {
    Json out{{"week", options.week.number()},
             {"members", a.members},
             {"runs", a.runs},
             {"seed", options.seed},
             {"finish", timesJson(a.finish)},
             {"overrun_chance", number(a.overrunChance)},
             {"sections", listOf(a.sections, sectionJson)}};
    out["waits"] = listOf(a.kit, [](const FloorKitUse& use) {
        return Json{{"kit", use.kit.text()},
                    {"mean", secondsJson(use.wait.mean)},
                    {"p90", secondsJson(use.wait.p90)}};
    });
    out["wait_total"] = {{"mean", secondsJson(a.wait.mean)}, {"p90", secondsJson(a.wait.p90)}};
    out["busy"] = listOf(a.kit, [](const FloorKitUse& use) {
        return Json{{"kit", use.kit.text()}, {"share", number(use.busy)}};
    });
    out["buys"] = listOf(a.buys, buyJson);
    if (a.best) out["best"] = {{"heads", a.best->counts}, {"all_tried", a.best->allTried}};
    out["timeline"] = listOf(a.timeline, rowJson);
    return out;
}

} // namespace bw::cli
