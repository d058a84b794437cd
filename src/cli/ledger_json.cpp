// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/ledger_json.hpp"

#include "blockwright/ledger/mass_text.hpp"
#include "blockwright/model/shorthand.hpp"

#include <cmath>

namespace bw::cli {

Json thousandths(double value) { return number(std::round(value * 1000) / 1000); }

Json topSetJson(const std::optional<TopSet>& set) {
    if (!set) return nullptr;
    return {{"date", set->date.text()},
            {"reps", set->reps},
            {"rir", set->rir ? number(set->rir->reps()) : Json(nullptr)},
            {"load_kg", set->load ? number(set->load->kg()) : Json(nullptr)}};
}

Json estimateJson(const std::optional<Estimate>& e, const LedgerRules& rules, const Shelf& shelf) {
    if (!e) return nullptr;
    Json notes = Json::array();
    for (const Message& m : remarks(*e, rules)) notes.push_back(m.english());
    return {{"kg", thousandths(e->kg)},
            {"low_kg", thousandths(e->lowKg)},
            {"high_kg", thousandths(e->highKg)},
            {"days", e->days},
            {"at_least", e->atLeast},
            {"from", e->from ? Json(e->from->text()) : Json(nullptr)},
            {"text", explain(*e, rules.unit, shelf).english()},
            {"remarks", std::move(notes)}};
}

Json targetJson(const Target& t, MassUnit unit) {
    Json out{{"aim", wordOf(t.aim)}};
    if (t.loading) {
        out["load_kg"] = number(t.loading->total.kg());
        out["loading"] = loadingText(*t.loading, unit).english();
    }
    if (t.body) {
        out["move"] = wordOf(t.body->move);
        out["reps"] = {t.body->aim.lo(), t.body->aim.hi()};
        out["option"] = t.body->option ? Json(t.body->option->id.text()) : Json(nullptr);
    }
    out["text"] = t.text.english();
    return out;
}

std::string estimateCell(const std::optional<Estimate>& e, MassUnit unit) {
    if (!e) return "–";
    return (e->atLeast ? "at least " : "") + kgText(e->kg, unit);
}

std::string rangeCell(const std::optional<Estimate>& e, MassUnit unit) {
    if (!e || e->atLeast) return {};
    const std::string high = kgText(e->highKg, unit), low = kgText(e->lowKg, unit);
    return low.substr(0, low.find(' ')) + "–" + high;
}

std::string targetCell(const Target& t, MassUnit unit) {
    if (t.loading) return massText(t.loading->total, unit);
    switch (t.aim) {
    case Aim::Find: return "find it";
    case Aim::Follow: return "follow";
    default: return t.body ? roundsText(t.body->aim) + " reps" : "–";
    }
}

} // namespace bw::cli
