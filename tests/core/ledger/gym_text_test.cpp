// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/gym_text.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
GymSettings typed(GymField field, std::string_view text) {
    return withGymField({}, field, text).value();
}
std::string whyNot(GymField field, std::string_view text) {
    const auto now = withGymField({}, field, text);
    return now ? std::string() : now.why().english();
}
Mass kg(double n) { return Mass::fromKg(n).value(); }
KitItem bells() {
    return {.id = kit("kettlebell"),
            .name = "Kettlebell",
            .units = 0,
            .claim = Claim::Group,
            .loads = {},
            .bar = {},
            .plates = {},
            .extras = {}};
}
} // namespace

TEST_CASE("Every line of a gym is read back as it is written") {
    GymSettings gym;
    gym.name = "Tide Mill";
    gym.massUnit = MassUnit::Lb;
    gym.paper = Paper::Letter;
    gym.classMinutes = 75;
    gym.places = 16;
    gym.opening = Millis{150'000};
    gym.closing = Millis{0};
    gym.weights.of = {Share::of(0.123456789).value(), Share::of(1).value(), Share::of(0.9).value(),
                      Share::of(0).value()};
    GymSettings back;
    for (int f = 0; f <= static_cast<int>(GymField::Finisher); ++f) {
        const auto field = static_cast<GymField>(f);
        const std::string text = gymFieldText(gym, field);
        INFO(text);
        const auto now = withGymField(back, field, text);
        REQUIRE(now);
        back = *now;
    }
    CHECK(back == gym);
}

TEST_CASE("A gym's lines are read as a coach writes them") {
    CHECK(typed(GymField::Name, "  Tide Mill ").name == "Tide Mill");
    CHECK(typed(GymField::Unit, "LB").massUnit == MassUnit::Lb);
    CHECK(typed(GymField::Paper, "letter").paper == Paper::Letter);
    CHECK(typed(GymField::Minutes, "75").classMinutes == 75);
    CHECK(typed(GymField::Minutes, "1 h").classMinutes == 60);
    CHECK(typed(GymField::OpeningTime, "2").opening == Millis{120'000});
    CHECK(typed(GymField::OpeningTime, "2:30").opening == Millis{150'000});
    CHECK(typed(GymField::ClosingTime, "90 s").closing == Millis{90'000});
    CHECK(typed(GymField::ClosingTime, "").closing == Millis{0});
    CHECK(typed(GymField::Power, "50 %").weights.of[1] == Share::of(0.5).value());
    CHECK(typed(GymField::WarmUp, "0,25").weights.of[0] == Share::of(0.25).value());
}

TEST_CASE("What a gym can't be is refused with what it can be") {
    CHECK(whyNot(GymField::Name, std::string(201, 'a')) ==
          "201 characters are too long: at most 200.");
    CHECK(whyNot(GymField::Unit, "stone").find("write kg or lb") != std::string::npos);
    CHECK(whyNot(GymField::Paper, "A5").find("A4, Letter or A3") != std::string::npos);
    for (const char* text : {"4", "301", "60-75", "62:30", "long"}) {
        INFO(text);
        CHECK(whyNot(GymField::Minutes, text).find("whole minutes from 5 to 300") !=
              std::string::npos);
    }
    for (const char* text : {"0", "401", "-3", "twelve", "12.5", ""}) {
        INFO(text);
        CHECK(whyNot(GymField::Places, text).find("from 1 to 400") != std::string::npos);
    }
    CHECK_FALSE(whyNot(GymField::OpeningTime, "61").empty());
    CHECK_FALSE(whyNot(GymField::Strength, "1.5").empty());
    CHECK_FALSE(whyNot(GymField::Strength, "").empty());
}

TEST_CASE("Kit is read back as it is written, and a load shown rounded stays what it was") {
    Gym gym;
    KitItem item = bells();
    item.units = 3;
    item.loads = {{Mass::fromLb(35).value(), 2}, {kg(24), 1}};
    gym.put(item);
    const std::string shown = kitFieldText(gym, item, KitField::Loads);
    CHECK(shown == "15.88×2, 24");
    CHECK(withKitField(gym, item, KitField::Loads, shown).value() == item);
    const auto more = withKitField(gym, item, KitField::Loads, "15.88×3, 24");
    CHECK(more->loads.begin()->first == Mass::fromLb(35).value());
    CHECK(more->units == 4);
}

TEST_CASE("Kit held through the group is as many as its loads; a machine is not its steps") {
    const Gym gym;
    CHECK(withKitField(gym, bells(), KitField::Loads, "8x2, 12x4")->units == 6);
    KitItem tower = bells();
    tower.claim = Claim::Set;
    CHECK(withKitField(gym, tower, KitField::Loads, "5, 10, 15")->units == 1);
    tower.units = 2;
    CHECK(withKitField(gym, tower, KitField::Loads, "5, 10, 15")->units == 2);
    CHECK(withKitField(gym, tower, KitField::Loads, "")->loads.empty());
    CHECK(withKitField(gym, tower, KitField::Plates, "20x8")->units == 2);
    CHECK(withKitField(gym, tower, KitField::Bar, "20 kg")->bar == kg(20));
    CHECK_FALSE(withKitField(gym, tower, KitField::Bar, " ")->bar.has_value());
    for (const char* text : {"20, 15", "20x2", "heavy"})
        CHECK(withKitField(gym, tower, KitField::Bar, text).why().english().find("empty") !=
              std::string::npos);
    CHECK(withKitField(gym, tower, KitField::Units, "")->units == 0);
    CHECK_FALSE(withKitField(gym, tower, KitField::Units, "1001").ok());
}

TEST_CASE("Kit keeps a name of its own") {
    Gym gym;
    gym.put(bells());
    KitItem other = bells();
    other.id = kit("club");
    CHECK(withKitField(gym, other, KitField::Name, "Club")->name == "Club");
    CHECK(withKitField(gym, other, KitField::Name, "kettlebell ").why().english() ==
          "“kettlebell” is in the table already: write another name.");
    CHECK(withKitField(gym, bells(), KitField::Name, "Kettlebell").ok());
    CHECK_FALSE(withKitField(gym, other, KitField::Name, " ").ok());
}
