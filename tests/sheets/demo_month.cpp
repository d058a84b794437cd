// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/demo_month.hpp"
#include "interchange/bundle.hpp"
#include "sheets/low_tide.hpp"
#include "support/fixtures.hpp"

#include <algorithm>

namespace bw::test {

DemoMonth::DemoMonth(Gym loaded, std::vector<LiftResult> results)
    : gym(std::move(loaded)), block(gym.latest()) {
    std::stable_sort(results.begin(), results.end(),
                     [](const auto& a, const auto& b) { return a.date < b.date; });
    const Date first = Date::of(block->month.year(), block->month.month(), 1).value();
    ledger = std::make_unique<Ledger>(gym, results.empty() ? first : results.back().date);
    for (const LiftResult& r : results) ledger->add(r);
    verdict = check(gym, *block);
}

const DemoMonth& demoMonth() {
    static const DemoMonth demo = [] {
        const std::string file = BW_SOURCE_DIR "/data/demo/saltmarsh-boathouse.bundle.json";
        Bundle bundle = *readBundle(readText(file)).bundle;
        Gym gym;
        layOver(gym, bundle);
        return DemoMonth(std::move(gym), std::move(bundle.results));
    }();
    return demo;
}

namespace {
Member member(int number, std::string name) {
    Member m{MemberId::parse("m-" + std::to_string(number)).value(), std::move(name), {}, true, {}};
    if (number % 3 == 0) m.flags.push_back({Demand::Knee, FlagLevel::Avoid, {}, {}});
    return m;
}

// Takes a name from the shelf of the random month; its exercises come by all lengths.
std::string nameFor(const Gym& gym, int number) {
    const auto& all = gym.shelf.entries();
    return all.empty() ? "x" : all[static_cast<std::size_t>(number) % all.size()]->name;
}

void equip(Gym& gym) {
    KitItem bells{kit("bell"), gym.settings.name, 3, Claim::Group, {}, {}, {}, {}};
    for (const int kg : {8, 12, 16}) bells.loads[Mass::fromKg(kg).value()] = 4;
    KitItem bar{kit("bar"), "Bar", 4, Claim::Set, {}, Mass::fromKg(20).value(), {}, {}};
    for (const double kg : {20.0, 10.0, 1.25}) bar.plates[Mass::fromKg(kg).value()] = 4;
    gym.put(bells);
    gym.put(bar);
    int n = 0;
    for (const auto& entry : std::vector(gym.shelf.entries())) {
        Exercise e = *entry;
        if (++n % 2 == 0) e.needs = {{{kit(n % 4 ? "bell" : "bar"), 1, {}}}};
        if (n % 4 == 0) e.load = LoadId::parse("barbell").value();
        if (n % 3 == 0) (void)e.demands.set(Demand::Knee, 2);
        e.cues = {e.name, "Stand tall."};
        e.cautions = {e.name};
        gym.shelf.put(e);
    }
}
} // namespace

DemoMonth randomGym(std::uint32_t seed, int longest, int members) {
    RandomMonth month = randomMonth(seed, longest);
    equip(month.gym);
    std::vector<LiftResult> results;
    for (int i = 0; i < members; ++i) {
        month.gym.put(member(i, nameFor(month.gym, i)));
        for (const auto& entry : month.gym.shelf.entries())
            if ((i + static_cast<int>(results.size())) % 2 == 0)
                results.push_back({month.gym.members.back().id,
                                   Date::of(2027, 1, 5).value(),
                                   entry->id,
                                   1,
                                   5,
                                   Rir::of(2).value(),
                                   Mass::fromKg(12 + 10 * i).value(),
                                   {}});
    }
    month.gym.put(month.block);
    return DemoMonth(std::move(month.gym), std::move(results));
}

} // namespace bw::test
