// SPDX-License-Identifier: GPL-3.0-or-later
#include "version1_gym.hpp"

#include "gyms.hpp"
#include "support/fixtures.hpp"

namespace bw::test {

namespace {
Rir rir(int tenths) { return Rir::fromTenths(tenths).value(); }
Mass kg(double n) { return Mass::fromKg(n).value(); }
Share share(double part) { return Share::of(part).value(); }

GymSettings settings() {
    GymSettings s;
    s.name = "Saltmarsh Boathouse";
    s.massUnit = MassUnit::Lb;
    s.paper = Paper::A3;
    s.classMinutes = 55;
    s.places = 10;
    s.opening = Millis{150'000};
    s.closing = Millis{90'500};
    s.weights.of[0] = share(0.125);
    s.limits = {{"kit-queue.look_seconds", {90, 90, false}}, {"push-pull.block", {0.6, 1.4, true}}};
    s.extras = {R"({"motto":"slow is smooth"})"};
    return s;
}

std::vector<KitItem> kitList() {
    return {{kit("sled-lane"), "Sled lane", 2, Claim::Set, {}, {}, {}, {}},
            {kit("kettlebell"),
             "Kettlebell",
             24,
             Claim::Group,
             {{kg(8), 4}, {kg(12), 6}},
             {},
             {},
             {R"({"maker":null})"}},
            {kit("barbell"),
             "Barbell",
             6,
             Claim::Group,
             {},
             kg(20),
             {{kg(1.25), 8}, {kg(20), 12}},
             {}}};
}

Exercise gobletSquat() {
    Exercise e = exercise("goblet-squat", Pattern::Squat, 3.25, 10);
    e.name = "Goblet squat";
    e.patterns =
        Shares<Pattern>::of({{Pattern::Squat, share(0.9)}, {Pattern::TrunkStability, share(0.1)}})
            .value();
    e.muscles = {{MuscleId::parse("glutes").value(), share(0.5)},
                 {MuscleId::parse("quadriceps").value(), Share::whole()}};
    e.roles = {RoleId::parse("strength-long").value(), RoleId::parse("warm-up").value()};
    (void)e.demands.set(Demand::Knee, 2).ok();
    (void)e.demands.set(Demand::Grip, 1).ok();
    e.skill = 2;
    e.needs = {{{kit("kettlebell"), 1, {}}},
               {{kit("dumbbell"), 2, {R"({"size":"small"})"}}, {kit("box"), 1, {}}}};
    e.load = LoadId::parse("implement").value();
    e.easier = {ex("box-squat")};
    e.harder = {ex("front-rack-squat"), ex("back-squat")};
    e.swaps = {ex("leg-press")};
    e.noEasier = "nothing easier on the floor";
    e.cues = {"Elbows inside the knees.", "“Tall” at the top – and breathe."};
    e.cautions = {"Stop on knee pain."};
    e.extras = {R"({"colour":"teal"})"};
    return e;
}

Exercise sledPush() {
    Exercise e = exercise("sled-push", Pattern::Locomotion, 1, 20);
    e.name = "Sled push";
    e.planes = {};
    e.sides = Sides::Alternating;
    e.pace = Pace::of(Measure::Metres, {Rate::of(0.5).value(), Rate::of(1.2).value(), {}}).value();
    e.needs = {{{kit("sled-lane"), 1, {}}}};
    e.retired = true;
    return e;
}

Slot heavySlot() {
    Slot s = slot("goblet-squat", reps(5, 10));
    s.tempo = Tempo::parse("31X0").value();
    s.effort = Range<Rir>::of(rir(10), rir(35)).value();
    s.main = true;
    s.note = "Bells by the tank room door.";
    return s;
}
Slot openSlot() {
    Slot s;
    s.role = RoleId::parse("finisher").value();
    s.patterns = {Pattern::Carry, Pattern::Locomotion};
    s.extras = {R"({"idea":1})"};
    return s;
}

Block lowTide() {
    Slot push = slot("sled-push", Dose::of(Measure::Metres, 15'000, 20'500).value());
    push.locked = true;
    Section strength = section(SectionKind::Strength,
                               {group(rounds(2, 3), secondsRange(60, 120), {heavySlot(), push}),
                                group(rounds(3, 3), secondsRange(0, 0), {})});
    strength.talk = Millis{60'000};
    strength.budget = secondsRange(1320, 1800);
    strength.start = StartCounts{{6, 4}};
    strength.extras = {R"({"music":"loud"})"};
    Section finisher =
        section(SectionKind::Finisher, {group(rounds(1, 4), secondsRange(20, 40), {openSlot()})});
    finisher.start = StartSpread{};
    Block b = block("2026-09", {section(SectionKind::WarmUp, {}), strength, finisher});
    b.title = "Low tide";
    b.format = Format::HeavyThenLong;
    b.visitsPerWeek = 2;
    b.stair[3].rir = rir(5);
    b.stair.push_back({RoundsMode::High, rir(0), Intent::Challenge, {R"({"test":true})"}});
    return b;
}
} // namespace

Gym version1Gym() {
    Gym gym;
    gym.settings = settings();
    gym.kit = kitList();
    gym.shelf.put(sledPush());
    gym.shelf.put(gobletSquat());
    gym.put(lowTide());
    gym.put(block("2026-10", {}));
    gym.members = {{memberId("m-002"), "Wren", {}, true, {}},
                   {memberId("m-001"),
                    "Ottoline",
                    {{Demand::Overhead, FlagLevel::Avoid, "left shoulder", {}},
                     {Demand::Knee, FlagLevel::Limit, "", {R"({"since":2025})"}}},
                    false,
                    {R"({"lane":3})"}}};
    return gym;
}

std::vector<LiftResult> version1Results() {
    return {{memberId("m-001"), date("2026-09-03"), ex("goblet-squat"), 1, 5, rir(25), kg(12), {}},
            {memberId("m-001"),
             date("2026-09-03"),
             ex("goblet-squat"),
             2,
             4,
             {},
             kg(12),
             {R"({"video":"yes"})"}},
            {memberId("m-002"), date("1969-07-20"), ex("no-longer-there"), 1, 0, rir(0), {}, {}}};
}

} // namespace bw::test
