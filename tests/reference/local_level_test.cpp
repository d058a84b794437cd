// SPDX-License-Identifier: GPL-3.0-or-later
// The filter against the yearly flow of the Nile at Aswan, 1871 to 1970: Durbin J, Koopman SJ.
// Time Series Analysis by State Space Methods, 2nd ed., Oxford 2012, ch. 2. The series as in the R
// datasets package; figures below recomputed by another program from the book's variances, and its
// log-likelihood agrees with that of two published packages.
#include "blockwright/ledger/local_level.hpp"
#include "support/catch.hpp"

#include <array>
#include <numeric>
#include <vector>

using namespace bw;

namespace {
constexpr std::array<int, 100> kNile{
    1120, 1160, 963, 1210, 1160, 1160, 813,  1230, 1370, 1140, 995,  935,  1110, 994,  1020,
    960,  1180, 799, 958,  1140, 1100, 1210, 1150, 1250, 1260, 1220, 1030, 1100, 774,  840,
    874,  694,  940, 833,  701,  916,  692,  1020, 1050, 969,  831,  726,  456,  824,  702,
    1120, 1100, 832, 764,  821,  768,  845,  864,  862,  698,  845,  744,  796,  1040, 759,
    781,  865,  845, 944,  984,  897,  822,  1010, 771,  676,  649,  846,  812,  742,  801,
    1040, 860,  874, 848,  890,  744,  749,  838,  1050, 918,  986,  797,  923,  975,  815,
    1020, 906,  901, 1170, 912,  746,  919,  718,  714,  740};

struct Levels {
    std::vector<LocalLevel> after; // each year's flow was seen
    Levels(double noise, double drift) {
        LocalLevel level;
        for (const int flow : kNile) {
            if (level.started()) level.drift(drift);
            level.see(flow, noise);
            after.push_back(level);
        }
    }
    [[nodiscard]] const LocalLevel& year(int t) const { // from 1
        return after.at(static_cast<std::size_t>(t - 1));
    }
};
} // namespace

TEST_CASE("the Nile is the series that the book speaks of") {
    CHECK(std::accumulate(kNile.begin(), kNile.end(), 0) == 91'935);
}

TEST_CASE("the filter follows the Nile as the book's recursion does") {
    struct Row {
        int t;
        double mean, variance;
    };
    const Levels nile(15'099, 1'469.1);
    CHECK(nile.year(1).mean() == 1120);
    CHECK(nile.year(1).variance() == 15'099);
    for (const Row& row : {Row{2, 1140.927840, 7899.736379},
                           {3, 1072.798530, 5781.469939},
                           {4, 1117.308955, 4898.365195},
                           {5, 1129.972136, 4478.723260},
                           {10, 1162.902615, 4051.284177},
                           {20, 1026.141555, 4032.196160},
                           {50, 849.070566, 4032.157942},
                           {100, 798.370293, 4032.157942}}) {
        INFO("year " << row.t);
        CHECK(nile.year(row.t).mean() == Approx(row.mean).margin(1e-6));
        CHECK(nile.year(row.t).variance() == Approx(row.variance).margin(1e-6));
    }
    LocalLevel next = nile.year(100); // 1971
    next.drift(1'469.1);
    CHECK(next.mean() == Approx(798.370293).margin(1e-6));
    CHECK(next.variance() == Approx(5501.257942).margin(1e-6));
}

// At the estimates that maximise it: -632.5456, as the packages KFAS and statespacer report it for
// 99 years after the first.
TEST_CASE("the likelihood of the Nile is the published one, and largest at the published place") {
    constexpr double kNoise = 15'098.5174, kDrift = 1'469.1769;
    const auto at = [](double noise, double drift) {
        return Levels(noise, drift).year(100).logLikelihood();
    };
    const double best = at(kNoise, kDrift);
    CHECK(best == Approx(-632.545625).margin(1e-6));
    for (const double f : {0.99, 1.01}) {
        CHECK(at(f * kNoise, kDrift) < best);
        CHECK(at(kNoise, f * kDrift) < best);
    }
}

// P / noise = (q + sqrt(q^2 + 4 q)) / 2 = x, gain x / (1 + x): simple exponential smoothing.
TEST_CASE("after many looks the gain is that of exponential smoothing") {
    struct Row {
        double q, gain;
    };
    for (const auto& [q, gain] : {Row{0.01, 0.095125},
                                  {0.05, 0.200000},
                                  {0.0973, 0.267051},
                                  {0.25, 0.390388},
                                  {0.5, 0.500000},
                                  {1, 0.618034},
                                  {2, 0.732051}}) {
        LocalLevel level(0, 1);
        for (int i = 0; i < 400; ++i) {
            level.drift(q);
            level.see(0, 1);
        }
        level.drift(q);
        level.see(1, 1);
        CHECK(level.mean() == Approx(gain).margin(1e-6));
    }
}

TEST_CASE("a small tracker with a first guess is as worked out by hand") {
    LocalLevel level(98, 25);
    struct Row {
        double seen, mean, variance;
    };
    bool first = true;
    for (const Row& row : {Row{100, 99.6, 5},
                           {102.5, 101.020408, 3.061224},
                           {101, 101.012370, 2.461653},
                           {105, 102.433734, 2.227770},
                           {104, 102.967145, 2.128514}}) {
        if (!first) level.drift(1);
        first = false;
        level.see(row.seen, 6.25);
        CHECK(level.mean() == Approx(row.mean).margin(5e-7));
        CHECK(level.variance() == Approx(row.variance).margin(5e-7));
    }
}

TEST_CASE("two looks at one moment may come in either order; a moment missed only widens") {
    LocalLevel a(98, 25), b(98, 25);
    a.see(100, 6.25);
    a.see(103, 4);
    b.see(103, 4);
    b.see(100, 6.25);
    CHECK(a.mean() == Approx(b.mean()).epsilon(1e-14));
    CHECK(a.variance() == Approx(b.variance()).epsilon(1e-14));
    const double before = a.variance();
    a.drift(3);
    CHECK(a.mean() == Approx(b.mean()).epsilon(1e-14));
    CHECK(a.variance() == before + 3);
}
