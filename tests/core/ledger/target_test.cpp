// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/target.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <cmath>

using namespace bw;
using namespace bw::test;

namespace {
const MemberId kAnn = MemberId::parse("m-001").value();
Mass kg(double x) { return Mass::fromKg(x).value(); }
Date day(std::string_view text) { return Date::parse(text).value(); }

// A gym with a bar (20 kg, steps of 2.5) and bells, a squat with the bar in the first slot of
// September's strength pair, a chin-up in the second.
struct House {
    Gym gym;
    Block draft;
    std::vector<LiftResult> results;

    House()
        : draft(block("2026-09",
                      {section(SectionKind::Strength,
                               {group(rounds(2, 3), secondsRange(60, 90),
                                      {slot("squat", reps(5, 5)), slot("chin-up", reps(5, 8))})}),
                       section(SectionKind::Finisher, {group(rounds(1, 2), secondsRange(30, 30),
                                                             {slot("swing", reps(15, 15))})})})) {
        gym.put(KitItem{kit("bar"),
                        "Bar",
                        6,
                        Claim::Group,
                        {},
                        kg(20),
                        {{kg(20), 8}, {kg(10), 4}, {kg(5), 4}, {kg(2.5), 4}, {kg(1.25), 4}},
                        {}});
        gym.put(KitItem{kit("bell"),
                        "Bell",
                        20,
                        Claim::Group,
                        {{kg(8), 4}, {kg(12), 4}, {kg(16), 4}, {kg(24), 2}},
                        {},
                        {},
                        {}});
        put("squat", "barbell", {{{kit("bar"), 1, {}}}});
        put("chin-up", "bodyweight", {});
        put("swing", "implement", {{{kit("bell"), 1, {}}}});
        gym.put(Member{kAnn, "Ann", {}, true, {}});
    }
    void put(std::string_view id, std::string_view load, KitNeeds needs) {
        Exercise e = exercise(id, Pattern::Squat);
        e.load = LoadId::parse(load).value();
        e.needs = std::move(needs);
        e.roles = {RoleId::parse("strength-heavy").value(), RoleId::parse("strength-long").value()};
        gym.shelf.put(std::move(e));
    }
    void did(std::string_view id, std::string_view date, int reps, double rir, double load) {
        LiftResult r{kAnn, day(date), ex(id), 1, reps, Rir::of(rir).value(), {}, {}};
        if (load > 0) r.load = kg(load);
        results.push_back(std::move(r));
    }
    [[nodiscard]] std::vector<SlotTargets> targets(std::string_view on = "2026-09-01") const {
        Ledger ledger(gym, day(on));
        for (const LiftResult& r : results) ledger.add(r);
        MonthTargets all(gym, draft);
        return all.of(ledger, *gym.findMember(kAnn));
    }
    [[nodiscard]] std::vector<double> loads(std::string_view on = "2026-09-01") const {
        std::vector<double> out;
        const auto all = targets(on);
        for (const WeekTarget& w : all.at(0).weeks)
            out.push_back(w.target.loading ? w.target.loading->total.kg() : 0);
        return out;
    }
    void limit(const std::string& key, double v) { gym.settings.limits[key] = {v, v, false}; }
};
using Loads = std::vector<double>;
} // namespace

TEST_CASE("targets are the estimate turned back at each week's reserve, in loads the gym has") {
    House house;
    house.did("squat", "2026-08-27", 5, 1, 100); // Epley: 120 kg
    // 120 / (1 + 9/30) = 92.3, / (1 + 8/30) = 94.7, / (1 + 7/30) = 97.3, / (1 + 6/30) = 100
    CHECK(house.loads() == Loads{92.5, 95, 97.5, 100});
    const auto all = house.targets();
    CHECK(all[0].weeks[0].target.aim == Aim::Load);
    CHECK(all[0].weeks[0].target.text.english() ==
          "92.3 kg for 5 repetitions with 4 in reserve, by the estimate.");
    CHECK(all[0].estimate->kg == Approx(120));
    CHECK(all[0].last->load == kg(100));
    house.limit("ledger.never_above", 1);
    CHECK(house.loads() == Loads{90, 92.5, 95, 100});
}

