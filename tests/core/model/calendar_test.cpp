// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/calendar.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

TEST_CASE("a month is written YYYY-MM") {
    CHECK(month("2026-09").year() == 2026);
    CHECK(month("2026-09").month() == 9);
    CHECK(month("1900-01").text() == "1900-01");
    CHECK(month("2999-12").text() == "2999-12");
    for (const char* bad : {"", "2026-9", "2026-00", "2026-13", "1899-12", "3000-01", "2026/09",
                            "2026-09 ", "-026-09", "2026-0x", "+202-01"}) {
        INFO(bad);
        REQUIRE_FALSE(Month::parse(bad));
        CHECK(Month::parse(bad).why().english().find(std::string("“") + bad + "”") == 0);
    }
}

TEST_CASE("months count on over the end of a year and stop at the ends of the calendar") {
    CHECK(month("2026-11").plus(3) == month("2027-02"));
    CHECK(month("2026-01").plus(-1) == month("2025-12"));
    CHECK(month("2027-02").monthsSince(month("2026-11")) == 3);
    CHECK(month("1900-02").plus(-9) == month("1900-01"));
    CHECK(month("2999-11").plus(9) == month("2999-12"));
    CHECK(month("2026-12") < month("2027-01"));
}

TEST_CASE("a date is written YYYY-MM-DD and must exist") {
    const auto date = [](const char* text) { return Date::parse(text); };
    CHECK(date("2026-09-03")->text() == "2026-09-03");
    CHECK(date("2026-09-03")->month() == month("2026-09"));
    CHECK(date("2028-02-29")); // leap years of the Gregorian calendar
    CHECK(date("2000-02-29"));
    CHECK_FALSE(date("2100-02-29"));
    CHECK_FALSE(date("2026-02-29"));
    for (const char* bad : {"", "2026-9-03", "2026-09-3", "2026-09-31", "2026-13-01", "2026-00-01",
                            "2026-09-00", "03.09.2026", "2026-09-03T00:00", "1899-12-31"})
        CHECK_FALSE(date(bad));
}

TEST_CASE("days count on over months, leap days and the ends of the calendar") {
    const auto date = [](const char* text) { return Date::parse(text).value(); };
    CHECK(date("2026-12-31").plusDays(1) == date("2027-01-01"));
    CHECK(date("2028-02-28").plusDays(1) == date("2028-02-29"));
    CHECK(date("2026-03-01").plusDays(-1) == date("2026-02-28"));
    CHECK(date("2999-12-30").plusDays(9) == date("2999-12-31"));
    CHECK(date("1900-01-02").plusDays(-9) == date("1900-01-01"));
}

TEST_CASE("a block has weeks 1 to 6") {
    CHECK(week(1) == Week::first());
    CHECK(week(6).index() == 5);
    CHECK_FALSE(Week::of(0));
    CHECK_FALSE(Week::of(7));
}
