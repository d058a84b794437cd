// SPDX-License-Identifier: GPL-3.0-or-later
// How long it takes to re-check a whole month after a keystroke: times, balance and rules of all
// four weeks, with 36 months of history, 40 flagged members and a Shelf of 1 000 exercises. Prints
// the medians of a clean draft and of one in which nearly every rule finds something; ends with 1
// when either takes more than two milliseconds.
#include "blockwright/rules/check.hpp"
#include "blockwright/rules/rule.hpp"
#include "support/fixtures.hpp"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

using namespace bw;
using namespace bw::test;

namespace {
constexpr double kMostMilliseconds = 2.0;
constexpr int kRuns = 400;

constexpr std::array kRoles{"warm-up", "power", "strength-heavy", "strength-long", "finisher"};

// Exercises come in twos of one pattern; exercise n has role n mod 5, and asks n mod 4 of one
// demand.
ExerciseId numbered(int n) { return ex("exercise-number-" + std::to_string(n)); }

MuscleId muscle(int n) {
    return MuscleId::parse(shippedMuscles()[static_cast<std::size_t>(n)]).value();
}

// Each kind of flag more than three times.
void fillGym(Gym& gym) {
    for (int n = 0; n < 30; ++n)
        gym.put(KitItem{kit("kit-" + std::to_string(n)), "Kit", 12, Claim::Group, {}, {}, {}, {}});
    for (int n = 0; n < 40; ++n) {
        Member m{MemberId::parse("m-" + std::to_string(n)).value(), "Member", {}, true, {}};
        m.flags = {{static_cast<Demand>(n % 6), static_cast<FlagLevel>(n / 6 % 2), {}, {}}};
        gym.put(m);
    }
}

void fill(Shelf& shelf) {
    for (int n = 0; n < 1000; ++n) {
        Exercise e = exercise(numbered(n).text(), static_cast<Pattern>(n / 2 % 12), 3.5, 10);
        const auto share = [](int tenths) { return Share::of(tenths / 10.0).value(); };
        e.muscles = {{muscle(n % 18), Share::whole()}, {muscle((n + 5) % 18), share(5)}};
        e.sides = n % 5 == 1 ? Sides::Alternating : Sides::Both;
        (void)e.demands.set(static_cast<Demand>(n % 6), n % 4);
        e.needs = {{{kit("kit-" + std::to_string(n % 30)), 1, {}}}};
        e.roles = {RoleId::parse(kRoles[static_cast<std::size_t>(n % 5)]).value()};
        e.easier = {numbered((n + 60) % 1000)};
        e.harder = {numbered((n + 940) % 1000)};
        e.cues = {"Stand tall"};
        e.cautions = {"Stop on pain"};
        shelf.put(std::move(e));
    }
}

Group pair(int n, Dose first, Dose second) {
    return group(rounds(2, 3), secondsRange(60, 90),
                 {slot(numbered(n).text(), first), slot(numbered(n + 1).text(), second)});
}

// 24 slots: warm-up, power, strength, finisher. `from` shifts the exercises from month to month.
Block month(std::string_view text, int from) {
    std::vector<Group> strength;
    for (int g = 0; g < 6; ++g)
        strength.push_back(pair(from + 10 + 2 * g, reps(5, 5), reps(12, 14)));
    Block b =
        block(text, {section(SectionKind::WarmUp, {pair(from, reps(8, 8), reps(8, 8)),
                                                   pair(from + 2, reps(8, 8), reps(8, 8))}),
                     section(SectionKind::Power, {pair(from + 4, reps(4, 6), reps(5, 5))}),
                     section(SectionKind::Strength, std::move(strength)),
                     section(SectionKind::Finisher, {pair(from + 30, reps(10, 10), reps(10, 10)),
                                                     pair(from + 32, reps(10, 10), reps(9, 9)),
                                                     pair(from + 34, reps(8, 8), reps(9, 9))})});
    b.format = Format::HeavyThenLong;
    return b;
}

Gym gymWithHistory() {
    Gym gym;
    gym.settings.classMinutes = 120;
    fill(gym.shelf);
    fillGym(gym);
    for (int m = 0; m < 36; ++m)
        gym.put(month(bw::test::month("2023-09").plus(m).text(), m % 12 * 40));
    return gym;
}

// Over the hour, nothing pulled or hinged, rests, doses and order wrong, everything new and uncued.
void spoil(Gym& gym, Block& b) {
    gym.settings.classMinutes = 45;
    for (Section& s : b.sections) {
        s.budget = secondsRange(60, 120);
        for (Group& g : s.groups) {
            g.rest = secondsRange(10, 20);
            for (Slot& x : g.slots) x.exercise = numbered(600 + (&x == &g.slots[0] ? 0 : 7));
            std::swap(g.slots[0].dose, g.slots[1].dose);
            g.slots[0].dose = reps(30, 34);
        }
    }
    for (const int n : {600, 607}) {
        Exercise e = *gym.shelf.find(numbered(n));
        e.cues.clear();
        e.cautions.clear();
        e.easier.clear();
        gym.shelf.put(std::move(e));
    }
}

// Median of the runs, in microseconds.
template <class Work> double median(Work work) {
    std::vector<double> took;
    for (int i = 0; i < kRuns; ++i) {
        const auto start = std::chrono::steady_clock::now();
        work();
        took.push_back(
            std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - start)
                .count());
    }
    std::nth_element(took.begin(), took.begin() + kRuns / 2, took.end());
    return took[kRuns / 2];
}

bool report(const char* name, const Gym& gym, const Block& b) {
    std::size_t findings = 0;
    const double all = median([&] { findings = check(gym, b).findings.size(); });
    const double history = median([&] { return History(gym, b.month).blocks().size(); });
    const History known(gym, b.month);
    const double facts = median([&] {
        for (int w = 1; w <= 4; ++w) (void)Facts::of(gym, b, known, week(w)).slots.size();
    });
    std::printf("%s draft, %zu findings: %.0f us a month (history %.0f, times and slots %.0f, "
                "rules %.0f)\n",
                name, findings, all, history, facts, all - history - facts);
    const Facts one = Facts::of(gym, b, known, week(2));
    for (const Rule& rule : ruleBook()) {
        std::vector<Finding> out;
        const double took = median([&] {
            out.clear();
            Verdict verdict(rule, one, out);
            rule.judge(one, verdict);
        });
        std::printf("    %-18s %8.2f us a week, %zu findings\n", std::string(rule.id).c_str(), took,
                    out.size());
    }
    return all <= kMostMilliseconds * 1000;
}
} // namespace

int main() {
    Gym gym = gymWithHistory();
    Block draft = ::month("2026-09", 11 * 40);
    const bool clean = report("clean", gym, draft);
    spoil(gym, draft);
    const bool spoilt = report("spoilt", gym, draft);
    return clean && spoilt ? 0 : 1;
}
