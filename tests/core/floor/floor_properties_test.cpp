// SPDX-License-Identifier: GPL-3.0-or-later
// What holds for every class, on drawn floors.
#include "blockwright/time/timing.hpp"
#include "core/floor/class_run.hpp"
#include "core/floor/draws.hpp"
#include "core/floor/floor_random.hpp"
#include "support/catch.hpp"

#include <numeric>

namespace bw::test {

namespace {
constexpr int kFloors = 300;

// Counts kit and the line while a section is played.
class Inspector : public FloorWatch {
public:
    explicit Inspector(const FloorPlan& plan) : plan_(plan), taken_(plan.kit.size()) {}
    void did(FloorDoing what, int, Ticks from, Ticks to, Place, int) override {
        if (what == FloorDoing::Wait) waited += to - from;
        backwards = backwards || to < from;
    }
    void took(int, int kit, int, int count, Ticks) override {
        taken_[kit] += count;
        tooMany = tooMany || taken_[kit] > plan_.kit[kit].units;
    }
    void gaveBack(int, int kit, int, int count, Ticks) override {
        taken_[kit] -= count;
        tooMany = tooMany || taken_[kit] < 0;
    }
    void joinedLine(int, Ticks now) override { lineChanges(now, +1); }
    void leftLine(int, Ticks now) override { lineChanges(now, -1); }
    [[nodiscard]] bool allBack() const {
        return std::ranges::all_of(taken_, [](int n) { return n == 0; });
    }

    bool tooMany = false, backwards = false;
    Ticks waited = 0, lineArea = 0; // of the line's length over time

private:
    void lineChanges(Ticks now, int by) {
        backwards = backwards || now < last_;
        lineArea += line_ * (now - last_);
        last_ = now;
        line_ += by;
    }
    const FloorPlan& plan_;
    std::vector<int> taken_;
    Ticks last_ = 0;
    int line_ = 0;
};

FloorOptions drawn(int members) {
    FloorOptions o;
    o.members = members;
    o.runs = 8;
    o.paceSigma = 0.3;
    o.setSigma = 0.2;
    return o;
}
} // namespace

TEST_CASE("kit is never taken beyond its units, and all of it comes back") {
    std::uint64_t seed = 10'000;
    int waits = 0;
    for (int i = 0; i < kFloors; ++i) {
        RandomFloor f = servedFloor(seed);
        INFO("seed " << seed - 1);
        const FloorPlan plan = planFloor(f.t.gym, f.t.draft, week(1));
        const FloorOptions o = drawn(f.members);
        FloorSteps steps(plan, f.members);
        Draws(plan, o).fill(0, f.members, steps);
        SectionRun run(plan, f.members);
        ClassRecord record(plan, f.members);
        for (int s = 0; s < static_cast<int>(plan.sections.size()); ++s) {
            Inspector inspector(plan);
            const auto starts =
                startsOf(plan.sections[s].start, plan.sections[s].groups.size(), f.members);
            const Ticks before = std::accumulate(record.wait.begin(), record.wait.end(), Ticks{0});
            run.play(s, starts, steps, record, &inspector);
            const Ticks after = std::accumulate(record.wait.begin(), record.wait.end(), Ticks{0});
            CHECK(!inspector.tooMany);
            CHECK(!inspector.backwards);
            CHECK(inspector.allBack());
            // Little JDC. Oper Res 1961;9(3):383-387, in its exact form for a finished class: all
            // waits together are the line's length summed over time.
            CHECK(inspector.lineArea == inspector.waited);
            CHECK(after - before == inspector.waited);
            waits += inspector.waited > 0 ? 1 : 0;
        }
    }
    CHECK(waits > kFloors / 4); // the floors are what they are for
}

TEST_CASE("nobody is in two places, and all of a member's time is accounted for") {
    std::uint64_t seed = 20'000;
    for (int i = 0; i < kFloors; ++i) {
        RandomFloor f = servedFloor(seed);
        INFO("seed " << seed - 1);
        FloorOptions o = drawn(f.members);
        o.runs = 1;
        o.timeline = true;
        const FloorAnswer a = simulateFloor(f.t.gym, f.t.draft, o).value();
        Millis open = f.t.gym.settings.opening;
        for (std::size_t s = 0; s < a.sections.size(); ++s) {
            const Section& section = f.t.draft.sections[s];
            Millis lastOut = open + section.talk;
            for (int m = 0; m < f.members; ++m) {
                Millis now =
                    open; // talk, then sets, waits and rests follow each other without a gap
                for (const FloorRow& row : a.timeline)
                    if (row.member == m && row.place.section == static_cast<int>(s)) {
                        CHECK(row.from == now);
                        CHECK(row.to > row.from);
                        now = row.to;
                    }
                lastOut = std::max(lastOut, now); // the rest is waiting at the gate
            }
            CHECK(a.sections[s].end.p50 == lastOut);
            open = lastOut;
        }
        CHECK(a.finish.p50 == open + f.t.gym.settings.closing);
    }
}

TEST_CASE("a member alone never waits") {
    std::uint64_t seed = 30'000;
    for (int i = 0; i < kFloors; ++i) {
        RandomFloor f = servedFloor(seed);
        const FloorAnswer a = simulateFloor(f.t.gym, f.t.draft, drawn(1)).value();
        INFO("seed " << seed - 1);
        CHECK(a.wait == FloorWait{});
    }
}

TEST_CASE("a member alone at low rounds takes as long as the time table says") {
    std::uint64_t seed = 40'000;
    for (int i = 0; i < kFloors; ++i) {
        RandomFloor f = servedFloor(seed);
        for (Section& s : f.t.draft.sections)
            for (Group& g : s.groups) g.rest = Range<Millis>{g.rest.lo()};
        f.t.draft.stair[0].rounds = RoundsMode::Low;
        for (Section& s : f.t.draft.sections) s.start = StartTogether{};
        FloorOptions o;
        o.members = 1;
        o.steady = true;
        INFO("seed " << seed - 1);
        CHECK(simulateFloor(f.t.gym, f.t.draft, o)->finish.p50 ==
              roundHalvesUp(
                  timeSession(f.t.gym.settings, f.t.gym.shelf, f.t.draft, week(1)).total.planned));
    }
}

TEST_CASE("the answer is the same with one to four threads") {
    std::uint64_t seed = 50'000;
    for (int i = 0; i < 12; ++i) {
        RandomFloor f = servedFloor(seed);
        INFO("seed " << seed - 1);
        FloorOptions o = drawn(std::min(f.members, 6));
        o.runs = 100;
        o.buys = o.timeline = true;
        const FloorAnswer one = simulateFloor(f.t.gym, f.t.draft, o).value();
        for (o.threads = 2; o.threads <= 4; ++o.threads)
            CHECK(simulateFloor(f.t.gym, f.t.draft, o).value() == one);
    }
}

TEST_CASE("a run of a seed is the same class however many runs are asked for") {
    std::uint64_t seed = 60'000;
    for (int i = 0; i < 20; ++i) {
        RandomFloor f = servedFloor(seed);
        FloorOptions o = drawn(f.members);
        const auto few = simulateFloor(f.t.gym, f.t.draft, o)->finishes;
        o.runs = 50;
        auto many = simulateFloor(f.t.gym, f.t.draft, o)->finishes;
        many.resize(few.size());
        CHECK(many == few);
        o.seed = 2;
        many = simulateFloor(f.t.gym, f.t.draft, o)->finishes;
        many.resize(few.size());
        INFO("seed " << seed - 1);
        CHECK((many != few || few.front() == few.back()));
    }
}

} // namespace bw::test
