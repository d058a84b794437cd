// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shorthand.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <random>

using namespace bw;
using namespace bw::test;

namespace {
Dose dose(Measure m, std::int64_t lo, std::int64_t hi) { return Dose::of(m, lo, hi).value(); }
Dose time(std::int64_t lo, std::int64_t hi) { return dose(Measure::Seconds, lo, hi); }
Range<Rir> rir(int loTenths, int hiTenths) {
    return Range<Rir>::between(Rir::fromTenths(loTenths).value(),
                               Rir::fromTenths(hiTenths).value());
}

struct Read {
    const char* text;
    Dose dose;
    bool perSide = false;
};
} // namespace

TEST_CASE("a dose is read as coaches write it") {
    const Dose reps5 = reps(5, 5);
    const Dose reps5to10 = reps(5, 10);
    const std::vector<Read> cases{
        {"5", reps5},
        {" 5 reps ", reps5},
        {"5 REP", reps5},
        {"5-10", reps5to10},
        {"5–10", reps5to10},
        {"5—10", reps5to10},
        {"5−10", reps5to10},
        {"5 - 10 reps", reps5to10},
        {"5 to 10", reps5to10},
        {"5to10", reps5to10},
        {"5 reps to 10 reps", reps5to10},
        {"10/side", reps(10, 10), true},
        {"10 / side", reps(10, 10), true},
        {"10 per side", reps(10, 10), true},
        {"10 a side", reps(10, 10), true},
        {"10 each", reps(10, 10), true},
        {"10 each side", reps(10, 10), true},
        {"8-10 reps each leg", reps(8, 10), true},
        {"8/arm", reps(8, 8), true},
        {"30 s", time(30'000, 30'000)},
        {"30s", time(30'000, 30'000)},
        {"30 sec", time(30'000, 30'000)},
        {"30 seconds", time(30'000, 30'000)},
        {"30\"", time(30'000, 30'000)},
        {"30″", time(30'000, 30'000)},
        {"30–45 s", time(30'000, 45'000)},
        {"30 s - 1 min", time(30'000, 60'000)},
        {"30 s/side", time(30'000, 30'000), true},
        {"1 min", time(60'000, 60'000)},
        {"1.5 min", time(90'000, 90'000)},
        {"1,5 min", time(90'000, 90'000)},
        {"1-2 min", time(60'000, 120'000)},
        {"1:30", time(90'000, 90'000)},
        {"1:30 min", time(90'000, 90'000)},
        {"0:45-1:15", time(45'000, 75'000)},
        {"1 min 30 s", time(90'000, 90'000)},
        {"1'30\"", time(90'000, 90'000)},
        {"1:02:00", time(3'720'000, 3'720'000)},
        {"2 h", time(7'200'000, 7'200'000)},
        {"0.125 s", time(125, 125)},
        {"0,125 s", time(125, 125)},
        {"15 m", dose(Measure::Metres, 15'000, 15'000)},
        {"15m", dose(Measure::Metres, 15'000, 15'000)},
        {"15 metres", dose(Measure::Metres, 15'000, 15'000)},
        {"7.5 m", dose(Measure::Metres, 7'500, 7'500)},
        {"0.4-1 km", dose(Measure::Metres, 400'000, 1'000'000)},
        {"20 m each", dose(Measure::Metres, 20'000, 20'000), true},
        {"5 cal", dose(Measure::Kcal, 5'000, 5'000)},
        {"5 kcal", dose(Measure::Kcal, 5'000, 5'000)},
        {"5–8 Cals", dose(Measure::Kcal, 5'000, 8'000)},
    };
    for (const Read& c : cases) {
        INFO(c.text);
        const auto read = parseDose(c.text, Measure::Reps);
        REQUIRE(read);
        CHECK(read->dose == c.dose);
        CHECK(read->perSide == c.perSide);
    }
}

TEST_CASE("a bare number means what the exercise is usually measured in") {
    CHECK(parseDose("20", Measure::Seconds)->dose == time(20'000, 20'000));
    CHECK(parseDose("20-30", Measure::Metres)->dose == dose(Measure::Metres, 20'000, 30'000));
    CHECK(parseDose("7,5", Measure::Kcal)->dose == dose(Measure::Kcal, 7'500, 7'500));
    CHECK(parseDose("20 reps", Measure::Seconds)->dose == reps(20, 20));
}

TEST_CASE("a dose that is not understood is repeated, with what would be") {
    const auto text =
        GENERATE(as<std::string>{}, "", " ", "five", "5-", "-5", "5 6", "5-10-15", "5/", "3x5",
                 "5 kg", "7.5", "7.5 reps", "5 reps - 10 s", "5 m - 10 cal", "1:5", "1:75",
                 "1:30-2", "2-1:30", "1:30 m", "1,000 m", "5..5", "5.", "12345678", "1.23456 s",
                 "1.2345 s", "10 e/s", "side", "5 rir", "5 rounds", "1:00:00:00", "5 ½");
    INFO(text);
    const auto read = parseDose(text, Measure::Reps);
    REQUIRE_FALSE(read);
    const std::string why = read.why().english();
    CHECK(why.find("“" + text + "”") == 0);
    CHECK(why.find("10/side, 30 s, 1:30") != std::string::npos);
}

TEST_CASE("a dose out of range or the wrong way round says so") {
    CHECK(parseDose("10-5", Measure::Reps).why().english() ==
          "“10-5” is the wrong way round: write the smaller number first.");
    CHECK(parseDose("2-1 min", Measure::Reps).why().english().find("wrong way") !=
          std::string::npos);
    CHECK(parseDose("0", Measure::Reps).why().english() ==
          "“0” is out of range: a dose is above 0 and at most 1000 reps.");
    CHECK_FALSE(parseDose("0-5", Measure::Reps));
    CHECK(parseDose("1000", Measure::Reps));
    CHECK_FALSE(parseDose("1001", Measure::Reps));
    CHECK(parseDose("2:00:01", Measure::Reps).why().english() ==
          "“2:00:01” is out of range: a dose is above 0 and at most 120 min.");
    CHECK(parseDose("21 km", Measure::Reps).why().args[1] == "20000 m");
}

TEST_CASE("a long text is cut between characters in the answer") {
    std::string text;
    for (int i = 0; i < 60; ++i) text += "é";
    const auto why = parseDose(text, Measure::Reps).why();
    CHECK(why.args[0].size() == 40 * 2 + std::string("…").size());
    CHECK(why.args[0].ends_with("é…"));
}

TEST_CASE("rounds are whole, from 1 to 20") {
    CHECK(*parseRounds("3") == rounds(3, 3));
    CHECK(*parseRounds("2-3") == rounds(2, 3));
    CHECK(*parseRounds("2 to 3 rounds") == rounds(2, 3));
    CHECK(*parseRounds("3 sets") == rounds(3, 3));
    CHECK(*parseRounds("3x") == rounds(3, 3));
    CHECK(*parseRounds("20") == rounds(20, 20));
    const auto text =
        GENERATE(as<std::string>{}, "0", "21", "2.5", "", "3 s", "3/side", "three", "2-21");
    const auto why = parseRounds(text).why().english();
    CHECK(why.find("“" + text + "”") == 0);
    CHECK(why.find("1 to 20") != std::string::npos);
}

TEST_CASE("a rest is in seconds unless it says otherwise, at most half an hour") {
    CHECK(*parseRest("90") == secondsRange(90, 90));
    CHECK(*parseRest("60-120") == secondsRange(60, 120));
    CHECK(*parseRest("60–120 s") == secondsRange(60, 120));
    CHECK(*parseRest("2 min") == secondsRange(120, 120));
    CHECK(*parseRest("1:30-2:00") == secondsRange(90, 120));
    CHECK(*parseRest("0") == secondsRange(0, 0));
    CHECK(*parseRest("0-30 s") == secondsRange(0, 30));
    CHECK(*parseRest(" No  rest ") == secondsRange(0, 0));
    CHECK(*parseRest("none") == secondsRange(0, 0));
    CHECK(*parseRest("30 min") == secondsRange(1800, 1800));
    CHECK(parseRest("31 min").why().english() == "“31 min” is out of range: at most 30 min.");
    CHECK_FALSE(parseRest("5 reps"));
    CHECK_FALSE(parseRest("90/side"));
    CHECK_FALSE(parseRest("a while"));
    CHECK_FALSE(parseRest("120-60"));
}

TEST_CASE("a budget is in minutes unless it says otherwise, at most five hours") {
    CHECK(*parseBudget("22-30") == secondsRange(22 * 60, 30 * 60));
    CHECK(*parseBudget("22") == secondsRange(22 * 60, 22 * 60));
    CHECK(*parseBudget("7,5 to 10 min") == secondsRange(450, 600));
    CHECK(*parseBudget("21:30") == secondsRange(21 * 60 + 30, 21 * 60 + 30));
    CHECK(*parseBudget("90 s") == secondsRange(90, 90));
    CHECK(*parseBudget("5 h") == secondsRange(18'000, 18'000));
    CHECK_FALSE(parseBudget("301"));
    CHECK_FALSE(parseBudget("30-22"));
    CHECK_FALSE(parseBudget("20 m"));
}

TEST_CASE("an effort is read as repetitions in reserve, or turned into them from RPE") {
    CHECK(*parseEffort("2") == rir(20, 20));
    CHECK(*parseEffort("1-3") == rir(10, 30));
    CHECK(*parseEffort("1–3 RIR") == rir(10, 30));
    CHECK(*parseEffort("RIR 2") == rir(20, 20));
    CHECK(*parseEffort("1,5") == rir(15, 15));
    // RPE 10, 9, 8: 0, 1, 2 in reserve. Zourdos et al., J Strength Cond Res 2016;30(1):267-275.
    CHECK(*parseEffort("RPE 10") == rir(0, 0));
    CHECK(*parseEffort("RPE 9") == rir(10, 10));
    CHECK(*parseEffort("7-8 rpe") == rir(20, 30));
    CHECK_FALSE(parseEffort("11"));
    CHECK_FALSE(parseEffort("RPE 11"));
    CHECK_FALSE(parseEffort("1.25"));
    CHECK_FALSE(parseEffort("2 reps"));
    CHECK_FALSE(parseEffort("RIR 2 rpe"));
    CHECK_FALSE(parseEffort("3-1"));
}

TEST_CASE("writing has one form") {
    CHECK(doseText(reps(5, 10), Sides::Both) == "5–10");
    CHECK(doseText(reps(10, 10), Sides::Each) == "10/side");
    CHECK(doseText(reps(10, 10), Sides::Alternating) == "10");
    CHECK(doseText(reps(10, 12), Sides::Both, Measure::Seconds) == "10–12 reps");
    CHECK(doseText(secondsDose(30, 45), Sides::Both) == "30–45 s");
    CHECK(doseText(secondsDose(60, 60), Sides::Each) == "60 s/side");
    CHECK(doseText(secondsDose(120, 180), Sides::Both) == "2–3 min");
    CHECK(doseText(secondsDose(1230, 1230), Sides::Both) == "20:30");
    CHECK(doseText(time(1'500, 1'500), Sides::Both) == "1.5 s");
    CHECK(doseText(dose(Measure::Metres, 15'000, 15'000), Sides::Both) == "15 m");
    CHECK(doseText(dose(Measure::Metres, 7'500, 10'250), Sides::Both) == "7.5–10.25 m");
    CHECK(doseText(dose(Measure::Kcal, 5'000, 5'000), Sides::Both) == "5 cal");
    CHECK(restText(secondsRange(60, 120)) == "60–120 s");
    CHECK(restText(secondsRange(120, 180)) == "2–3 min");
    CHECK(restText(secondsRange(120, 120)) == "2 min");
    CHECK(restText(secondsRange(90, 240)) == "1:30–4:00");
    CHECK(restText(secondsRange(0, 0)) == "no rest");
    CHECK(restText(secondsRange(0, 30)) == "0–30 s");
    CHECK(roundsText(rounds(2, 3)) == "2–3");
    CHECK(roundsText(rounds(2, 2)) == "2");
    CHECK(effortText(rir(10, 30)) == "1–3");
    CHECK(effortText(rir(15, 15)) == "1.5");
}

TEST_CASE("a clock counts minutes, and hours from the first one on") {
    CHECK(clockText(Millis{0}) == "0:00");
    CHECK(clockText(Millis{26 * 60'000 + 10'000}) == "26:10");
    CHECK(clockText(Millis{59 * 60'000 + 59'499}) == "59:59");
    CHECK(clockText(Millis{59 * 60'000 + 59'500}) == "1:00:00");
    CHECK(clockText(Millis{62 * 60'000}) == "1:02:00");
    CHECK(clockText(Millis{-90'000}) == "-1:30");
}

TEST_CASE("what is written is read again as the same value") {
    std::mt19937_64 draw(20'260'901);
    const auto upTo = [&](std::int64_t most) {
        // Small and large values alike: a random number of digits first.
        const std::int64_t cap = std::min<std::int64_t>(most, std::int64_t{10} << (draw() % 24));
        return static_cast<std::int64_t>(draw() % static_cast<std::uint64_t>(cap)) + 1;
    };
    for (int i = 0; i < 20'000; ++i) {
        const auto m = static_cast<Measure>(draw() % 4);
        const auto usual = static_cast<Measure>(draw() % 4);
        const auto sides = static_cast<Sides>(draw() % 3);
        // Coaches write whole seconds, metres, calories; half of the draws are such.
        const std::int64_t grain = m != Measure::Reps && draw() % 2 ? 1'000 : 1;
        const std::int64_t a = upTo(Dose::most(m) / grain) * grain;
        const std::int64_t b = draw() % 3 ? upTo(Dose::most(m) / grain) * grain : a;
        const Dose written = dose(m, std::min(a, b), std::max(a, b));
        const std::string text = doseText(written, sides, usual);
        INFO(text);
        const auto read = parseDose(text, usual);
        REQUIRE(read);
        REQUIRE(read->dose == written);
        REQUIRE(read->perSide == (sides == Sides::Each));
    }
    for (int i = 0; i < 20'000; ++i) {
        const std::int64_t grain = draw() % 2 ? 1'000 : 1;
        const auto most = 1'800'000 / grain;
        const auto rest = Range<Millis>::between(Millis{(upTo(most) - 1) * grain},
                                                 Millis{(upTo(most) - 1) * grain});
        INFO(restText(rest));
        const auto read = parseRest(restText(rest));
        REQUIRE(read);
        REQUIRE(*read == rest);
    }
    for (int lo = 0; lo <= 100; ++lo)
        for (int hi = lo; hi <= 100; hi += 7)
            CHECK(*parseEffort(effortText(rir(lo, hi))) == rir(lo, hi));
    for (int lo = 1; lo <= 20; ++lo)
        for (int hi = lo; hi <= 20; ++hi)
            CHECK(*parseRounds(roundsText(rounds(lo, hi))) == rounds(lo, hi));
}
