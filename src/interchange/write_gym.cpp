// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/write_parts.hpp"

namespace bw {

using json::Out;

namespace {
Out stockOut(const std::map<Mass, int>& stock) {
    auto out = Out::object();
    for (const auto& [mass, count] : stock)
        out.add(json::decimalText(mass.micrograms(), Mass::kMicrogramsPerKg), Out::whole(count));
    return out;
}

void addSettings(Out& gym, const GymSettings& s) {
    gym.add("name", Out::text(s.name));
    gym.add("mass_unit", wordOut(s.massUnit));
    gym.add("paper", wordOut(s.paper));
    auto klass = Out::object();
    klass.add("minutes", Out::whole(s.classMinutes));
    klass.add("places", Out::whole(s.places));
    klass.add("opening_seconds", secondsOut(s.opening));
    klass.add("closing_seconds", secondsOut(s.closing));
    gym.add("class", std::move(klass));
    auto weights = Out::object();
    for (std::size_t i = 0; i < s.weights.of.size(); ++i)
        weights.add(Spelling<SectionKind>::words[i], shareOut(s.weights.of[i]));
    gym.add("section_weights", std::move(weights));
}
} // namespace

Out limitOut(const LimitValue& limit) {
    if (!limit.band) return Out::number(limit.lo);
    auto both = Out::array();
    both.push(Out::number(limit.lo)).push(Out::number(limit.hi));
    return both;
}

Out kitOut(const KitItem& item) {
    auto out = Out::object();
    out.add("id", Out::text(item.id.text()));
    out.add("name", Out::text(item.name));
    out.add("units", Out::whole(item.units));
    out.add("claim", wordOut(item.claim));
    addUnlessEmpty(out, "loads_kg", stockOut(item.loads));
    if (item.bar) out.add("bar_kg", kgOut(*item.bar));
    addUnlessEmpty(out, "plates_kg", stockOut(item.plates));
    return out.addAll(item.extras.json);
}

Out gymOut(const Bundle& bundle) {
    auto gym = Out::object();
    if (bundle.settings) addSettings(gym, *bundle.settings);
    if (bundle.hasKit) gym.add("kit", listOut(bundle.kit, kitOut));
    if (bundle.settings) {
        auto limits = Out::object();
        for (const auto& [key, limit] : bundle.settings->limits) limits.add(key, limitOut(limit));
        addUnlessEmpty(gym, "limits", std::move(limits));
        gym.addAll(bundle.settings->extras.json);
    }
    return gym.addAll(bundle.gymExtras.json);
}

} // namespace bw
