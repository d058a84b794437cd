// SPDX-License-Identifier: GPL-3.0-or-later
// The event core against queueing and scheduling results that are known without simulating. Times
// of sets and rests are put in by hand, so that any distribution can be played.
#include "core/floor/class_run.hpp"
#include "core/floor/floor_gym.hpp"
#include "support/catch.hpp"

#include <cmath>
#include <numeric>
#include <random>

using namespace bw;
using namespace bw::test;

namespace {
Ticks sumOf(const std::vector<Ticks>& list) {
    return std::accumulate(list.begin(), list.end(), Ticks{0});
}
} // namespace

namespace {
// Members who come back to the racks again and again: sets and times away are exponential.
struct Racks {
    int racks, members, rounds;
    double set, away; // seconds, on average
};
ClassRecord played(const Racks& r, bool awayFirst = false) {
    TinyGym t;
    t.own("rack", r.racks, Claim::Set);
    t.add({group(rounds(r.rounds, r.rounds), secondsRange(1, 1), {t.work(1, {{{"rack", 1}}})})});
    const FloorPlan plan = planFloor(t.gym, t.draft, week(1));
    FloorSteps steps(plan, r.members);
    std::mt19937_64 random(20260901);
    const auto exponential = [&](double mean) {
        const double u = (static_cast<double>(random() >> 11) + 0.5) * 0x1p-53;
        return static_cast<Ticks>(-std::log(u) * mean * 1000 + 0.5);
    };
    for (int m = 0; m < r.members; ++m)
        for (int i = 0; i < r.rounds; ++i) {
            steps.row(m)[2 * i] = awayFirst && i == 0 ? 0 : exponential(r.set);
            steps.row(m)[2 * i + 1] = exponential(r.away);
        }
    ClassRecord record(plan, r.members);
    const std::vector<int> starts(static_cast<std::size_t>(r.members), 0);
    ClassRun(plan, {starts}, r.members).play(steps, record);
    return record;
}
} // namespace

// Finite source M/M/c//N, computed from p_n ~ C(N,n) (lambda/mu)^n for n <= c, C(N,n) n!/(c!
// c^(n-c)) (lambda/mu)^n above; the same formula gives the machine-repair example of Anderson,
// Sweeney, Williams, An Introduction to Management Science, and the tables of Peck and Hazelwood,
// Finite Queuing Tables, 1958.
TEST_CASE("members who come back to few racks wait as the finite-source formula says") {
    struct Row {
        double away, set;
        int racks, members;
        double busy, wait, waiting;
    };
    const Row row = GENERATE(Row{120, 40, 1, 4, 0.793893, 41.538462, 0.824427},
                             Row{120, 40, 2, 8, 0.848585, 28.549250, 1.211323},
                             Row{90, 45, 2, 6, 0.844434, 24.870466, 0.933398});
    constexpr int kRounds = 40'000;
    const ClassRecord record = played({row.racks, row.members, kRounds, row.set, row.away});
    // The first and last minutes are no steady state; with so many rounds that is below the 2 %
    // allowed, which is about four standard errors.
    const auto length = static_cast<double>(record.finish);
    const auto waits = static_cast<double>(sumOf(record.wait));
    CHECK(static_cast<double>(record.busy[0]) / (row.racks * length) ==
          Approx(row.busy).epsilon(0.02));
    CHECK(waits / 1000 / (kRounds * row.members) == Approx(row.wait).epsilon(0.02));
    CHECK(waits / length == Approx(row.waiting).epsilon(0.02));
}

namespace {
// The wait of the finite-source formula, in the unit of `set` and `away`.
double finiteSourceWait(int members, int racks, double set, double away) {
    double p = 1, all = 1, line = 0, served = 0;
    for (int n = 1; n <= members; ++n) {
        p *= (members - n + 1) / away * set / std::min(n, racks);
        all += p;
        line += std::max(0, n - racks) * p;
        served += std::min(n, racks) / set * p;
        if (all < 1e200) continue;
        for (double* sum : {&p, &all, &line, &served}) *sum *= 1e-200;
    }
    return line / served;
}
} // namespace

