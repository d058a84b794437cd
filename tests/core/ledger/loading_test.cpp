// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/loading.hpp"
#include "core/ledger/plates.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <random>

using namespace bw;
using namespace bw::test;

namespace {
Mass kg(double x) { return Mass::fromKg(x).value(); }
Mass lb(double x) { return Mass::fromLb(x).value(); }

using Stock = std::map<Mass, int>;

KitItem item(std::string_view id, Stock loads, std::optional<Mass> bar = {}, Stock plates = {}) {
    return {kit(id), std::string(id),   8, Claim::Group, std::move(loads),
            bar,     std::move(plates), {}};
}

Exercise loaded(std::string_view load, KitNeeds needs) {
    Exercise e = exercise("lift", Pattern::Squat);
    e.load = LoadId::parse(load).value();
    e.needs = std::move(needs);
    return e;
}

Exercise barbellLift() { return loaded("barbell", {{{kit("rack"), 1, {}}, {kit("bar"), 1, {}}}}); }

Gym gymWith(std::vector<KitItem> items) {
    Gym gym;
    for (auto& i : items) gym.put(std::move(i));
    gym.put(item("rack", {}));
    return gym;
}

std::string text(const Loading& l, MassUnit unit = MassUnit::Kg) {
    return loadingText(l, unit).english();
}
std::string nearest(const Loadings& l, double want, bool down = false,
                    std::optional<double> most = {}) {
    return text(l.nearest({want, down, most}));
}

// All ways to take plates, one by one.
std::map<std::int64_t, int> bruteForce(const Stock& stock) {
    std::map<std::int64_t, int> fewest{{0, 0}};
    for (const auto& [mass, count] : stock)
        for (int i = 0; i < count; ++i) {
            auto more = fewest;
            for (const auto& [sum, plates] : fewest) {
                const auto [it, fresh] = more.emplace(sum + mass.micrograms(), plates + 1);
                if (!fresh) it->second = std::min(it->second, plates + 1);
            }
            fewest = std::move(more);
        }
    return fewest;
}
} // namespace

TEST_CASE("plates make every sum that trying all of them makes, with as few plates") {
    std::mt19937 engine(20260903);
    const auto draw = [&](unsigned below) { return static_cast<int>(engine() % below); };
    for (int round = 0; round < 200; ++round) {
        Stock stock;
        for (int size = 1 + draw(6); size > 0; --size) stock[kg(0.25 * (1 + draw(100)))] = draw(4);
        const auto expected = bruteForce(stock);
        const auto sums = plateSums(stock, kg(2000));
        REQUIRE(sums.size() == expected.size());
        auto want = expected.begin();
        for (const PlateSum& sum : sums) {
            INFO(round << ": " << sum.micrograms);
            CHECK(sum.micrograms == want->first);
            CHECK(static_cast<int>(sum.plates.size()) == want->second);
            std::int64_t total = 0;
            Stock used;
            for (const Mass plate : sum.plates) {
                total += plate.micrograms();
                CHECK(++used[plate] <= stock[plate]);
            }
            CHECK(total == sum.micrograms);
            CHECK(std::is_sorted(sum.plates.rbegin(), sum.plates.rend()));
            ++want;
        }
    }
}

TEST_CASE("sums stop at the most, and a stock without end loses its lightest sizes") {
    const auto sums = plateSums({{kg(20), 10}, {kg(15), 2}}, kg(50));
    CHECK(sums.back().micrograms == kg(50).micrograms());
    CHECK(sums.back().plates == std::vector{kg(20), kg(15), kg(15)});
    Stock endless;
    for (int i = 0; i < 40; ++i)
        endless[Mass::fromMicrograms(20'000'000'000 - (std::int64_t{1} << i) % 9'999'999'967)
                    .value()] = 500;
    CHECK(plateSums(endless, kg(600)).size() <= kMostSums);
}

TEST_CASE("a bar is loaded in pairs, from what the gym owns") {
    const Gym gym =
        gymWith({item("bar", {}, kg(20), {{kg(20), 12}, {kg(10), 2}, {kg(5), 3}, {kg(1.25), 1}})});
    const Loadings bar(gym, barbellLift());
    CHECK(nearest(bar, 60) == "60 kg: each side 20");
    CHECK(nearest(bar, 50) == "50 kg: each side 10 + 5");
    CHECK(nearest(bar, 20) == "20 kg: the empty bar");
    CHECK(nearest(bar, 3) == "20 kg: the empty bar");
    CHECK(nearest(bar, 22.5) == "20 kg: the empty bar"); // one small plate is no pair
    CHECK(nearest(bar, 900) == "290 kg: each side 20 + 20 + 20 + 20 + 20 + 20 + 10 + 5");
    CHECK(bar.above(60)->total == kg(70));
    CHECK_FALSE(bar.above(290).has_value());
}

TEST_CASE("where the largest plates lead astray, the exact load is still found") {
    const Gym gym = gymWith({item("bar", {}, kg(20), {{kg(25), 2}, {kg(15), 4}})});
    CHECK(nearest(Loadings(gym, barbellLift()), 80) == "80 kg: each side 15 + 15");
}

