// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/estimate.hpp"

#include "blockwright/ledger/mass_text.hpp"
#include "core/ledger/decimals.hpp"
#include "core/rules/wording.hpp"

namespace bw {

namespace {
std::string nameOf(const Shelf& shelf, const ExerciseId& id) {
    const Exercise* e = shelf.find(id);
    return e ? e->name : id.text();
}
} // namespace

Message explain(const Estimate& e, MassUnit unit, const Shelf& shelf) {
    std::vector<std::string> args{kgText(e.kg, unit), kgText(e.lowKg, unit),
                                  kgText(e.highKg, unit)};
    if (e.from) {
        args.push_back(decimals(e.ratio, 2));
        args.push_back(nameOf(shelf, *e.from));
        return {"About %1 (8 times in 10 from %2 to %3): no results of its own, so %4 times %5.",
                std::move(args)};
    }
    if (!e.last || !e.since) return {"About %1 (8 times in 10 from %2 to %3).", std::move(args)};
    args.push_back(setText(*e.last, unit).english());
    args.push_back(e.last->date.text());
    if (e.atLeast)
        return {"At least about %1: no set says how many were in reserve; last %4 on %5.",
                std::move(args)};
    if (e.days == 1)
        return {"About %1 (8 times in 10 from %2 to %3), from one day: %4 on %5.", std::move(args)};
    args.push_back(std::to_string(e.days));
    args.push_back(e.since->text());
    return {"About %1 (8 times in 10 from %2 to %3), from %6 days since %7, last %4 on %5.",
            std::move(args)};
}

std::vector<Message> remarks(const Estimate& e, const LedgerRules& rules) {
    std::vector<Message> out;
    const FormulaFacts& formula = factsOf(rules.formula);
    if (e.outside)
        out.push_back({"The last sets were longer than %1’s equation is meant for (%2 repetitions, "
                       "those in reserve among them), so they count less.",
                       {std::string(formula.name), numberText(formula.mostReps)}});
    if (e.far)
        out.push_back({"The last day is far from the days before it and counts little until "
                       "another one bears it out: check what was written down.",
                       {}});
    return out;
}

} // namespace bw
