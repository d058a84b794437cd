// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/write_parts.hpp"

namespace bw {

using json::Out;

namespace {
Out slotOut(const Slot& s) {
    auto out = Out::object();
    out.add("exercise", s.exercise ? Out::text(s.exercise->text()) : Out::null());
    if (s.role) out.add("role", Out::text(s.role->text()));
    addUnlessEmpty(out, "patterns", listOut(s.patterns, wordOut<Pattern>));
    if (s.dose) {
        const auto perUnit = Dose::smallestPerUnit(s.dose->measure());
        out.add(wordOf(s.dose->measure()), rangeOut(s.dose->amount(), [&](std::int64_t amount) {
                    return Out::decimal(amount, perUnit);
                }));
    }
    if (s.tempo) out.add("tempo", Out::text(s.tempo->text()));
    if (s.effort) out.add("effort_rir", rangeOut(*s.effort, rirOut));
    if (s.main) out.add("main", Out::boolean(true));
    if (s.locked) out.add("locked", Out::boolean(true));
    addText(out, "note", s.note);
    return out.addAll(s.extras.json);
}

Out groupOut(const Group& g) {
    auto out = Out::object();
    out.add("rounds", rangeOut(g.rounds, Out::whole));
    out.add("rest_seconds", rangeOut(g.rest, secondsOut));
    out.add("slots", listOut(g.slots, slotOut));
    return out.addAll(g.extras.json);
}

Out startOut(const Start& start) {
    if (const auto* counts = std::get_if<StartCounts>(&start))
        return listOut(counts->heads, Out::whole);
    return Out::text(std::holds_alternative<StartSpread>(start) ? "spread" : "together");
}

Out sectionOut(const Section& s) {
    auto out = Out::object();
    out.add("kind", wordOut(s.kind));
    if (s.talk != Millis{0}) out.add("talk_seconds", secondsOut(s.talk));
    if (s.budget) out.add("budget_seconds", rangeOut(*s.budget, secondsOut));
    out.add("start", startOut(s.start));
    out.add("groups", listOut(s.groups, groupOut));
    return out.addAll(s.extras.json);
}

Out stepOut(const StairStep& step) {
    auto out = Out::object();
    out.add("rounds", wordOut(step.rounds));
    out.add("rir", rirOut(step.rir));
    out.add("intent", wordOut(step.intent));
    return out.addAll(step.extras.json);
}

Out acceptedOut(const Acceptance& a) {
    auto facts = Out::object();
    facts.add("level", wordOut(a.level));
    facts.add("measured", a.measured ? Out::number(*a.measured) : Out::null());
    facts.add("limit", limitOut(a.limit));
    auto out = Out::object();
    out.add("rule", Out::text(a.rule));
    out.add("place", Out::text(a.place));
    addText(out, "about", a.about);
    out.add("facts", std::move(facts));
    out.add("reason", Out::text(a.reason));
    return out.addAll(a.extras.json);
}
} // namespace

Out blockOut(const Block& block) {
    auto out = Out::object();
    out.add("month", Out::text(block.month.text()));
    addText(out, "title", block.title);
    if (block.format) out.add("format", wordOut(*block.format));
    out.add("visits_per_week", Out::whole(block.visitsPerWeek));
    out.add("sections", listOut(block.sections, sectionOut));
    out.add("stair", listOut(block.stair, stepOut));
    addUnlessEmpty(out, "accepted", listOut(block.accepted, acceptedOut));
    return out.addAll(block.extras.json);
}

} // namespace bw
