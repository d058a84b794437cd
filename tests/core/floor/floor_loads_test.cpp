// SPDX-License-Identifier: GPL-3.0-or-later
// Kit taken by the load: classes worked out by hand from docs/floor.md, and what holds for all.
#include "core/floor/class_run.hpp"
#include "core/floor/draws.hpp"
#include "core/floor/floor_random.hpp"
#include "core/floor/load_plan.hpp"
#include "support/catch.hpp"

#include <map>
#include <numeric>

namespace bw::test {

namespace {
Mass kg(double n) { return Mass::fromKg(n).value(); }

struct LoadGym : TinyGym {
    LoadGym& stock(std::string_view id, Claim claim, std::map<double, int> loads, int more = 0) {
        KitItem item = kitItem(id, more, claim);
        for (const auto& [load, units] : loads) {
            item.loads[kg(load)] = units;
            item.units += units;
        }
        gym.put(item);
        return *this;
    }
    // Everybody of so many wants this load for the exercise of a slot.
    void want(const Slot& slot, double load, int members) {
        targets.members.resize(std::max(targets.members.size(), static_cast<std::size_t>(members)));
        for (int m = 0; m < members; ++m)
            targets.members[static_cast<std::size_t>(m)].insert_or_assign(*slot.exercise, kg(load));
    }
    [[nodiscard]] FloorOptions options(int members) const {
        FloorOptions o;
        o.members = members;
        o.steady = o.timeline = o.loadAware = true;
        o.targets = targets;
        return o;
    }
    [[nodiscard]] FloorAnswer play(int members) const {
        return simulateFloor(gym, draft, options(members)).value();
    }
    FloorTargets targets;
};

// Notes the loads that are taken, and whether any is taken beyond its units.
class LoadInspector : public FloorWatch {
public:
    explicit LoadInspector(const FloorPlan& plan)
        : plan_(plan), taken_(plan.loads.size()), kit_(plan.kit.size()) {}
    void did(FloorDoing, int, Ticks, Ticks, Place, int) override {}
    void took(int, int kit, int load, int count, Ticks) override {
        taken_.at(static_cast<std::size_t>(load)) += count;
        kit_.at(static_cast<std::size_t>(kit)) += count;
        wrong = wrong || taken_[load] > plan_.loads[load].units || kit_[kit] > plan_.kit[kit].units;
        const auto& mass = plan_.loads[load].mass;
        for (int i = 0; i < count; ++i)
            order += (order.empty() ? "" : " ") + (mass ? numberOf(mass->kg()) : "?");
    }
    void gaveBack(int, int kit, int load, int count, Ticks) override {
        taken_.at(static_cast<std::size_t>(load)) -= count;
        kit_.at(static_cast<std::size_t>(kit)) -= count;
        wrong = wrong || taken_[load] < 0;
    }
    [[nodiscard]] bool allBack() const {
        return std::ranges::all_of(taken_, [](int n) { return n == 0; });
    }
    bool wrong = false;
    std::string order; // "16 16 8"

private:
    static std::string numberOf(double n) {
        std::ostringstream text;
        text << n;
        return text.str();
    }
    const FloorPlan& plan_;
    std::vector<int> taken_, kit_;
};

// The loads that are taken in the first section, in order.
std::string loadsTaken(const LoadGym& t, int members) {
    const FloorOptions o = t.options(members);
    const FloorPlan plan = planClass(t.gym, t.draft, o, members);
    FloorSteps steps(plan, members);
    Draws(plan, o).fill(0, members, steps);
    LoadInspector inspector(plan);
    ClassRecord record(plan, members);
    const auto starts = startsOf(plan.sections[0].start, plan.sections[0].groups.size(), members);
    SectionRun(plan, members).play(0, starts, steps, record, &inspector);
    CHECK(!inspector.wrong);
    CHECK(inspector.allBack());
    return inspector.order;
}
} // namespace

TEST_CASE("four bells of 16 kg serve eight people who want one four at a time") {
    LoadGym t;
    t.stock("bell", Claim::Group, {{2, 5}, {16, 4}}, 0);
    // The 2 kg bells are the next load down: take them away to see the queue.
    const Slot press = t.work(10, {{{"bell", 1}}});
    t.add({onceThrough({press})});
    t.want(press, 16, 8);
    CHECK(loadsTaken(t, 8) == "16 16 16 16 2 2 2 2");
    t.stock("bell", Claim::Group, {{16, 4}}, 0);
    const FloorAnswer a = t.play(8);
    CHECK(laneOf(a, 3) == "set 0-10");
    CHECK(laneOf(a, 4) == "wait 0-10, set 10-20");
    CHECK(laneOf(a, 7) == "wait 0-10, set 10-20");
    CHECK(secondsOf(useOf(a, "bell").wait.mean) == 5);
    CHECK(useOf(a, "bell").busy == 1);
}

TEST_CASE("within one step of the nearest load is near enough, nearer first, lighter when equal") {
    LoadGym t;
    t.stock("bell", Claim::Group, {{4, 2}, {8, 1}, {12, 2}, {16, 2}, {40, 2}});
    const Slot press = t.work(10, {{{"bell", 1}}});
    t.add({onceThrough({press})});
    SECTION("a load in stock: its two neighbours are as far, so the lighter one first") {
        t.want(press, 12, 6);
        CHECK(loadsTaken(t, 6) == "12 12 8 16 16 12"); // the sixth waits for a 12
        CHECK(laneOf(t.play(6), 5) == "wait 0-10, set 10-20");
    }
    SECTION("between two loads the nearer one, then the other") {
        t.want(press, 13, 5);
        CHECK(loadsTaken(t, 5) == "12 12 16 16 8");
    }
    SECTION("as far from both: the lighter one") {
        t.want(press, 14, 3);
        CHECK(loadsTaken(t, 3) == "12 12 16");
    }
    SECTION("below and above all loads: the last one, and the one before") {
        t.want(press, 1, 4);
        CHECK(loadsTaken(t, 4) == "4 4 8 4"); // the fourth waits
        t.want(press, 100, 5);
        CHECK(loadsTaken(t, 5) == "40 40 16 16 40");
    }
}

TEST_CASE("who has no target takes any load, from the most plentiful") {
    LoadGym t;
    t.stock("bell", Claim::Group, {{8, 1}, {12, 3}, {16, 3}});
    t.add({onceThrough({t.work(10, {{{"bell", 2}}})})});
    CHECK(loadsTaken(t, 3) == "12 16 12 16 8 12"); // one at a time; lighter when equal
}

TEST_CASE("a pair is two of one load, and a result counts both together") {
    LoadGym t;
    t.stock("dumbbell", Claim::Group, {{10, 2}, {12, 1}, {14, 4}});
    const Slot press = t.work(10, {{{"dumbbell", 2}}});
    t.add({onceThrough({press})});
    t.want(press, 24, 2); // 12 each: there is no pair, 10 and 14 are as far
    CHECK(loadsTaken(t, 2) == "10 10 14 14");
    t.stock("dumbbell", Claim::Group, {{10, 1}, {12, 1}, {14, 1}});
    CHECK(loadsTaken(t, 1) == "10 12"); // no load has two: any
}

TEST_CASE("two slots that want different loads of one kit item keep both") {
    LoadGym t;
    t.stock("bell", Claim::Group, {{16, 1}, {24, 1}});
    const Slot row = t.work(10, {{{"bell", 1}}}), swing = t.work(20, {{{"bell", 1}}});
    t.add({onceThrough({row, swing})});
    t.want(row, 16, 2);
    SECTION("so the second member waits for the first to leave") {
        t.want(swing, 24, 2);
        CHECK(laneOf(t.play(2), 1) == "wait 0-30, set 30-40, set 40-60");
        CHECK(loadsTaken(t, 2) == "16 24 16 24");
    }
    SECTION("the same load is shared, as kit without loads is") {
        t.want(swing, 16, 2);
        CHECK(laneOf(t.play(2), 1) == "set 0-10, set 10-30");
        CHECK(loadsTaken(t, 2) == "16 24"); // a step up is near enough for the second
    }
    SECTION("a slot without a target uses what the other one keeps") {
        CHECK(laneOf(t.play(2), 1) == "set 0-10, set 10-30");
        CHECK(loadsTaken(t, 2) == "16 24");
    }
}

TEST_CASE("what is taken for one set comes back with its load") {
    LoadGym t;
    t.stock("sandbag", Claim::Set, {{10, 1}, {20, 1}, {40, 1}});
    const Slot carry = t.work(30, {{{"sandbag", 1}}});
    t.add({group(rounds(2, 2), secondsRange(10, 10), {carry})});
    t.want(carry, 10, 3);
    CHECK(loadsTaken(t, 3) == "10 20 10 20 10 20");
    CHECK(laneOf(t.play(3), 2) == "wait 0-30, set 30-60, rest 60-70, set 70-100");
}

TEST_CASE("another alternative is taken when no load near the wanted one is free") {
    LoadGym t;
    t.stock("bell", Claim::Group, {{16, 1}});
    t.stock("dumbbell", Claim::Group, {{14, 1}});
    const Slot press = t.work(10, {{{"bell", 1}}, {{"dumbbell", 1}}});
    t.add({onceThrough({press})});
    t.want(press, 16, 3);
    CHECK(loadsTaken(t, 3) == "16 14 16");
    CHECK(secondsOf(useOf(t.play(3), "bell").wait.mean) == Approx(10.0 / 3));
}

TEST_CASE("units without a told load serve only who takes any") {
    LoadGym t;
    t.stock("bell", Claim::Group, {{16, 1}}, 3);
    const Slot press = t.work(10, {{{"bell", 1}}}), row = t.work(10, {{{"bell", 1}}});
    t.add({onceThrough({press}), onceThrough({row})}).start = StartCounts{{2, 1}};
    t.want(press, 16, 2);
    CHECK(loadsTaken(t, 3) == "16 ? 16 ? ? ?");
    SECTION("and loads of more units than there are, are not believed") {
        KitItem item = *t.gym.findKit(kit("bell"));
        item.units = 1;
        item.loads[kg(20)] = 1;
        t.gym.put(item);
        CHECK(loadsTaken(t, 1) == "? ?");
    }
}

TEST_CASE("what is bought is of a load that somebody wants, and as many as one member takes") {
    LoadGym t;
    t.stock("bell", Claim::Group, {{4, 4}, {16, 2}, {40, 4}});
    const int count = GENERATE(1, 2);
    const Slot press = t.work(60, {{{"bell", count}}});
    t.add({onceThrough({press})});
    t.want(press, 16.0 * count, 9);
    FloorOptions o = t.options(count == 1 ? 11 : 6);
    o.buys = true;
    // Ten, or five, can start at once: with the neighbours of the load, 4 and 40 kg.
    const FloorAnswer a = simulateFloor(t.gym, t.draft, o).value();
    REQUIRE(a.buys.size() == 2); // the other is one member fewer
    const auto buy = std::ranges::find_if(
        a.buys, [](const FloorBuy& b) { return std::holds_alternative<OneMoreUnit>(b.change); });
    REQUIRE(buy != a.buys.end());
    CHECK(std::get<OneMoreUnit>(buy->change) == OneMoreUnit{kit("bell"), kg(16), count});
    CHECK(secondsOf(buy->saves) == 60);
}

TEST_CASE("a load that saves nothing is not told among what to buy") {
    LoadGym t;
    t.stock("bell", Claim::Group, {{16, 1}}).own("bike", 1, Claim::Set);
    const Slot press = t.work(10, {{{"bell", 1}}});
    t.add({onceThrough({press}), onceThrough({t.work(100, {{{"bike", 1}}})})}).start =
        StartCounts{{2, 1}};
    t.want(press, 16, 3);
    FloorOptions o = t.options(3);
    o.buys = true;
    const FloorAnswer a = simulateFloor(t.gym, t.draft, o).value();
    CHECK(a.buys.size() > 1);
    for (const FloorBuy& b : a.buys)
        if (const auto* more = std::get_if<OneMoreUnit>(&b.change)) CHECK(more->kit == kit("bike"));
}

namespace {
std::map<KitId, Millis> heldInAll(const FloorAnswer& a) {
    std::map<KitId, Millis> held;
    for (const FloorHold& h : a.holds) held[h.kit] += h.count * (h.to - h.from);
    return held;
}
} // namespace

TEST_CASE("without loads to look at, or without targets, a class is the same") {
    std::uint64_t seed = 70'000;
    for (int i = 0; i < 100; ++i) {
        RandomFloor f = servedFloor(seed);
        INFO("seed " << seed - 1);
        FloorOptions o;
        o.members = f.members;
        o.runs = 4;
        o.timeline = true;
        const FloorAnswer plain = simulateFloor(f.t.gym, f.t.draft, o).value();
        for (KitItem item : std::vector(f.t.gym.kit)) {
            for (int u = 0; u < item.units; ++u) ++item.loads[kg(4 * (1 + u % 3))];
            f.t.gym.put(item);
        }
        CHECK(simulateFloor(f.t.gym, f.t.draft, o).value() == plain);
        o.loadAware = true;
        FloorAnswer byLoad = simulateFloor(f.t.gym, f.t.draft, o).value();
        CHECK(heldInAll(byLoad) == heldInAll(plain)); // unit by unit, where loads are told
        byLoad.holds = plain.holds;
        CHECK(byLoad == plain);
    }
}

namespace {
// Loads for all kit, and targets for most members and exercises.
FloorTargets drawLoads(RandomFloor& f, std::uint64_t seed) {
    std::mt19937_64 random(seed);
    for (KitItem item : std::vector(f.t.gym.kit)) {
        for (int u = 0; u < item.units; ++u)
            if (random() % 5 != 0) ++item.loads[kg(4.0 * static_cast<double>(1 + random() % 4))];
        f.t.gym.put(item);
    }
    FloorTargets targets;
    for (int m = 0; m < f.members; ++m) {
        targets.members.emplace_back();
        for (const Shelf::Entry& e : f.t.gym.shelf.entries())
            if (random() % 4 != 0)
                targets.members.back()[e->id] = kg(2.0 * static_cast<double>(1 + random() % 16));
    }
    return targets;
}
} // namespace

TEST_CASE("by load, too, no unit is taken twice, all come back and nobody waits for ever") {
    std::uint64_t seed = 80'000;
    int longer = 0;
    for (int i = 0; i < 300; ++i) {
        RandomFloor f = servedFloor(seed);
        INFO("seed " << seed - 1);
        FloorOptions o;
        o.members = f.members;
        o.runs = 4;
        const auto before = simulateFloor(f.t.gym, f.t.draft, o)->wait.mean;
        o.targets = drawLoads(f, seed);
        o.loadAware = true;
        const FloorPlan plan = planClass(f.t.gym, f.t.draft, o, f.members);
        FloorSteps steps(plan, f.members);
        Draws(plan, o).fill(0, f.members, steps);
        SectionRun run(plan, f.members);
        ClassRecord record(plan, f.members);
        for (int s = 0; s < static_cast<int>(plan.sections.size()); ++s) {
            LoadInspector inspector(plan);
            const auto starts =
                startsOf(plan.sections[s].start, plan.sections[s].groups.size(), f.members);
            run.play(s, starts, steps, record, &inspector);
            CHECK(!inspector.wrong);
            CHECK(inspector.allBack());
        }
        const FloorAnswer one = simulateFloor(f.t.gym, f.t.draft, o).value();
        o.threads = 3;
        CHECK(simulateFloor(f.t.gym, f.t.draft, o).value() == one);
        longer += one.wait.mean > before ? 1 : 0;
        o.members = 1;
        CHECK(simulateFloor(f.t.gym, f.t.draft, o)->wait.mean.count() == 0);
    }
    CHECK(longer > 40); // loads do make a difference
}

TEST_CASE("the latest load is that of the last set of the last day, of active members in order") {
    Gym gym;
    const auto put = [&](std::string_view id, bool active) {
        gym.put(Member{MemberId::parse(id).value(), std::string(id), {}, active, {}});
    };
    put("m-1", true);
    put("m-2", false);
    put("m-3", true);
    const auto lift = [](std::string_view member, std::string_view day, std::string_view exercise,
                         int set, std::optional<Mass> load) {
        return LiftResult{MemberId::parse(member).value(),
                          Date::parse(day).value(),
                          ex(exercise),
                          set,
                          5,
                          {},
                          load,
                          {}};
    };
    const std::vector<LiftResult> results{
        lift("m-3", "2026-09-10", "row", 2, kg(24)), lift("m-3", "2026-09-10", "row", 1, kg(20)),
        lift("m-3", "2026-09-03", "row", 3, kg(28)), lift("m-3", "2026-09-03", "dip", 1, kg(10)),
        lift("m-3", "2026-09-04", "dip", 1, {}),     lift("m-2", "2026-09-03", "row", 1, kg(8)),
        lift("gone", "2026-09-03", "row", 1, kg(8))};
    const FloorTargets targets = latestLoads(gym, results);
    REQUIRE(targets.members.size() == 2);
    CHECK(targets.members[0].empty());
    CHECK(targets.members[1] == std::map<ExerciseId, Mass>{{ex("row"), kg(24)}});
}

} // namespace bw::test
