// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/options.hpp"
#include "core/rules/book/book.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw::book {

namespace {
bool offered(const Shelf& shelf, const std::vector<ExerciseId>& ids) {
    return std::any_of(ids.begin(), ids.end(), [&](const ExerciseId& id) {
        const Exercise* e = shelf.find(id);
        return e && !e->retired;
    });
}
bool hasEasier(const Shelf& shelf, const Exercise& e) {
    return !e.noEasier.empty() || offered(shelf, e.easier);
}
bool hasHarder(const Shelf& shelf, const Exercise& e) {
    return !e.noHarder.empty() || offered(shelf, e.harder);
}

} // namespace

int waysOpen(const Shelf& shelf, const Exercise& e) {
    return (hasEasier(shelf, e) ? 1 : 0) + (hasHarder(shelf, e) ? 1 : 0);
}

namespace {
Message missing(const std::string& name, bool easier, bool harder) {
    if (!easier && !harder)
        return {"%1 has neither an easier nor a harder option on the Shelf.", {name}};
    if (!easier) return {"%1 has no easier option on the Shelf.", {name}};
    return {"%1 has no harder option on the Shelf.", {name}};
}

bool shareRole(const Exercise& a, const Exercise& b) {
    return std::any_of(a.roles.begin(), a.roles.end(),
                       [&](const RoleId& role) { return b.hasRole(role.text()); });
}

// On the wanted side of an exercise: one that already names it from its own side, else one of the
// same pattern and role and of less (or more) skill. Null when there is none.
const Exercise* candidate(const Shelf& shelf, const Exercise& e, bool easier) {
    const Exercise* best = nullptr;
    for (const Shelf::Entry& entry : shelf.entries()) {
        const Exercise& other = *entry;
        if (other.retired || other.id == e.id) continue;
        const auto& back = easier ? other.harder : other.easier;
        if (std::find(back.begin(), back.end(), e.id) != back.end()) return &other;
        const bool right = easier ? other.skill < e.skill : other.skill > e.skill;
        const bool kin = other.patterns.largest() == e.patterns.largest() && shareRole(e, other);
        if (!best && right && kin) best = &other;
    }
    return best;
}

Remedy nameOption(const Shelf& shelf, const Exercise& e, bool easier) {
    const Exercise* other = candidate(shelf, e, easier);
    if (easier && other)
        return advice(
            {"On the Shelf, give %1 an easier option, such as %2, or say why there is none",
             {e.name, other->name}});
    if (easier)
        return advice(
            {"On the Shelf, give %1 an easier option, or say why there is none", {e.name}});
    if (other)
        return advice(
            {"On the Shelf, give %1 a harder option, such as %2, or say why there is none",
             {e.name, other->name}});
    return advice({"On the Shelf, give %1 a harder option, or say why there is none", {e.name}});
}

void judge(const Facts& facts, Verdict& verdict) {
    const double wanted = verdict.limit("ways").lo;
    for (const SlotFact& slot : facts.slots) {
        const SectionKind kind = slot.section->kind;
        if (!slot.exercise || (kind != SectionKind::Strength && kind != SectionKind::Finisher))
            continue;
        const Shelf& shelf = facts.gym.shelf;
        const bool easier = hasEasier(shelf, *slot.exercise);
        const bool harder = hasHarder(shelf, *slot.exercise);
        const int ways = waysOpen(shelf, *slot.exercise);
        if (ways >= wanted) continue;
        Finding& f = verdict.add(Level::Note, slot.place, ways, "ways",
                                 missing(slotLabel(facts.block, slot), easier, harder));
        if (!easier) f.remedies.push_back(nameOption(shelf, *slot.exercise, true));
        if (!harder) f.remedies.push_back(nameOption(shelf, *slot.exercise, false));
    }
}
} // namespace

Rule options() {
    return {
        "options",
        {"Each strength and finisher exercise has an easier and a harder option on the Shelf, or "
         "says why not.",
         {}},
        {{"ways",
          atMost(2),
          "",
          commonPractice(),
          {"How many of the two ways, easier and harder, must be open to members.", {}}}},
        judge,
        {},
        false};
}

} // namespace bw::book
