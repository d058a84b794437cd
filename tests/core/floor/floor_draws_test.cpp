// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/draws.hpp"

#include "core/floor/floor_gym.hpp"
#include "core/floor/philox.hpp"
#include "core/floor/portable_math.hpp"
#include "support/catch.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace bw::test {

// Random123 1.14, tests/kat_vectors, lines philox4x32 10.
TEST_CASE("the generator gives its published known answers") {
    CHECK(philox({0, 0, 0, 0}, {0, 0}) ==
          PhiloxCounter{0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8});
    CHECK(philox({0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff}, {0xffffffff, 0xffffffff}) ==
          PhiloxCounter{0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd});
    CHECK(philox({0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344}, {0xa4093822, 0x299f31d0}) ==
          PhiloxCounter{0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1});
}

TEST_CASE("units from bits stay inside their interval") {
    CHECK(unitFrom(0) == 0);
    CHECK(unitFrom(0xffffffff) < 1);
    CHECK(openUnitFrom(0) > 0);
    CHECK(openUnitFrom(0xffffffff) < 1);
    CHECK(openUnitFrom(0) == 1 - openUnitFrom(0xffffffff));
}

TEST_CASE("portable exp and log agree with the C library's") {
    constexpr double kEps = std::numeric_limits<double>::epsilon();
    for (double x = -30; x <= 30; x += 0.0137)
        CHECK(portableExp(x) == Approx(std::exp(x)).epsilon(4 * kEps));
    for (double x = 1e-12; x < 1e3; x *= 1.037)
        CHECK(portableLog(x) == Approx(std::log(x)).epsilon(4 * kEps).margin(kEps));
    CHECK(portableExp(0) == 1);
    CHECK(portableLog(1) == 0);
    CHECK(std::isfinite(portableExp(1e6)));
}

// Points of the standard normal distribution that every table has, to more places by inverting erfc
// in higher precision.
TEST_CASE("the normal quantile gives the well-known points, and inverts the distribution") {
    CHECK(normalQuantile(0.95) == Approx(1.644853626951472));
    CHECK(normalQuantile(0.975) == Approx(1.959963984540054));
    CHECK(normalQuantile(0.999) == Approx(3.090232306167813));
    CHECK(normalQuantile(0.5) == 0);
    for (const double p : {1e-15, 1e-9, 1e-4, 0.01, 0.0749, 0.0751, 0.3, 0.6, 0.9249, 0.9251, 0.99})
        CHECK(0.5 * std::erfc(-normalQuantile(p) / std::sqrt(2.0)) == Approx(p).epsilon(1e-13));
}

TEST_CASE("many at once are the same to the last bit as one by one") {
    std::vector<double> ps, xs;
    for (std::uint32_t i = 0; i < 1000; ++i) {
        ps.push_back(openUnitFrom(philox({i, 0, 0, 0}, {7, 7})[0]));
        xs.push_back(10 * ps.back() - 5);
    }
    const auto oneP = ps, oneX = xs;
    normalQuantiles(ps);
    portableExps(xs);
    for (std::size_t i = 0; i < ps.size(); ++i) {
        CHECK(ps[i] == normalQuantile(oneP[i]));
        CHECK(xs[i] == portableExp(oneX[i]));
    }
}

namespace {
// Largest distance of the sample from the distribution, times the root of its size.
template <class Distribution> double kolmogorov(std::vector<double> sample, Distribution f) {
    std::ranges::sort(sample);
    const auto n = static_cast<double>(sample.size());
    double worst = 0;
    for (std::size_t i = 0; i < sample.size(); ++i) {
        const double p = f(sample[i]);
        worst =
            std::max({worst, p - static_cast<double>(i) / n, static_cast<double>(i + 1) / n - p});
    }
    return worst * std::sqrt(n);
}
double normal(double z) { return 0.5 * std::erfc(-z / std::sqrt(2.0)); }
constexpr double kOneInTenThousand = 2.225251; // Kolmogorov's distribution at 1 - 1e-4

// A set of 1 000 s and one of 8 to 11 reps of 1 s, rest 60 to 120 s; three rounds.
struct Drawn {
    Drawn() {
        Slot reps8 = t.work(1);
        reps8.dose = reps(8, 11);
        t.add({group(rounds(3, 3), secondsRange(60, 120), {t.work(1000), reps8})});
    }
    template <class Each> void play(int runs, int members, const FloorOptions& o, Each each) {
        const FloorPlan plan = planFloor(t.gym, t.draft, week(1));
        Draws draws(plan, o);
        FloorSteps steps(plan, members);
        for (int run = 0; run < runs; ++run) {
            draws.fill(run, members, steps);
            for (int m = 0; m < members; ++m) each(steps.row(m));
        }
    }
    TinyGym t;
};
} // namespace

