// SPDX-License-Identifier: GPL-3.0-or-later
// Who has which kit when, and what a wait lacked.
#include "core/floor/floor_gym.hpp"
#include "core/floor/floor_random.hpp"
#include "support/catch.hpp"

#include <map>

namespace bw::test {

namespace {
// "bar 0 0-30": kit, member, seconds; with a count above one, "2 bar 0 0-30".
std::string holdsOf(const FloorAnswer& answer) {
    std::ostringstream text;
    for (const FloorHold& h : answer.holds) {
        if (text.tellp() > 0) text << ", ";
        if (h.count > 1) text << h.count << ' ';
        text << h.kit.text() << ' ' << h.member << ' ' << h.from.count() / 1000 << '-'
             << h.to.count() / 1000;
    }
    return text.str();
}
} // namespace

TEST_CASE("set kit is held for a set, group kit from entering to leaving, each kit by time") {
    TinyGym t;
    t.own("bar", 1, Claim::Group).own("bike", 1, Claim::Set);
    t.add({group(rounds(2, 2), secondsRange(10, 10),
                 {t.work(20, {{{"bar", 1}}}), t.work(5, {{{"bike", 1}}})})});
    // Member 0: bar 0-60, its sets 0-20, 20-25, rest, 35-55, 55-60. Member 1 gets the bar at 60.
    CHECK(holdsOf(t.steady(2)) == "bar 0 0-60, bar 1 60-120, bike 0 20-25, bike 0 55-60, "
                                  "bike 1 80-85, bike 1 115-120");
}

TEST_CASE("a wait names the first kit item that was short, nothing else does") {
    TinyGym t;
    t.own("bar", 1, Claim::Group);
    t.add({onceThrough({t.work(20, {{{"bar", 1}}})})});
    for (const FloorRow& row : t.steady(2).timeline)
        CHECK(row.lacked ==
              (row.doing == FloorDoing::Wait ? std::optional(kit("bar")) : std::nullopt));
}

TEST_CASE("on drawn floors the holds of a class add up to the busy share of its kit") {
    std::uint64_t seed = 40'000;
    int held = 0;
    for (int i = 0; i < 200; ++i) {
        RandomFloor f = servedFloor(seed);
        INFO("seed " << seed - 1);
        FloorOptions o;
        o.members = f.members;
        o.steady = o.timeline = true;
        const FloorAnswer a = simulateFloor(f.t.gym, f.t.draft, o).value();
        std::map<std::string, double> unitTime;
        for (const FloorHold& h : a.holds) {
            CHECK(h.from < h.to);
            unitTime[h.kit.text()] += h.count * static_cast<double>((h.to - h.from).count());
            ++held;
        }
        const double open = a.sections.back().end.mean.count(); // opening and all
        for (const FloorKitUse& use : a.kit) {
            const int units = f.t.gym.findKit(use.kit)->units;
            CHECK(unitTime[use.kit.text()] == Approx(use.busy * units * open).margin(0.01));
        }
    }
    CHECK(held > 1000);
}

} // namespace bw::test