TEST_CASE("nothing known: find it in week 1, then follow what was found") {
    const House house;
    const auto all = house.targets();
    CHECK(all[0].weeks[0].target.aim == Aim::Find);
    CHECK(all[0].weeks[0].target.text.english() ==
          "Find it: the load for 5 repetitions with 4 in reserve.");
    for (const std::size_t w : {1U, 2U, 3U}) CHECK(all[0].weeks[w].target.aim == Aim::Follow);
    CHECK(house.loads() == Loads{0, 0, 0, 0});
}

TEST_CASE("a load rises by at most the jump over the one before, at the same repetitions") {
    House house;
    for (const char* date : {"2026-08-03", "2026-08-06", "2026-08-10"})
        house.did("squat", date, 5, 1, 150);     // 180 kg
    house.did("squat", "2026-08-27", 10, 0, 90); // only 120 kg shown, then
    // Last time at 9 repetitions: 90 x (40/30) / (39/30) = 92.3, so at most 101.5 in week 1.
    auto loads = house.loads();
    CHECK(loads[0] == 100);
    for (std::size_t w = 1; w < 4; ++w) CHECK(loads[w] <= 1.1 * loads[w - 1]);
    CHECK(house.targets()[0].weeks[0].target.text.english() ==
          "Held back: at most 10 % above the last load, 92.3 kg at these repetitions.");
    house.limit("ledger.max_jump", 0.05);
    loads = house.loads();
    CHECK(loads[0] == 95);
    for (std::size_t w = 1; w < 4; ++w) CHECK(loads[w] <= 1.05 * loads[w - 1]);
}

TEST_CASE("where the next load is too far up, the target stays and says so") {
    House house;
    house.draft.sections[0].groups[0].slots[0] = slot("swing", reps(5, 5));
    house.did("swing", "2026-08-27", 8, 10, 16); // 25.6 kg; 21.3 for week 4, which 24 is nearest to
    const auto all = house.targets();
    const Target& last = all[0].weeks[3].target;
    CHECK(last.loading->total == kg(16));
    CHECK(last.text.english() ==
          "The next load here, 24 kg, is 50 % above 16 kg: stay, and do a repetition more.");
}

TEST_CASE("what was lifted this month is what the next week is held to") {
    House house;
    for (const char* date : {"2026-08-03", "2026-08-06", "2026-08-10", "2026-08-13"})
        house.did("squat", date, 5, 1, 100);
    CHECK(house.loads()[1] == 95);
    house.did("squat", "2026-09-02", 5, 4, 80); // week 1 was done lighter
    const auto loads = house.loads("2026-09-03");
    CHECK(loads[1] <= 88);
    CHECK(loads[2] <= 1.1 * loads[1]);
}

TEST_CASE("loads at the ends of the stock are said to be so") {
    House house;
    house.did("squat", "2026-08-27", 5, 1, 17.5);
    CHECK(house.loads() == Loads{20, 20, 20, 20});
    CHECK(house.targets()[0].weeks[0].target.text.english() ==
          "The lightest load here; the estimate asks for 16.2 kg.");
    house.did("squat", "2026-08-28", 5, 1, 400);
    house.did("squat", "2026-08-29", 5, 1, 400);
    CHECK(house.loads()[3] == 20 + 2 * (80 + 20 + 10 + 5 + 2.5));
    CHECK(house.targets()[0].weeks[3].target.text.english() ==
          "The heaviest load here; the estimate asks for 400 kg.");
}

TEST_CASE("an exercise without load climbs from where the slot's dose begins") {
    House house;
    CHECK(house.targets()[1].weeks[0].target.text.english() ==
          "The dose as it stands, without load.");
    house.did("chin-up", "2026-08-27", 7, 1, 0);
    const auto all = house.targets();
    const Target& t = all[1].weeks[0].target;
    CHECK(t.aim == Aim::Body);
    CHECK(t.body->move == BodyMove::Climb);
    CHECK_FALSE(t.loading.has_value());
    house.draft.sections[0].groups[0].slots[1].dose = reps(12, 15);
    CHECK(house.targets()[1].weeks[0].target.body->move == BodyMove::Easier);
}