TEST_CASE("loads are rounded to the nearest, or never above; half way goes down") {
    const Gym gym = gymWith({item("bar", {}, kg(20), {{kg(2.5), 2}, {kg(5), 2}, {kg(10), 8}})});
    const Loadings bar(gym, barbellLift());
    CHECK(bar.nearest({57.4, false, {}}).total == kg(55));
    CHECK(bar.nearest({57.6, false, {}}).total == kg(60));
    CHECK(bar.nearest({57.5, false, {}}).total == kg(55));
    CHECK(bar.nearest({59.9, true, {}}).total == kg(55));
    CHECK(bar.nearest({60, true, {}}).total == kg(60));
    CHECK(bar.nearest({59.9999999999, true, {}}).total == kg(60)); // what arithmetic leaves of 60
    CHECK(bar.nearest({100, false, 62}).total == kg(60));
    CHECK(bar.nearest({100, false, 5}).total == kg(20)); // nothing is as light
}

TEST_CASE("a pair is two bells alike, and counts with both") {
    const Gym gym =
        gymWith({item("dumbbell", {{kg(8), 2}, {kg(10), 1}, {kg(12), 4}, {kg(14), 3}})});
    const Loadings pair(gym, loaded("pair", {{{kit("dumbbell"), 2, {}}}}));
    CHECK(nearest(pair, 20) == "16 kg: 2 × 8 kg"); // 10 kg is there once; 16 and 24 are as near
    CHECK(nearest(pair, 21) == "24 kg: 2 × 12 kg");
    CHECK(nearest(pair, 100) == "28 kg: 2 × 14 kg");
    const Loadings single(gym, loaded("implement", {{{kit("dumbbell"), 1, {}}}}));
    CHECK(nearest(single, 10) == "10 kg");
}

TEST_CASE("the first kind of kit serves while its loads reach, then the next") {
    const Gym gym = gymWith({item("bell", {{kg(8), 2}, {kg(16), 2}, {kg(24), 2}}),
                             item("dumbbell", {{kg(4), 2}, {kg(18), 2}, {kg(32), 2}})});
    const Loadings l(gym,
                     loaded("implement", {{{kit("bell"), 1, {}}}, {{kit("dumbbell"), 1, {}}}}));
    CHECK(l.nearest({18, false, {}}).total == kg(16));
    CHECK(l.nearest({30, false, {}}).kit == kit("dumbbell"));
    CHECK(l.nearest({5, false, {}}).kit == kit("dumbbell"));
    CHECK(l.nearest({40, false, {}}).total == kg(32));
    CHECK(l.nearest({2, false, {}}).total == kg(4));
}

TEST_CASE("kit that the gym has too few of is no choice") {
    Gym gym = gymWith({item("bell", {{kg(8), 2}}), item("dumbbell", {{kg(9), 2}})});
    KitItem none = item("bell", {{kg(8), 2}});
    none.units = 0;
    gym.put(none);
    const Loadings l(gym,
                     loaded("implement", {{{kit("bell"), 1, {}}}, {{kit("dumbbell"), 1, {}}}}));
    CHECK(l.nearest({8, false, {}}).total == kg(9));
}

TEST_CASE("a sled takes single plates, a machine its steps") {
    const Gym gym = gymWith({item("sled", {}, kg(30), {{kg(20), 3}, {kg(5), 1}}),
                             item("tower", {{kg(5), 1}, {kg(7.5), 1}, {kg(10), 1}})});
    const Loadings sled(gym, loaded("sled", {{{kit("sled"), 1, {}}}}));
    CHECK(nearest(sled, 55) == "55 kg: plates 20 + 5");
    CHECK(nearest(sled, 30) == "30 kg: the empty sled");
    CHECK(nearest(sled, 1000) == "95 kg: plates 20 + 20 + 20 + 5");
    const Loadings machine(gym, loaded("machine", {{{kit("tower"), 2, {}}}}));
    CHECK(nearest(machine, 15) == "15 kg: 2 × 7.5 kg");
}

TEST_CASE("without told loads the usual step of the unit serves") {
    Gym gym = gymWith({item("bar", {})});
    const Loadings metric(gym, barbellLift());
    CHECK_FALSE(metric.told());
    CHECK(nearest(metric, 61) == "60 kg");
    CHECK(nearest(metric, 61.3) == "62.5 kg");
    CHECK(nearest(metric, 62.4, true) == "60 kg");
    CHECK(metric.above(60)->total == kg(62.5));
    gym.settings.massUnit = MassUnit::Lb;
    CHECK(text(Loadings(gym, barbellLift()).nearest({61, false, {}}), MassUnit::Lb) == "135 lb");
}

TEST_CASE("plates in pounds make whole pounds") {
    Gym gym =
        gymWith({item("bar", {}, lb(45), {{lb(45), 8}, {lb(25), 4}, {lb(10), 4}, {lb(5), 4}})});
    gym.settings.massUnit = MassUnit::Lb;
    const Loadings bar(gym, barbellLift());
    for (const double pounds : {45, 135, 185, 225, 315}) {
        const Loading l = bar.nearest({lb(pounds).kg(), true, {}});
        CHECK(l.total == lb(pounds));
    }
    CHECK(text(bar.nearest({lb(185).kg(), false, {}}), MassUnit::Lb) ==
          "185 lb: each side 45 + 25");
}
