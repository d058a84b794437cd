// SPDX-License-Identifier: GPL-3.0-or-later
// Weeks worked out by another program from Foster's definitions (Med Sci Sports Exerc
// 1998;30(7):1164-1168): load a day, monotony = mean / standard deviation, strain = sum x monotony.
// The paper does not say which deviation; these are with the number of days below the bar.
#include "blockwright/ramp/session_load.hpp"
#include "support/catch.hpp"

#include <cmath>

using namespace bw;

TEST_CASE("weeks of session-RPE load, with monotony and strain") {
    struct Row {
        std::array<double, 7> days;
        double total, mean, deviation, monotony, strain;
    };
    for (const Row& row :
         {Row{{300, 0, 420, 0, 360, 0, 240}, 1320, 188.5714, 170.9995, 1.1028, 1455.64},
          {{0, 450, 0, 450, 0, 450, 0}, 1350, 192.8571, 222.6922, 0.8660, 1169.13},
          {{400, 400, 400, 400, 400, 400, 0}, 2400, 342.8571, 139.9708, 2.4495, 5878.78},
          {{420, 0, 0, 0, 0, 0, 0}, 420, 60.0000, 146.9694, 0.4082, 171.46}}) {
        const WeekLoad week = weekLoad(row.days);
        CHECK(week.total == row.total);
        CHECK(week.mean == Approx(row.mean).margin(0.00005));
        CHECK(week.deviation == Approx(row.deviation).margin(0.00005));
        CHECK(week.monotony.value() == Approx(row.monotony).margin(0.00005));
        CHECK(week.strain.value() == Approx(row.strain).margin(0.005));
    }
}

TEST_CASE("a week of seven like days has no monotony and no strain") {
    for (const double load : {350.0, 0.0, 0.1}) {
        const std::array<double, 7> days{load, load, load, load, load, load, load};
        const WeekLoad week = weekLoad(days);
        CHECK(week.total == Approx(7 * load));
        CHECK(week.deviation == 0);
        CHECK_FALSE(week.monotony.has_value());
        CHECK_FALSE(week.strain.has_value());
    }
}

TEST_CASE("k like days in seven have monotony sqrt(k / (7 - k))") {
    for (int k = 1; k <= 6; ++k) {
        std::array<double, 7> days{};
        for (int i = 0; i < k; ++i) days[static_cast<std::size_t>(i)] = 333;
        CHECK(weekLoad(days).monotony.value() ==
              Approx(std::sqrt(double{1} * k / (7 - k))).epsilon(1e-9));
    }
}
