// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/write_parts.hpp"

namespace bw {

using json::Out;

namespace {
template <class E> Out sharesOut(const Shares<E>& shares) {
    auto out = Out::object();
    for (std::size_t i = 0; i < kCount<E>; ++i)
        if (const auto e = static_cast<E>(i); shares.has(e))
            out.add(wordOf(e), shareOut(shares[e]));
    return out;
}

Out musclesOut(const std::map<MuscleId, Share>& muscles) {
    auto out = Out::object();
    for (const auto& [muscle, share] : muscles) out.add(muscle.text(), shareOut(share));
    return out;
}

Out demandsOut(const Demands& demands) {
    auto out = Out::object();
    for (std::size_t i = 0; i < kCount<Demand>; ++i)
        if (const auto d = static_cast<Demand>(i); demands[d] > 0)
            out.add(wordOf(d), Out::whole(demands[d]));
    return out;
}

void addRate(Out& to, std::string_view key, const std::optional<Rate>& rate) {
    if (rate) to.add(key, Out::decimal(rate->billionths(), Rate::kUnit));
}

void addPace(Out& to, const Pace& pace) {
    to.add("measure", wordOut(pace.usual()));
    addRate(to, "seconds_per_rep", pace.rates().secondsPerRep);
    addRate(to, "metres_per_second", pace.rates().metresPerSecond);
    addRate(to, "kcal_per_minute", pace.rates().kcalPerMinute);
}

Out needOut(const KitNeed& need) {
    auto out = Out::object();
    out.add("kit", Out::text(need.kit.text()));
    out.add("count", Out::whole(need.count));
    return out.addAll(need.extras.json);
}

Out needsOut(const KitNeeds& needs) {
    return listOut(needs, [](const auto& alternative) { return listOut(alternative, needOut); });
}

Out linesOut(const std::vector<std::string>& lines) {
    return listOut(lines, [](const auto& line) { return Out::text(line); });
}
} // namespace

Out exerciseOut(const Exercise& e) {
    auto out = Out::object();
    out.add("id", Out::text(e.id.text()));
    out.add("name", Out::text(e.name));
    out.add("patterns", sharesOut(e.patterns));
    addUnlessEmpty(out, "planes", sharesOut(e.planes));
    addUnlessEmpty(out, "muscles", musclesOut(e.muscles));
    out.add("sides", wordOut(e.sides));
    addUnlessEmpty(out, "roles", idsOut(e.roles));
    addUnlessEmpty(out, "demands", demandsOut(e.demands));
    out.add("skill", Out::whole(e.skill));
    addPace(out, e.pace);
    out.add("setup_seconds", secondsOut(e.setup));
    out.add("needs", needsOut(e.needs));
    out.add("load", Out::text(e.load.text()));
    out.add("easier", idsOut(e.easier));
    out.add("harder", idsOut(e.harder));
    addText(out, "no_easier", e.noEasier);
    addText(out, "no_harder", e.noHarder);
    addUnlessEmpty(out, "swaps", idsOut(e.swaps));
    addUnlessEmpty(out, "cues", linesOut(e.cues));
    addUnlessEmpty(out, "cautions", linesOut(e.cautions));
    if (e.retired) out.add("retired", Out::boolean(true));
    return out.addAll(e.extras.json);
}

} // namespace bw
