// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/exercise_text.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

namespace bw::test {

namespace {
using Field = ExerciseField;
constexpr Field kFields[] = {Field::Name,  Field::Patterns, Field::Planes,  Field::Muscles,
                             Field::Sides, Field::Roles,    Field::Demands, Field::Skill,
                             Field::Kit,   Field::Load,     Field::Measure, Field::Pace,
                             Field::Setup, Field::NoEasier, Field::NoHarder};

Gym gymOfTwo() {
    Gym gym;
    gym.put(KitItem{kit("bench"), "Bench", 4, Claim::Group, {}, {}, {}, {}});
    gym.put(KitItem{kit("long-band"), "Long band", 8, Claim::Group, {}, {}, {}, {}});
    gym.put(KitItem{kit("rack"), "Squat rack", 2, Claim::Group, {}, {}, {}, {}});
    gym.shelf.put(exercise("goblet-squat", Pattern::Squat));
    gym.shelf.put(exercise("box-squat", Pattern::Squat));
    return gym;
}

Result<Exercise> typed(Field field, std::string_view text) {
    const Gym gym = gymOfTwo();
    return withField(gym, *gym.shelf.find(ex("goblet-squat")), field, text);
}
std::string again(Field field, std::string_view text) {
    const auto e = typed(field, text);
    return e ? fieldText(gymOfTwo(), *e, field) : "not understood: " + e.why().english();
}
} // namespace

TEST_CASE("What is written of a field is read back to the same exercise") {
    Gym gym = gymOfTwo();
    Exercise e = exercise("sled-drag", Pattern::Locomotion);
    e.patterns = Shares<Pattern>::of({{Pattern::Squat, Share::of(0.333).value()},
                                      {Pattern::Hinge, Share::of(0.333).value()},
                                      {Pattern::TrunkStability, Share::of(0.333).value()}})
                     .value();
    e.planes = Shares<Plane>::of({{Plane::Frontal, Share::of(0.125).value()},
                                  {Plane::Sagittal, Share::of(0.875).value()}})
                   .value();
    e.muscles = {{MuscleId::parse("hip-flexors").value(), Share::of(0.0625).value()},
                 {MuscleId::parse("own-word").value(), Share::whole()}};
    e.roles = {RoleId::parse("finisher").value(), RoleId::parse("relay").value()};
    REQUIRE(e.demands.set(Demand::Grip, 3).ok());
    REQUIRE(e.demands.set(Demand::Knee, 1).ok());
    e.sides = GENERATE(Sides::Both, Sides::Each, Sides::Alternating);
    e.skill = GENERATE(1, 2, 3);
    e.pace = Pace::of(Measure::Metres, {Rate::of(2.75).value(), Rate::of(1.2).value(),
                                        Rate::of(0.000000001).value()})
                 .value();
    e.setup = Millis{62'500};
    e.needs = {{{kit("bench"), 2, {}}, {kit("rack"), 1, {}}}, {{kit("long-band"), 1, {}}}, {}};
    e.load = LoadId::parse("tyre").value();
    e.noEasier = "The lightest there is";
    gym.shelf.put(e);
    for (const Field field : kFields) {
        const std::string text = fieldText(gym, e, field);
        INFO(text);
        const auto back = withField(gym, e, field, text);
        REQUIRE(back.ok());
        CHECK(*back == e);
    }
}

TEST_CASE("Shares are per cent, and one without a number gets what the others leave") {
    CHECK(again(Field::Patterns, "Hinge") == "hinge");
    CHECK(again(Field::Patterns, "trunk-stability 10, squat 90 %") ==
          "squat 90 %, trunk stability 10 %");
    CHECK(again(Field::Patterns, "squat, hinge 12.5") == "squat 87.5 %, hinge 12.5 %");
    CHECK(again(Field::Planes, "") == "none");
    CHECK(again(Field::Patterns, "hing") ==
          "not understood: “hing” is not understood: write squat, hinge, lunge, horizontal push, "
          "vertical push, horizontal pull, vertical pull, carry, rotation, trunk stability, "
          "locomotion or mobility.");
    for (const char* bad : {"", "squat, hinge", "squat 60, hinge 60", "squat 110", "squat 0",
                            "squat 100, hinge", "squat -20, hinge", "squat 4e1, hinge 60"})
        CHECK_FALSE(typed(Field::Patterns, bad).ok());
}

TEST_CASE("Kit is alternatives of one or more things, by name or id") {
    CHECK(again(Field::Kit, "none") == "none");
    CHECK(again(Field::Kit, "2 Bench+squat rack OR long-band") ==
          "2 × bench + squat rack or long band");
    CHECK(again(Field::Kit, "2 × bench, rack") == "2 × bench + squat rack");
    const auto bad = typed(Field::Kit, "2 bunch");
    REQUIRE_FALSE(bad.ok());
    CHECK(bad.why().english() ==
          "“2 bunch” is no kit of this gym: write bench, long band or squat rack, with how many "
          "before it, such as 2 bench.");
    for (const char* text : {"0 bench", "101 bench", "1.5 bench", "bench rack"})
        CHECK_FALSE(typed(Field::Kit, text).ok());
}

TEST_CASE("A role, muscle or load that is new wants a plus, so that a slip is no new word") {
    CHECK(again(Field::Roles, "Strength heavy, finisher, finisher") == "strength-heavy, finisher");
    CHECK(again(Field::Roles, "+relay") == "relay");
    CHECK(again(Field::Roles, "relay") ==
          "not understood: “relay” is not understood: write warm-up, power, strength-heavy, "
          "strength-long, finisher or +relay for a word of your own.");
    CHECK(again(Field::Load, "barbel") ==
          "not understood: “barbel” is not understood: write bodyweight, implement, pair, barbell, "
          "sled, machine, band or +barbel for a word of your own.");
    CHECK(again(Field::Muscles, "hip flexors 25, glutes") == "glutes, hip flexors 25 %");
    CHECK_FALSE(typed(Field::Muscles, "glute").ok());
    CHECK_FALSE(typed(Field::Load, "").ok());
    CHECK_FALSE(typed(Field::Roles, "+").ok());
}

TEST_CASE("Demands say how much, times are one time, and a pace belongs to its measure") {
    CHECK(again(Field::Demands, "knee 1, grip 2") == "grip 2, knee 1");
    CHECK(again(Field::Demands, "grip") ==
          "not understood: “grip” does not say how much: write 0 to 3 behind it, such as grip 2.");
    CHECK_FALSE(typed(Field::Demands, "grip 4").ok());
    CHECK(again(Field::Setup, "1:30") == "90 s");
    CHECK(again(Field::Setup, "0") == "none");
    CHECK_FALSE(typed(Field::Setup, "10-20 s").ok());
    CHECK_FALSE(typed(Field::Setup, "11 min").ok());
    CHECK(again(Field::Pace, "3 s a rep, 1.5m/s") == "3 s/rep, 1.5 m/s");
    CHECK(again(Field::Pace, "1.5 m/s") ==
          "not understood: It is measured in reps, so it needs a pace for that, such as 3 s/rep.");
    CHECK(again(Field::Measure, "Seconds") == "seconds");
    CHECK(
        again(Field::Measure, "metres") ==
        "not understood: Measured in metres it needs a pace for that: write it on the line “pace” "
        "first.");
    CHECK(again(Field::Skill, "2") == "2 (needs teaching)");
    CHECK_FALSE(typed(Field::Skill, "4").ok());
    CHECK(again(Field::Sides, "EACH") == "each (the dose is per side)");
}

TEST_CASE("A name is there, not too long, and nobody else's") {
    CHECK(again(Field::Name, "  Goblet squat, slow ") == "Goblet squat, slow");
    CHECK(again(Field::Name, "GOBLET-squat") == "GOBLET-squat"); // its own, written anew
    CHECK(again(Field::Name, "Box-squat") ==
          "not understood: “Box-squat” is on the Shelf already: write another name.");
    CHECK_FALSE(typed(Field::Name, "  ").ok());
    CHECK(typed(Field::Name, std::string(200, 'x')).ok());
    CHECK_FALSE(typed(Field::Name, std::string(201, 'x')).ok());
}

TEST_CASE("A cue is changed, added at the end, or goes when it is emptied") {
    using Lines = std::vector<std::string>;
    const Lines two{"Sit back", "Look ahead"};
    CHECK(*withLine(two, 1, " Look down ") == Lines{"Sit back", "Look down"});
    CHECK(*withLine(two, 2, "Breathe") == Lines{"Sit back", "Look ahead", "Breathe"});
    CHECK(*withLine(two, 0, "") == Lines{"Look ahead"});
    CHECK(*withLine(two, 2, " ") == two);
    CHECK_FALSE(withLine(two, 0, std::string(201, 'x')).ok());
}

} // namespace bw::test
