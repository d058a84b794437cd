// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/effort.hpp"
#include "blockwright/model/quantity.hpp"
#include "support/catch.hpp"

#include <cmath>
#include <limits>

using namespace bw;

// Discs of the IWF Technical and Competition Rules: 25, 20, 15, 10, 5, 2.5, 2, 1.5, 1, 0.5 kg; bars
// of 20 and 15 kg; collars of 2.5 kg. Discs of the IPF Technical Rules add 50 and 1.25 kg.
TEST_CASE("plates of the weightlifting and powerlifting rules are whole micrograms") {
    for (const double kg : {50.0, 25.0, 20.0, 15.0, 10.0, 5.0, 2.5, 2.0, 1.5, 1.25, 1.0, 0.5}) {
        const Mass m = Mass::fromKg(kg).value();
        CHECK(m.micrograms() == static_cast<std::int64_t>(kg * 1e9));
        CHECK(m.kg() == kg);
    }
}

TEST_CASE("a loaded bar adds up exactly") {
    // 20 kg bar, 25 + 20 + 2.5 + 1.25 a side: 117.5 kg.
    std::int64_t sum = Mass::fromKg(20).value().micrograms();
    for (const double plate : {25.0, 20.0, 2.5, 1.25})
        sum += 2 * Mass::fromKg(plate).value().micrograms();
    CHECK(Mass::fromMicrograms(sum).value() == Mass::fromKg(117.5).value());
}

// 1 lb = 0.45359237 kg exactly: the international yard and pound agreement of 1959.
TEST_CASE("a pound is 0.45359237 kg to the last figure") {
    CHECK(Mass::fromLb(1).value().micrograms() == 453'592'370);
    struct Row {
        double lb, kg;
    };
    for (const Row r : {Row{2.5, 1.133981},
                        {5, 2.267962},
                        {10, 4.535924},
                        {25, 11.339809},
                        {35, 15.875733},
                        {45, 20.411657},
                        {135, 61.234970},
                        {225, 102.058283},
                        {315, 142.881597}}) {
        CHECK(Mass::fromLb(r.lb).value().kg() == Approx(r.kg).margin(5e-7).epsilon(0));
    }
    for (const Row r : {Row{2.204623, 1},
                        {2.755778, 1.25},
                        {5.511557, 2.5},
                        {11.023113, 5},
                        {22.046226, 10},
                        {33.069339, 15},
                        {35.273962, 16},
                        {44.092452, 20},
                        {52.910943, 24},
                        {220.462262, 100}}) {
        CHECK(Mass::fromKg(r.kg).value().lb() == Approx(r.lb).margin(5e-7).epsilon(0));
    }
}

TEST_CASE("kilograms to pounds and back, and the other way, lose nothing") {
    for (int quarter = 0; quarter <= 8'000; ++quarter) {
        const double n = quarter / 4.0;
        const Mass kg = Mass::fromKg(n).value();
        REQUIRE(Mass::fromLb(kg.lb()).value() == kg);
        const Mass lb = Mass::fromLb(n).value();
        // A quarter pound is 113 398 092.5 ug: half a microgram is lost once, on the way in.
        REQUIRE(lb.lb() == Approx(n).margin(1.2e-9).epsilon(0));
        REQUIRE(Mass::fromKg(lb.kg()).value() == lb);
    }
}

TEST_CASE("a mass outside 0 to 2 000 kg, or none at all, is refused") {
    CHECK(Mass::fromKg(2000));
    CHECK_FALSE(Mass::fromKg(2000.000000001));
    CHECK_FALSE(Mass::fromKg(-1));
    CHECK_FALSE(Mass::fromKg(std::numeric_limits<double>::quiet_NaN()));
    CHECK_FALSE(Mass::fromKg(std::numeric_limits<double>::infinity()));
    CHECK_FALSE(Mass::fromLb(1e300));
    CHECK_FALSE(Mass::fromMicrograms(-1));
}

TEST_CASE("shares run from nothing to the whole, paces above nothing to 1 000") {
    CHECK(Share::of(0.1).value().billionths() == 100'000'000);
    CHECK(Share::of(1).value() == Share::whole());
    CHECK(Share::of(0).value() == Share{});
    CHECK_FALSE(Share::of(1.1));
    CHECK_FALSE(Share::of(-0.1));
    CHECK_FALSE(Share::of(std::nan("")));
    CHECK(Rate::of(3.5).value().value() == 3.5);
    CHECK(Rate::of(1000));
    CHECK_FALSE(Rate::of(1000.1));
    CHECK_FALSE(Rate::of(0));
    CHECK_FALSE(Rate::of(-1));
    CHECK_FALSE(Rate::of(std::nan("")));
}

TEST_CASE("repetitions in reserve run from 0 to 10 in tenths") {
    CHECK(Rir::of(2).value().tenths() == 20);
    CHECK(Rir::of(1.25).value().tenths() == 13);
    CHECK(Rir::of(10));
    CHECK_FALSE(Rir::of(10.1));
    CHECK_FALSE(Rir::of(-0.1));
    CHECK_FALSE(Rir::of(std::nan("")));
}
