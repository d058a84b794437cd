// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/dose.hpp"
#include "blockwright/model/id.hpp"
#include "blockwright/model/message.hpp"
#include "blockwright/model/shares.hpp"
#include "blockwright/model/tempo.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <set>

using namespace bw;
using namespace bw::test;

TEST_CASE("an id is lower-case words joined by single hyphens") {
    const auto good =
        GENERATE(as<std::string>{}, "a", "goblet-squat", "m-001", "90-90-switch", "x1");
    CHECK(ExerciseId::parse(good)->text() == good);
    const auto bad =
        GENERATE(as<std::string>{}, "", "-a", "a-", "a--b", "A", "a b", "a_b", "é", "a/b", "a.b");
    CHECK_FALSE(ExerciseId::parse(bad));
    CHECK(ExerciseId::parse(bad).why().english().find("“" + bad + "”") == 0);
}

TEST_CASE("an id has at most 200 characters") {
    CHECK(isIdText(std::string(200, 'a')));
    CHECK_FALSE(isIdText(std::string(201, 'a')));
}

TEST_CASE("an id can be made from a name") {
    CHECK(idTextFrom("Sled push (light)") == "sled-push-light");
    CHECK(idTextFrom("  90/90  switch ") == "90-90-switch");
    CHECK(idTextFrom("Élan") == "lan");
    CHECK(idTextFrom("!?") == "");
    const std::string made = idTextFrom(std::string(150, 'a') + " " + std::string(150, 'b'));
    CHECK(isIdText(made));
    CHECK(isIdText(idTextFrom(std::string(199, 'a') + " b")));
}

TEST_CASE("a tempo is four figures, lowering first") {
    struct Row {
        const char* text;
        int seconds;
    };
    for (const Row r : {Row{"2010", 3},
                        {"31X0", 5},
                        {"31x0", 5},
                        {"XXXX", 4},
                        {"9999", 36},
                        {"000X", 1},
                        {"0001", 1}})
        CHECK(Tempo::parse(r.text)->seconds() == r.seconds);
    CHECK(Tempo::parse("31x0")->text() == "31X0");
    for (const char* bad : {"", "201", "20100", "0000", "2-1-0", "20 0", "20Y0", "２０"})
        CHECK_FALSE(Tempo::parse(bad));
}

TEST_CASE("a dose lies above nothing and within its bounds, the smaller number first") {
    CHECK(reps(5, 10).middle() == 7.5);
    CHECK(secondsDose(30, 45).hi() == 45);
    CHECK_FALSE(Dose::reps(0, 5));
    CHECK_FALSE(Dose::reps(10, 5));
    CHECK_FALSE(Dose::reps(5, 1001));
    CHECK(Dose::of(Measure::Seconds, 7'200'000, 7'200'000));
    CHECK_FALSE(Dose::of(Measure::Seconds, 1, 7'200'001));
    CHECK_FALSE(Dose::of(Measure::Metres, -1, 1));
}

TEST_CASE("shares of one exercise add up to the whole, give or take a thousandth") {
    const auto of = [](double a, double b) {
        return Shares<Plane>::of(
            {{Plane::Sagittal, Share::of(a).value()}, {Plane::Frontal, Share::of(b).value()}});
    };
    CHECK(of(0.9, 0.1));
    CHECK(of(0.6665, 0.333));
    CHECK(of(0.668, 0.333));
    CHECK_FALSE(of(0.9, 0.09));
    CHECK_FALSE(of(0.9, 0.2));
    CHECK_FALSE(Shares<Plane>::of({}));
    CHECK(of(0.5, 0.5)->largest() == Plane::Sagittal); // the first of equals
    CHECK(of(0.4, 0.6)->largest() == Plane::Frontal);
    CHECK(of(1, 0)->has(Plane::Sagittal));
    CHECK_FALSE(of(1, 0)->has(Plane::Frontal));
    CHECK(Shares<Plane>{}.none());
}

TEST_CASE("demands run from 0 to 3, and setting one says whether it changed") {
    Demands d;
    CHECK(d.set(Demand::Grip, 2).value());
    CHECK_FALSE(d.set(Demand::Grip, 2).value());
    CHECK(d[Demand::Grip] == 2);
    CHECK(d[Demand::Knee] == 0);
    CHECK_FALSE(d.set(Demand::Grip, 4));
    CHECK_FALSE(d.set(Demand::Grip, -1));
    CHECK(d[Demand::Grip] == 2);
}

TEST_CASE("an exercise needs the pace of its usual measure") {
    CHECK_FALSE(Pace::of(Measure::Reps, {}));
    CHECK_FALSE(Pace::of(Measure::Metres, {Rate::of(3).value(), {}, {}}));
    CHECK_FALSE(Pace::of(Measure::Kcal, {}));
    const Pace held = Pace::of(Measure::Seconds, {{}, Rate::of(1).value(), {}}).value();
    CHECK(held.times(Measure::Seconds));
    CHECK(held.times(Measure::Metres));
    CHECK_FALSE(held.times(Measure::Reps));
    CHECK_FALSE(held.times(Measure::Kcal));
}

TEST_CASE("every word of the trade is an id, unlike its siblings, and is found again") {
    const auto holds = [](const auto& words) {
        std::set<std::string_view> seen;
        for (const auto w : words) {
            CHECK(isIdText(w));
            CHECK(seen.insert(w).second);
        }
    };
    holds(Spelling<Pattern>::words);
    holds(Spelling<Demand>::words);
    holds(Spelling<SectionKind>::words);
    holds(Spelling<Format>::words);
    holds(shippedRoles());
    holds(shippedMuscles());
    holds(shippedLoads());
    CHECK(fromWord<Pattern>("vertical-pull") == Pattern::VerticalPull);
    CHECK(wordOf(Pattern::VerticalPull) == "vertical-pull");
    CHECK_FALSE(fromWord<Pattern>("Squat"));
    CHECK_FALSE(fromWord<Pattern>(""));
}

TEST_CASE("a message fills its gaps by number and leaves other signs alone") {
    CHECK(Message{"%2 of %1, %1", {"a", "b"}}.english() == "b of a, a");
    CHECK(Message{"95 %, 100 %% and %0", {"a"}}.english() == "95 %, 100 %% and %0");
    CHECK(Message{"%1 and %2", {"a"}}.english() == "a and ");
    CHECK(Message{"%1", {"%2", "b"}}.english() == "%2"); // what fills a gap is not filled again
    CHECK(Message{"%", {}}.english() == "%");
}