// M/M/c, the wait by Erlang C (Erlang 1917; Gross and Harris, Fundamentals of Queueing Theory):
// Wq = C / (c mu - lambda), values worked out from the formula and with Octave's queueing package.
// The finite-source formula comes to it as the members become many, and the class follows that
// formula.
TEST_CASE("the more members come back ever more rarely, the nearer their wait is to Erlang's") {
    struct Row {
        double perHour, served; // arrivals, and what one rack serves, an hour
        int racks;
        double wait; // hours
    };
    const Row row = GENERATE(Row{30, 12, 4, 0.017770}, Row{30, 12, 5, 0.004346},
                             Row{6, 1, 10, 0.025325}, Row{4, 1, 5, 0.554113});
    const double set = 1 / row.served;
    const auto away = [&](int members) { return members / row.perHour - row.wait - set; };
    const auto formula = [&](int members) {
        return finiteSourceWait(members, row.racks, set, away(members));
    };
    CHECK(formula(20'000) == Approx(row.wait).epsilon(0.003));
    CHECK(formula(200) == Approx(row.wait).epsilon(0.14));
    constexpr int kMembers = 200, kRounds = 3000;
    const ClassRecord record =
        played({row.racks, kMembers, kRounds, 3600 * set, 3600 * away(kMembers)}, true);
    const double wait = static_cast<double>(sumOf(record.wait)) / 3.6e6 / (kMembers * kRounds);
    CHECK(wait == Approx(formula(kMembers)).epsilon(0.03)); // about four standard errors
}

// Members walk round stations, three laps, first come first served, ties by member number. A lap
// takes at least max(sum of s, max of members * s / places) (Denning and Buzen, ACM Computing
// Surveys 1978;10(3):225-261); makespans computed by hand for these cases.
TEST_CASE("a rotation of members over stations takes as long as its slowest station makes it") {
    struct Row {
        int members;
        std::vector<int> seconds;
        int places, lapBound, spread, spreadWait, together;
    };
    const Row row = GENERATE(Row{4, {60, 60, 60, 60}, 1, 240, 720, 0, 900},
                             Row{4, {60, 90, 60, 60}, 1, 360, 1080, 900, 1260},
                             Row{6, {60, 90, 60}, 1, 540, 1620, 4950, 1740},
                             Row{6, {60, 90, 60}, 2, 270, 810, 900, 930});
    TinyGym t;
    std::vector<Group> laps;
    for (int lap = 0; lap < 3; ++lap)
        for (std::size_t s = 0; s < row.seconds.size(); ++s) {
            const std::string station = "station-" + std::to_string(s);
            t.own(station, row.places, Claim::Set);
            laps.push_back(onceThrough({t.work(row.seconds[s], {{{station, 1}}})}));
        }
    t.add(laps).start = StartSpread{};
    const FloorAnswer spread = t.steady(row.members);
    CHECK(spread.finish.p50 == Millis{row.spread * 1000});
    CHECK(row.spread == 3 * row.lapBound);
    CHECK(secondsOf(spread.wait.mean) * row.members == Approx(row.spreadWait));
    t.draft.sections[0].start = StartTogether{};
    CHECK(t.steady(row.members).finish.p50 == Millis{row.together * 1000});
}

// Johnson SM. Optimal two- and three-stage production schedules with setup times included. Naval
// Research Logistics Quarterly 1954;1(1):61-68. Best and worst of all orders are checked by trying
// them all.
TEST_CASE(
    "two stations in a fixed order take what Johnson's rule says, in the order that it says") {
    struct Instance {
        std::vector<std::pair<int, int>> jobs; // seconds at the first and at the second
        std::vector<std::size_t> order;
        int best, worst;
    };
    const Instance in = GENERATE(
        Instance{{{4, 5}, {4, 1}, {30, 4}, {6, 30}, {2, 3}}, {4, 0, 3, 2, 1}, 47, 78},
        Instance{{{5, 2}, {3, 6}, {8, 4}, {10, 7}, {7, 12}}, {1, 4, 3, 2, 0}, 35, 48},
        Instance{{{5, 8}, {3, 9}, {8, 7}, {7, 2}, {4, 6}}, {1, 4, 0, 2, 3}, 35, 45},
        Instance{{{10, 2}, {5, 4}, {7, 5}, {3, 6}, {1, 7}}, {4, 3, 2, 1, 0}, 28, 40},
        Instance{{{3, 8}, {12, 10}, {5, 9}, {2, 6}, {9, 3}, {11, 1}}, {3, 0, 2, 1, 4, 5}, 43, 65});
    TinyGym t;
    t.own("first", 1, Claim::Set).own("second", 1, Claim::Set);
    t.add({onceThrough({t.work(1, {{{"first", 1}}}), t.work(1, {{{"second", 1}}})})});
    const FloorPlan plan = planFloor(t.gym, t.draft, week(1));
    const int members = static_cast<int>(in.jobs.size());
    FloorSteps steps(plan, members);
    ClassRecord record(plan, members);
    ClassRun run(plan, {std::vector<int>(in.jobs.size(), 0)}, members);
    const auto makespan = [&](const std::vector<std::size_t>& order) {
        for (int m = 0; m < members; ++m) {
            const auto [a, b] = in.jobs[order[static_cast<std::size_t>(m)]];
            steps.row(m)[0] = a;
            steps.row(m)[1] = b;
        }
        run.play(steps, record);
        return static_cast<int>(record.finish);
    };
    CHECK(makespan(in.order) == in.best);
    std::vector<std::size_t> order(in.jobs.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    int best = makespan(order), worst = best;
    do {
        best = std::min(best, makespan(order));
        worst = std::max(worst, makespan(order));
    } while (std::next_permutation(order.begin(), order.end()));
    CHECK(best == in.best);
    CHECK(worst == in.worst);
}

// Graham RL. Bounds on multiprocessing timing anomalies. SIAM J Appl Math 1969;17(2):416-429:
// longest first on m equal machines, 4/3 - 1/(3m) times the optimum at the most (the second case is
// tight).
TEST_CASE("a line at equal stations is worked off as list scheduling does") {
    struct Row {
        int stations;
        std::vector<int> jobs;
        int makespan;
    };
    const Row row = GENERATE(Row{2, {3, 3, 2, 2, 2}, 7}, Row{3, {5, 5, 4, 4, 3, 3, 3}, 11});
    TinyGym t;
    t.own("station", row.stations, Claim::Set);
    t.add({onceThrough({t.work(1, {{{"station", 1}}})})});
    const FloorPlan plan = planFloor(t.gym, t.draft, week(1));
    const int members = static_cast<int>(row.jobs.size());
    FloorSteps steps(plan, members);
    for (int m = 0; m < members; ++m) steps.row(m)[0] = row.jobs[static_cast<std::size_t>(m)];
    ClassRecord record(plan, members);
    ClassRun(plan, {std::vector<int>(row.jobs.size(), 0)}, members).play(steps, record);
    CHECK(record.finish == row.makespan);
}