TEST_CASE(
    "bands without told loads go by repetitions, machines that are not lifted by their dose") {
    House house;
    house.put("swing", "band", {{{kit("band"), 1, {}}}});
    house.gym.put(KitItem{kit("band"), "Band", 20, Claim::Group, {}, {}, {}, {}});
    house.did("swing", "2026-08-27", 19, 1, 0);
    const auto banded = house.targets()[2].weeks[0].target;
    CHECK(banded.body->move == BodyMove::Harder);
    CHECK(banded.text.english() == "19 last time: with good form take the next band, a stronger "
                                   "one, or a lighter one where it carries part of the body; else "
                                   "climb on.");
    Exercise bike = blankExercise(ex("swing"), "Bike",
                                  Pace::of(Measure::Kcal, {{}, {}, Rate::of(12).value()}).value());
    bike.load = LoadId::parse("machine").value();
    house.gym.shelf.put(bike);
    CHECK(house.targets()[2].weeks[0].target.aim == Aim::Body);
}

TEST_CASE("outside strength work the last load serves, unless the coach gave an effort") {
    House house;
    CHECK(house.targets()[2].weeks[0].target.aim == Aim::Find);
    house.did("swing", "2026-08-27", 15, 4, 16);
    CHECK(house.targets()[2].weeks[0].target.aim == Aim::AsLast);
    CHECK(house.targets()[2].weeks[0].target.loading->total == kg(16));
    house.draft.sections[1].groups[0].slots[0].effort =
        Range<Rir>::between(Rir::of(2).value(), Rir::of(4).value());
    CHECK(house.targets()[2].weeks[0].target.aim == Aim::Load);
}

TEST_CASE("a flagged member gets targets for the substitute") {
    House house;
    Exercise squat = *house.gym.shelf.find(ex("squat"));
    (void)squat.demands.set(Demand::Lumbar, 3);
    squat.easier = {ex("goblet-squat")};
    house.gym.shelf.put(squat);
    house.put("goblet-squat", "implement", {{{kit("bell"), 1, {}}}});
    house.gym.put(Member{kAnn, "Ann", {{Demand::Lumbar, FlagLevel::Limit, {}, {}}}, true, {}});
    house.did("squat", "2026-08-27", 5, 1, 100);
    house.did("goblet-squat", "2026-08-20", 5, 3, 16); // 20.3 kg
    const auto all = house.targets();
    CHECK(all[0].exercise->id == ex("goblet-squat"));
    CHECK(all[0].instead->flag->demand == Demand::Lumbar);
    CHECK(all[0].weeks[0].target.loading->total == kg(16));
    MonthTargets month(house.gym, house.draft);
    CHECK(month.exercises() ==
          std::vector{ex("chin-up"), ex("goblet-squat"), ex("squat"), ex("swing")});
    house.gym.shelf.remove(ex("goblet-squat"));
    house.gym.shelf.remove(ex("swing"));
    const auto without = house.targets();
    CHECK(without[0].exercise == nullptr);
    CHECK(without[0].weeks.empty());
}

TEST_CASE("targets go up through the month and never fall as the reserve shrinks") {
    House house;
    for (int load = 25; load <= 140; load += 5) {
        house.results.clear();
        house.did("squat", "2026-08-27", 5, 2, load);
        const auto loads = house.loads();
        for (std::size_t w = 1; w < loads.size(); ++w) {
            INFO(load << " week " << w);
            CHECK(loads[w] >= loads[w - 1]);
        }
    }
}

TEST_CASE("the next step keeps the repetitions and two in reserve") {
    House house;
    house.did("squat", "2026-08-27", 5, 1, 100);
    Ledger ledger(house.gym, day("2026-09-01"));
    for (const LiftResult& r : house.results) ledger.add(r);
    const Member& ann = *house.gym.findMember(kAnn);
    const auto next = nextTime(house.gym, ledger, ann, *house.gym.shelf.find(ex("squat")));
    CHECK(next->loading->total == kg(97.5)); // 120 / (1 + 7/30)
    CHECK_FALSE(nextTime(house.gym, ledger, ann, *house.gym.shelf.find(ex("swing"))).has_value());
}