TEST_CASE("pace and noise are lognormal, rests uniform, whole reps all as likely") {
    Drawn d;
    FloorOptions o;
    std::vector<double> logs, rests;
    SECTION("noise of a set") {
        o.paceSigma = 0;
        o.setSigma = 0.2;
        d.play(500, 4, o, [&](const Ticks* row) {
            for (int r = 0; r < 3; ++r)
                logs.push_back(std::log(static_cast<double>(row[3 * r]) / 1e6) / 0.2);
        });
        CHECK(kolmogorov(logs, normal) < kOneInTenThousand);
    }
    SECTION("pace of a member, the same through the class") {
        o.paceSigma = 0.3;
        o.setSigma = 0;
        d.play(1000, 4, o, [&](const Ticks* row) {
            logs.push_back(std::log(static_cast<double>(row[0]) / 1e6) / 0.3);
            CHECK(row[3] == row[0]);
            CHECK(row[6] == row[0]);
        });
        CHECK(kolmogorov(logs, normal) < kOneInTenThousand);
    }
    SECTION("rests") {
        d.play(1000, 4, o, [&](const Ticks* row) {
            for (int r = 0; r < 3; ++r) rests.push_back(static_cast<double>(row[3 * r + 2]));
        });
        CHECK(kolmogorov(rests, [](double x) { return std::clamp((x - 60e3) / 60e3, 0.0, 1.0); }) <
              kOneInTenThousand);
    }
    SECTION("reps") {
        o.paceSigma = o.setSigma = 0;
        std::array<int, 4> seen{};
        d.play(1000, 4, o, [&](const Ticks* row) {
            for (int r = 0; r < 3; ++r) {
                CHECK(row[3 * r] == 1'000'000); // no spread at all
                ++seen.at(static_cast<std::size_t>(row[3 * r + 1] / 1000 - 8));
            }
        });
        double chi = 0;
        for (const int n : seen) chi += (n - 3000.0) * (n - 3000.0) / 3000;
        CHECK(chi < 21.108); // chi-squared of 3 degrees of freedom at 1 - 1e-4
    }
}

TEST_CASE("a change of one place leaves the draws of all others as they were") {
    TinyGym t;
    const auto pair = [&] {
        return group(rounds(2, 3), secondsRange(30, 60), {t.work(20), t.work(30)});
    };
    t.add({pair(), pair()});
    t.add({pair()});
    FloorOptions o;
    const auto rowsOf = [&](const Block& draft, int members) {
        const FloorPlan plan = planFloor(t.gym, draft, week(1));
        FloorSteps steps(plan, members);
        Draws(plan, o).fill(3, members, steps);
        std::vector<Ticks> second(steps.row(1), steps.row(1) + plan.steps);
        return second;
    };
    const auto before = rowsOf(t.draft, 2);
    Block other = t.draft;
    SECTION("a slot") { other.sections[0].groups[0].slots[0] = t.work(55); }
    SECTION("a slot left open") { other.sections[0].groups[0].slots[0] = Slot{}; }
    SECTION("a slot more") { other.sections[0].groups[0].slots.push_back(t.work(5)); }
    SECTION("a round less") { other.sections[0].groups[0].rounds = rounds(2, 2); }
    const auto after = rowsOf(other, 2);
    // Everything from the second group on: nine steps each.
    CHECK(std::equal(before.end() - 18, before.end(), after.end() - 18));
    if (other.sections[0].groups[0].slots[1].exercise ==
            t.draft.sections[0].groups[0].slots[1].exercise &&
        after.size() == before.size())
        CHECK(after[1] == before[1]);    // the neighbour in the same round
    CHECK(rowsOf(t.draft, 5) == before); // and members more or fewer
}

TEST_CASE("a set and a rest can be drawn twice alike only by asking for the same") {
    Drawn d;
    FloorOptions o;
    o.setSigma = 0.5;
    std::vector<Ticks> sets;
    d.play(200, 5, o, [&](const Ticks* row) {
        for (int r = 0; r < 3; ++r) sets.push_back(row[3 * r]);
    });
    std::ranges::sort(sets);
    const auto same = sets.end() - std::unique(sets.begin(), sets.end());
    CHECK(same < 10); // 3 000 of about two million milliseconds: two or three by chance
}

TEST_CASE("no set takes longer than a day, however slow the exercise") {
    TinyGym t;
    Exercise e = exercise("glacier", Pattern::Carry, 1000);
    t.gym.shelf.put(e);
    t.add({onceThrough({slot("glacier", reps(1000, 1000))})});
    FloorOptions o;
    o.members = 1;
    for (const bool steady : {true, false}) {
        o.steady = steady;
        CHECK(simulateFloor(t.gym, t.draft, o)->finish.p50 == Millis{FloorSteps::kMost});
    }
}

} // namespace bw::test
