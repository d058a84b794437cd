// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/balance/balance_limits.hpp"
#include "blockwright/ledger/ledger_rules.hpp"
#include "blockwright/rules/house_limits.hpp"
#include "core/rules/draft.hpp"
#include "support/catch.hpp"

#include <set>

using namespace bw;
using namespace bw::test;

namespace {
LimitSpec spec(std::string unit, bool isBand) {
    return {"x", isBand ? band(1, 2) : number(1), std::move(unit), {}, {}};
}
LimitValue read(std::string_view text, std::string unit, bool isBand = false) {
    const auto value = parseLimit(text, spec(std::move(unit), isBand));
    if (!value) throw std::runtime_error(value.why().english());
    return value.value();
}
std::string refusal(std::string_view text, std::string unit, bool isBand = false) {
    const auto value = parseLimit(text, spec(std::move(unit), isBand));
    return value ? "understood" : value.why().english();
}
} // namespace

TEST_CASE("every limit and weight of every rule is listed once, and the gym may set each") {
    std::set<std::string> keys;
    std::size_t expected = balanceLimits().size() + ledgerLimits().size();
    for (const Rule& r : ruleBook()) expected += r.limits.size() + 3;
    GymSettings gym;
    for (const HouseLimit& limit : houseLimits()) {
        keys.insert(limit.key);
        gym.limits[limit.key] = limit.spec.standard;
        CHECK(houseLimit(limit.key) == &limit);
        CHECK_FALSE(limit.spec.meaning.english().empty());
        CHECK_FALSE(limit.spec.basis.english().empty());
    }
    CHECK(keys.size() == expected);
    CHECK(houseLimits().size() == expected);
    CHECK(unknownLimits(gym).empty());
    gym.limits["power-rest.nothing"] = number(1);
    gym.limits["power-rest"] = number(1);
    CHECK(unknownLimits(gym) == std::vector<std::string>{"power-rest", "power-rest.nothing"});
    CHECK(houseLimit("power-rest.nothing") == nullptr);
}

TEST_CASE("seconds are written as on the board") {
    CHECK(read("90", "s") == number(90));
    CHECK(read(" 90 S", "s") == number(90));
    CHECK(read("1:30", "s") == number(90));
    CHECK(read("2 min", "s") == number(120));
    CHECK(read("1.5 min", "s") == number(90));
    CHECK(read("60-120 s", "s", true) == band(60, 120));
    CHECK(read("1–2 min", "s", true) == band(60, 120));
    CHECK(read("1:30-2:00", "s", true) == band(90, 120));
}

TEST_CASE("a share is always per cent, and a number is a number, with or without its word") {
    CHECK(read("12 %", "share") == number(0.12));
    CHECK(read("12%", "share") == number(0.12));
    CHECK(read("12", "share") == number(0.12));
    CHECK(read("0.5", "share") == number(0.005));
    CHECK(read("10 %–60 %", "share", true) == band(0.1, 0.6));
    CHECK(read("6", "reps") == number(6));
    CHECK(read("6 reps", "reps") == number(6));
    CHECK(read("1 month", "months") == number(1));
    CHECK(read("0.6-1.4", "", true) == band(0.6, 1.4));
    CHECK(read("0,6 to 1,4", "", true) == band(0.6, 1.4));
    CHECK(read("0", "") == number(0));
}

TEST_CASE("what is not understood is answered with what is") {
    CHECK(refusal("soon", "s") ==
          "“soon” is not understood: write one number, such as 90 s, 1:30 or 2 min.");
    CHECK(refusal("60-120", "s") ==
          "“60-120” is not understood: write one number, such as 90 s, 1:30 or 2 min.");
    CHECK(refusal("half", "share") == "“half” is not understood: write one number, such as 12 %.");
    CHECK(refusal("", "", true) ==
          "“” is not understood: write lowest and highest, such as 0.6-1.4.");
    CHECK(refusal("2-1", "", true) == "The first number must not be above the second: “2-1”.");
    for (const char* text : {"5 m", "5 cal", "-5", "5/side", "5 s", "1:30", "5 6", "99999999999"})
        CHECK(refusal(text, "reps") != "understood");
    for (const char* text : {"5 m", "5 reps", "5 %"}) CHECK(refusal(text, "s") != "understood");
}

TEST_CASE("a lone number is a band of no width") { CHECK(read("90 s", "s", true) == band(90, 90)); }

TEST_CASE("every standard reads back as it is written, and so do odd values") {
    for (const HouseLimit& limit : houseLimits()) {
        const std::string text = limitText(limit.spec.standard, limit.spec);
        INFO(limit.key << " " << text);
        CHECK(parseLimit(text, limit.spec).value() == limit.spec.standard);
    }
    for (const double odd : {0.0, 0.1, 1.0 / 8, 7.5, 1234567.0}) {
        CHECK(read(limitText(number(odd), spec("s", false)), "s") == number(odd));
        CHECK(read(limitText(number(odd), spec("", false)), "") == number(odd));
    }
    CHECK(limitText(band(60, 120), spec("s", true)) == "60–120 s");
    CHECK(limitText(number(0.125), spec("share", false)) == "12.5 %");
    CHECK(limitText(number(6), spec("reps", false)) == "6 reps");
    CHECK(limitText(number(1), spec("reps", false)) == "1 rep");
    CHECK(limitText(number(1), spec("s", false)) == "1 s");
    CHECK(limitText(band(0.6, 1.4), spec("", true)) == "0.6–1.4");
}
