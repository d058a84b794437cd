// SPDX-License-Identifier: GPL-3.0-or-later
// How long work takes and rests last, against the literature.
#include "blockwright/rules/work_rest.hpp"
#include "blockwright/time/timing.hpp"
#include "interchange/bundle.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

// Order lowering, pause, lifting, pause: Wilk, Zajac, Tufano, Sports Med 2021;51:1629-1650. Tempos
// 2/0/2/0, 5/0/3/0 and 6/0/4/0: Wilk et al., J Hum Kinet 2018;62. X counted as one second: common
// practice, no source.
TEST_CASE("sets at a tempo last as long as the literature's arithmetic says") {
    struct Row {
        const char* tempo;
        int perRep, reps, set;
    };
    const Exercise any = exercise("any", Pattern::Squat, 1.0);
    for (const Row r : {Row{"2010", 3, 10, 30},
                        {"2020", 4, 8, 32},
                        {"3010", 4, 8, 32},
                        {"20X1", 4, 5, 20},
                        {"4020", 6, 6, 36},
                        {"5030", 8, 6, 48},
                        {"6040", 10, 6, 60}}) {
        INFO(r.tempo);
        const Tempo tempo = Tempo::parse(r.tempo).value();
        CHECK(tempo.seconds() == r.perRep);
        CHECK(setWork(reps(r.reps, r.reps), tempo, any).middle == Millis{r.set * 1000});
    }
}

// ACSM position stand 2009 (Ratamess et al., Med Sci Sports Exerc 41(3):687-708): moderate velocity
// is 1 to 2 s up and 1 to 2 s down, so 2 to 4 s a repetition. Exercises that are slow on purpose
// say so.
TEST_CASE("heavy exercises of the shipped Shelf go at a moderate pace") {
    const auto slowOnPurpose = [](const std::string& id) {
        return id.find("slow") != std::string::npos || id.find("paused") != std::string::npos ||
               id.ends_with("-lower");
    };
    int heavy = 0;
    for (const Exercise& e : shippedShelf().shelf) {
        if (!e.hasRole("strength-heavy") || e.pace.usual() != Measure::Reps) continue;
        INFO(e.id.text());
        const double pace = e.pace.rates().secondsPerRep->value();
        CHECK(pace >= 2.0);
        CHECK((pace <= (e.sides == Sides::Each ? 4.5 : 4.0) || slowOnPurpose(e.id.text())));
        ++heavy;
    }
    CHECK(heavy > 20);
}

namespace {
struct Session {
    Gym gym;
    Session(int setWorkSeconds, int setupOfSecond) {
        gym.settings.opening = gym.settings.closing = Millis{0};
        for (const char* id : {"press", "row"}) {
            Exercise e = exercise(id, Pattern::HorizontalPush, setWorkSeconds);
            if (std::string(id) == "row") e.setup = Millis{setupOfSecond * 1000};
            gym.shelf.put(e);
        }
    }
    [[nodiscard]] double planned(std::vector<Section> sections) const {
        return seconds(
            timeSession(gym.settings, gym.shelf, block("2026-09", std::move(sections)), week(1))
                .total.planned);
    }
};
Group threeRounds(int rest, std::vector<Slot> slots) {
    return group(rounds(3, 3), secondsRange(rest, rest), std::move(slots));
}
} // namespace

// Two exercises of three sets, 40 s of work each, 120 s of rest: the arithmetic of a time budget.
// The saving is near the 36 % measured by Burke et al. 2024 (43 trained people, eight weeks) for
// supersets.
TEST_CASE("a time budget by hand is the session as timed here") {
    const Slot press = slot("press", reps(1, 1));
    const Slot row = slot("row", reps(1, 1));
    // One after the other, 30 s to change over: 2nW + 2(n - 1)R + C = 240 + 480 + 30.
    Section second = section(SectionKind::Strength, {threeRounds(120, {row})});
    second.talk = Millis{30'000};
    const double inTurn = Session(40, 0).planned(
        {section(SectionKind::Strength, {threeRounds(120, {press})}), second});
    CHECK(inTurn == 750);
    // Superset, 15 s to change over, rest only after the pair: 2nW + nC + (n - 1)R = 240 + 45 +
    // 240.
    const double superset =
        Session(40, 15).planned({section(SectionKind::Strength, {threeRounds(120, {press, row})})});
    CHECK(superset == 525);
    CHECK(1 - superset / inTurn == Approx(0.30));
    // Half the rest after each set: 2nW + (2n - 1)R/2 = 240 + 300.
    CHECK(Session(40, 60).planned(
              {section(SectionKind::Strength, {threeRounds(60, {press, row})})}) == 540);
}

// Haff & Triplett (eds), Essentials of Strength Training and Conditioning, 4th ed. 2016, table 3.6.
TEST_CASE("rests by the work to rest table") {
    struct Row {
        int work, lo, hi;
    };
    for (const Row r : {Row{5, 60, 100},
                        {10, 120, 200},
                        {15, 45, 75},
                        {30, 90, 150},
                        {60, 180, 240},
                        {180, 540, 720},
                        {240, 240, 720}}) {
        INFO(r.work);
        CHECK(restAfter(Millis{r.work * 1000}) == secondsRange(r.lo, r.hi));
    }
    for (const int silent : {0, 4, 11, 14, 31, 59}) CHECK_FALSE(restAfter(Millis{silent * 1000}));
    CHECK(restAfter(Millis{180'001})->hi() == Millis{540'003});
}
