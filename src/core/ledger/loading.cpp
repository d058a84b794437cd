// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/loading.hpp"

#include "blockwright/ledger/mass_text.hpp"
#include "core/ledger/plates.hpp"

#include <algorithm>
#include <cmath>

namespace bw {

namespace {
constexpr std::int64_t kMostKg = 600; // more than anybody has lifted in any exercise of the Shelf
constexpr std::int64_t kMost = kMostKg * Mass::kMicrogramsPerKg;
constexpr std::int64_t kSlack = 1'000'000; // a gram: what arithmetic leaves of a whole load

enum class Way { Pairs, Post, Pieces, Steps };

bool isSled(const Exercise& e) { return e.load.text() == "sled"; }

Way wayOf(const Exercise& e, const KitItem& kit) {
    if (isSled(e) && kit.loads.empty()) return Way::Post;
    if (kit.bar) return Way::Pairs;
    return e.load.text() == "machine" ? Way::Steps : Way::Pieces;
}

// A sled may weigh nothing worth telling; a bar does.
bool toldOf(const Exercise& e, const KitItem& kit) {
    return kit.bar || !kit.loads.empty() || (isSled(e) && !kit.plates.empty());
}

Mass massOf(std::int64_t micrograms) { return Mass::fromMicrograms(micrograms).value(); }

std::vector<Loading> plated(const KitItem& kit, bool pairs) {
    const std::int64_t empty = kit.bar.value_or(Mass{}).micrograms(), sides = pairs ? 2 : 1;
    if (empty > kMost) return {};
    std::map<Mass, int> stock;
    for (const auto& [mass, count] : kit.plates) stock[mass] = count / static_cast<int>(sides);
    std::vector<Loading> out;
    for (PlateSum& sum : plateSums(stock, massOf((kMost - empty) / sides)))
        out.push_back({massOf(empty + sides * sum.micrograms), kit.id, 1, kit.bar.value_or(Mass{}),
                       pairs, std::move(sum.plates)});
    return out;
}

// A bell that is there once makes no pair; a machine's step is there as often as the machine.
std::vector<Loading> pieces(const KitItem& kit, int count, bool steps) {
    std::vector<Loading> out;
    for (const auto& [mass, stock] : kit.loads) {
        if (stock < (steps ? 1 : count) || mass.micrograms() > kMost / count) continue;
        out.push_back({massOf(mass.micrograms() * count), kit.id, count, {}, false, {}});
    }
    return out;
}

std::vector<Loading> loadingsOf(const Exercise& e, const KitItem& kit, int count) {
    switch (wayOf(e, kit)) {
    case Way::Pairs: return plated(kit, true);
    case Way::Post: return plated(kit, false);
    case Way::Pieces: return pieces(kit, count, false);
    case Way::Steps: return pieces(kit, count, true);
    }
    return {};
}

bool owned(const Gym& gym, const std::vector<KitNeed>& alternative) {
    return std::all_of(alternative.begin(), alternative.end(), [&](const KitNeed& need) {
        const KitItem* kit = gym.findKit(need.kit);
        return kit && kit->units >= need.count;
    });
}

// The first of an alternative whose loads are told is what is loaded.
std::vector<Loading> loadingsOf(const Gym& gym, const Exercise& e,
                                const std::vector<KitNeed>& alternative) {
    for (const KitNeed& need : alternative)
        if (const KitItem* kit = gym.findKit(need.kit); kit && toldOf(e, *kit))
            return loadingsOf(e, *kit, need.count);
    return {};
}

std::int64_t microgramsOf(double kg) {
    const double bounded = std::clamp(kg, 0.0, double{kMostKg});
    return std::llround(bounded * double{Mass::kMicrogramsPerKg});
}

std::int64_t distance(std::int64_t a, std::int64_t b) { return a < b ? b - a : a - b; }
} // namespace

Loadings::Loadings(const Gym& gym, const Exercise& exercise)
    : step_(gym.settings.massUnit == MassUnit::Kg ? Mass::kMicrogramsPerKg * 5 / 2
                                                  : Mass::kMicrogramsPerLb * 5) {
    for (const auto& alternative : exercise.needs) {
        if (!owned(gym, alternative)) continue;
        auto found = loadingsOf(gym, exercise, alternative);
        if (!found.empty()) choices_.push_back(std::move(found));
    }
}

const std::vector<Loading>& Loadings::around(double kg) const {
    static const std::vector<Loading> none;
    if (!told()) return none;
    const std::int64_t want = microgramsOf(kg);
    const auto off = [&](const std::vector<Loading>& choice) {
        const std::int64_t least = choice.front().total.micrograms();
        const std::int64_t most = choice.back().total.micrograms();
        return want < least ? least - want : want > most ? want - most : 0;
    };
    return *std::min_element(choices_.begin(), choices_.end(),
                             [&](const auto& a, const auto& b) { return off(a) < off(b); });
}

Loading Loadings::nearest(const Ask& ask) const {
    const std::int64_t want = microgramsOf(ask.kg);
    const std::int64_t most = ask.most ? microgramsOf(*ask.most) : kMost;
    if (!told()) {
        const std::int64_t steps =
            std::min((want + (ask.neverAbove ? kSlack : step_ / 2 - kSlack)) / step_,
                     (most + kSlack) / step_);
        return {massOf(steps * step_), {}, 1, {}, false, {}};
    }
    const auto& choice = around(ask.kg);
    const std::int64_t roof = ask.neverAbove ? std::min(want, most) : most;
    const Loading* best = &choice.front();
    for (const Loading& l : choice) {
        const std::int64_t total = l.total.micrograms();
        if (total > roof + kSlack) break;
        if (distance(total, want) + kSlack < distance(best->total.micrograms(), want)) best = &l;
    }
    return *best;
}

std::optional<Loading> Loadings::above(double kg) const {
    const std::int64_t from = microgramsOf(kg);
    if (!told())
        return Loading{massOf(((from + kSlack) / step_ + 1) * step_), {}, 1, {}, false, {}};
    const auto& choice = around(kg);
    const auto it = std::find_if(choice.begin(), choice.end(), [&](const Loading& l) {
        return l.total.micrograms() > from + kSlack;
    });
    return it == choice.end() ? std::nullopt : std::optional(*it);
}

Message loadingText(const Loading& l, MassUnit unit) {
    const std::string total = massText(l.total, unit);
    if (l.pieces > 1)
        return {"%1: %2 × %3",
                {total, std::to_string(l.pieces),
                 massText(massOf(l.total.micrograms() / l.pieces), unit)}};
    if (!l.empty) return {"%1", {total}};
    if (l.plates.empty())
        return l.perSide ? Message{"%1: the empty bar", {total}}
                         : Message{"%1: the empty sled", {total}};
    std::string plates;
    for (const Mass plate : l.plates)
        plates += (plates.empty() ? "" : " + ") + massNumber(plate, unit);
    return {l.perSide ? "%1: each side %2" : "%1: plates %2", {total, std::move(plates)}};
}

} // namespace bw
