// SPDX-License-Identifier: GPL-3.0-or-later
#include "interchange/merge_extras.hpp"
#include "interchange/read_parts.hpp"

#include <algorithm>
#include <array>

namespace bw {

using json::Kind;
using json::kNone;
using json::Node;

namespace {
constexpr int kHour = 3600;

template <class T> void set(T& field, std::optional<T> value) {
    if (value) field = std::move(*value);
}

Fields readClass(Reading& r, Node n, GymSettings& s) {
    Fields f(r, n);
    set(s.classMinutes, readWhole(r, f.take("minutes"), 5, 300));
    set(s.places, readWhole(r, f.take("places"), 1, 400));
    set(s.opening, readSeconds(r, f.take("opening_seconds"), 0, kHour));
    set(s.closing, readSeconds(r, f.take("closing_seconds"), 0, kHour));
    return f;
}

void readWeights(Reading& r, Node n, SectionWeights& weights) {
    eachChild(r, n, Kind::Object, [&](Node child) {
        const auto kind = readWordKey<SectionKind>(r, child);
        const auto share = readShare(r, child);
        if (kind && share) weights.of[static_cast<std::size_t>(*kind)] = *share;
    });
}

void readLimits(Reading& r, Node n, std::map<std::string, LimitValue>& limits) {
    eachChild(r, n, Kind::Object, [&](Node child) {
        const auto key = r.tree.key(child);
        const auto value = readLimit(r, child);
        if (value) limits[std::string(key)] = *value;
    });
}

std::map<Mass, int> readStock(Reading& r, Node n) {
    std::map<Mass, int> stock;
    eachChild(r, n, Kind::Object, [&](Node child) {
        const auto mass = readKgKey(r, child);
        const auto count = readWhole(r, child, 0, 1000);
        if (!mass || !count) return;
        if (!stock.emplace(*mass, *count).second)
            r.error(child, {"The mass of %1 kg is here twice.", {std::string(r.tree.key(child))}});
    });
    return stock;
}
} // namespace

std::optional<LimitValue> readLimit(Reading& r, Node n) {
    const auto range = readRange(r, n, [&](Node one) {
        return readNumber(r, one, {-kLargestLimit, kLargestLimit});
    });
    if (!range) return std::nullopt;
    return LimitValue{range->lo(), range->hi(), r.tree.is(n, Kind::Array)};
}

std::optional<KitItem> readKit(Reading& r, Node n) {
    Fields f(r, n);
    const Node idAt = f.need("id");
    r.refs.haveKit(idAt);
    auto id = readParsed<KitId>(r, idAt);
    auto name = readText(r, f.need("name"), kName);
    const auto units = readWhole(r, f.take("units"), 0, 1000);
    const auto claim = readWord<Claim>(r, f.take("claim"));
    auto loads = readStock(r, f.take("loads_kg"));
    const auto bar = readKg(r, f.take("bar_kg"));
    auto plates = readStock(r, f.take("plates_kg"));
    auto extras = f.rest();
    if (!id || !name) return std::nullopt;
    return KitItem{.id = std::move(*id),
                   .name = std::move(*name),
                   .units = orElse(units, 0),
                   .claim = orElse(claim, Claim::Group),
                   .loads = std::move(loads),
                   .bar = bar,
                   .plates = std::move(plates),
                   .extras = std::move(extras)};
}

void readGym(Reading& r, Node n, Bundle& into, const GymSettings& settings) {
    Fields f(r, n);
    GymSettings s = settings;
    const std::array keys{f.take("name"),  f.take("mass_unit"),       f.take("paper"),
                          f.take("class"), f.take("section_weights"), f.take("limits")};
    const auto& [name, unit, paper, klass, weights, limits] = keys;
    set(s.name, readText(r, name, kTitle));
    set(s.massUnit, readWord<MassUnit>(r, unit));
    set(s.paper, readWord<Paper>(r, paper));
    Fields classFields = readClass(r, klass, s);
    readWeights(r, weights, s.weights);
    readLimits(r, limits, s.limits);
    const Node kit = f.take("kit");
    into.hasKit = kit != kNone;
    into.kit = readList<KitItem>(r, kit, readKit);
    auto extras = f.rest({&classFields});
    if (std::any_of(keys.begin(), keys.end(), [](Node key) { return key != kNone; })) {
        s.extras = mergedExtras(s.extras, extras);
        into.settings = std::move(s);
    } else {
        into.gymExtras = std::move(extras);
    }
}

} // namespace bw
