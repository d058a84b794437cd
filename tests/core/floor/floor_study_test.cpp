// SPDX-License-Identifier: GPL-3.0-or-later
// A month's weeks, and the changes that the simulation has shown to help.
#include "blockwright/floor/study.hpp"
#include "core/floor/floor_gym.hpp"
#include "support/catch.hpp"

#include <cmath>
#include <set>

namespace bw::test {

namespace {
StairStep weekOf(RoundsMode mode) { return {mode, {}, Intent::Build, {}}; }

// Four members come to one bike, in a section of two groups where everybody starts at it.
TinyGym queueGym() {
    TinyGym t;
    t.gym.settings.classMinutes = 60;
    t.gym.settings.places = 4;
    t.own("bike", 1, Claim::Set);
    t.add({group(rounds(1, 2), secondsRange(0, 0), {t.work(60, {{{"bike", 1}}})}),
           group(rounds(1, 2), secondsRange(0, 0), {t.work(60)})});
    t.draft.stair = {weekOf(RoundsMode::Low), weekOf(RoundsMode::High), weekOf(RoundsMode::Low)};
    return t;
}
FloorOptions steadyOptions() {
    FloorOptions o;
    o.steady = true;
    return o;
}
// Any wait at all is a problem.
FloorSearch anyWait() { return {.wait = MeanTime{0}, .overrunChance = 1, .ideas = {}}; }

FloorIdea lessTalk(int bySeconds) {
    return {.saves = {"Talk %1 s less: saves %2", {std::to_string(bySeconds)}},
            .spares = {"Talk %1 s less: %2 less waiting for each", {std::to_string(bySeconds)}},
            .place = {0},
            .change = [bySeconds](Block& b) { b.sections[0].talk -= Millis{1000 * bySeconds}; }};
}
FloorStudy studied(const TinyGym& t, const FloorOptions& o, const FloorSearch* search = nullptr,
                   std::optional<Week> only = {}) {
    return studyFloor(t.gym, t.draft, o, only, {}, {}, search).value();
}
std::vector<std::string> labelsOf(const FloorWeek& week) {
    std::vector<std::string> out;
    for (const ProvenChange& c : week.changes) out.push_back(c.label.english());
    return out;
}
} // namespace

TEST_CASE("a study answers every week of the stair, and weeks of the same rounds share an answer") {
    const TinyGym t = queueGym();
    const FloorStudy study = studied(t, steadyOptions());
    REQUIRE(study.weeks.size() == 3);
    CHECK(study.weeks[0].answer == study.weeks[2].answer);
    CHECK(study.weeks[0].answer != study.weeks[1].answer);
    for (const FloorWeek& w : study.weeks) {
        FloorOptions o = steadyOptions();
        o.week = w.week;
        CHECK(*w.answer == simulateFloor(t.gym, t.draft, o).value());
        CHECK(study.of(w.week) == &w);
        CHECK(w.changes.empty()); // none was asked for
    }
    CHECK(study.of(week(4)) == nullptr);
}

TEST_CASE("a study of one week has that week alone") {
    const FloorStudy study = studied(queueGym(), steadyOptions(), nullptr, week(2));
    REQUIRE(study.weeks.size() == 1);
    CHECK(study.of(week(2)) != nullptr);
    CHECK(study.of(week(1)) == nullptr);
}

TEST_CASE("a calm week is not searched for changes, one with a problem is") {
    const TinyGym t = queueGym(); // low weeks: mean wait 90 s; high ones more
    int asked = 0;
    FloorSearch search;
    search.ideas = [&](const FloorWeek&) {
        ++asked;
        return std::vector<FloorIdea>{};
    };
    search.overrunChance = 1;
    search.wait = MeanTime{90'000};
    CHECK(studied(t, steadyOptions(), &search, week(1)).weeks[0].changes.empty());
    CHECK(asked == 0);
    search.wait = MeanTime{89'999};
    CHECK(!studied(t, steadyOptions(), &search, week(1)).weeks[0].changes.empty());
    CHECK(asked == 1);
    CHECK(studied(t, steadyOptions(), &search).weeks.size() == 3);
    CHECK(asked == 3); // the third week shares what the first one found
}

TEST_CASE("running over is a problem too") {
    TinyGym t = queueGym();
    t.gym.settings.classMinutes = 5; // four turns of a minute, then a minute
    FloorSearch search{.wait = MeanTime::max(), .overrunChance = 0.1, .ideas = {}};
    CHECK(studied(t, steadyOptions(), &search, week(1)).weeks[0].changes.empty());
    t.gym.settings.opening = Millis{1};
    CHECK(!studied(t, steadyOptions(), &search, week(1)).weeks[0].changes.empty());
}

TEST_CASE("other starts are tried and say what they save") {
    const FloorSearch search = anyWait();
    const FloorStudy study = studied(queueGym(), steadyOptions(), &search, week(1));
    // Spread, two begin at the free group; the bike is never idle either way. Worked out by hand:
    // together the bike goes to 240, the last ends at 300; spread it ends at 240.
    CHECK(labelsOf(study.weeks[0]) ==
          std::vector<std::string>{"Start spread over groups A, B: saves 1:00",
                                   "Start with 1, 3 at groups A, B: saves 1:00"});
}

TEST_CASE("carried out, a change gives to the millisecond what the study said of it") {
    TinyGym t = queueGym();
    t.draft.sections[0].talk = Millis{60'000};
    FloorSearch search = anyWait();
    search.ideas = [](const FloorWeek&) { return std::vector{lessTalk(30)}; };
    FloorOptions o;
    o.runs = 400; // with a glance first
    o.threads = 2;
    const FloorStudy study = studied(t, o, &search);
    std::set<std::string> labels;
    for (const FloorWeek& w : study.weeks) {
        o.week = w.week;
        REQUIRE(!w.changes.empty());
        for (const ProvenChange& c : w.changes) {
            Block after = t.draft;
            c.change(after);
            const FloorAnswer then = simulateFloor(t.gym, after, o).value();
            CHECK(c.saves == w.answer->finish.mean - then.finish.mean);
            CHECK(c.waitsLess == w.answer->wait.mean - then.wait.mean);
            CHECK(c.overrunChance == then.overrunChance);
            CHECK(c.kit == then.kit);
            labels.insert(c.label.english());
        }
        CHECK(std::ranges::is_sorted(w.changes, std::greater{}, &ProvenChange::saves));
    }
    CHECK(labels.count("Talk 30 s less: saves 0:30") == 1);
}

TEST_CASE("a change is kept from a quarter of a minute on") {
    TinyGym t = queueGym();
    t.draft.sections[0].talk = Millis{60'000};
    t.draft.sections[0].start = StartSpread{};
    const int by = GENERATE(0, 14, 15, 16, -20);
    FloorSearch search = anyWait();
    search.ideas = [by](const FloorWeek&) { return std::vector{lessTalk(by), lessTalk(by)}; };
    const FloorStudy study = studied(t, steadyOptions(), &search, week(1));
    CHECK(std::ranges::count_if(labelsOf(study.weeks[0]), [](const std::string& label) {
              return label.starts_with("Talk");
          }) == (by >= 15 ? 1 : 0)); // the second is the same draft once more
}

TEST_CASE("less waiting is worth a change even when the class ends no earlier") {
    TinyGym t = queueGym();
    t.add({onceThrough({t.work(1)})}).talk = Millis{0};
    FloorSearch search = anyWait();
    // A minute's talk takes the place of the queue for the bike: two minutes less to wait.
    t.draft.sections[0].groups = {onceThrough({t.work(60, {{{"bike", 1}}})})};
    search.ideas = [&t](const FloorWeek&) {
        return std::vector<FloorIdea>{{.saves = {"Free: saves %1", {}},
                                       .spares = {"Free: %1 less waiting for each", {}},
                                       .place = {0},
                                       .change = [&t](Block& b) {
                                           b.sections[0].groups = {
                                               onceThrough({b.sections[1].groups[0].slots[0]})};
                                           b.sections[0].talk = Millis{240'000 - 1'000 - 5'000};
                                           (void)t;
                                       }}};
    };
    const FloorStudy study = studied(t, steadyOptions(), &search, week(1));
    CHECK(labelsOf(study.weeks[0]) == std::vector<std::string>{"Free: 1:30 less waiting for each"});
    CHECK(secondsOf(study.weeks[0].changes[0].saves) == 5);
    CHECK(secondsOf(study.weeks[0].changes[0].waitsLess) == 90);
}

TEST_CASE("what only luck brings is not kept") {
    // An open slot in front: other draws of the sets, the same class.
    const TinyGym t = queueGym();
    const Slot open;
    const auto redraw = [&open](Block& b) {
        for (Group& g : b.sections[0].groups) g.slots.insert(g.slots.begin(), open);
    };
    FloorOptions o;
    o.runs = 5;
    o.setSigma = 0.5;
    o.start = StartTogether{}; // no other start is tried
    FloorSearch search = anyWait();
    search.ideas = [&](const FloorWeek&) {
        return std::vector<FloorIdea>{
            {{"Redraw: saves %1", {}}, {"Redraw: %1 less waiting", {}}, {0}, redraw}};
    };
    int lucky = 0, kept = 0;
    Block other = t.draft;
    redraw(other);
    for (o.seed = 1; o.seed <= 40; ++o.seed) {
        const FloorAnswer now = simulateFloor(t.gym, t.draft, o).value();
        const FloorAnswer then = simulateFloor(t.gym, other, o).value();
        constexpr MeanTime kWorth{15'000};
        if (now.finish.mean - then.finish.mean >= kWorth ||
            now.wait.mean - then.wait.mean >= kWorth)
            ++lucky;
        if (!studied(t, o, &search, week(1)).weeks[0].changes.empty()) ++kept;
    }
    CHECK(lucky >= 8);
    CHECK(kept <= 2);
}

TEST_CASE("a study tells how far it is and can be stopped anywhere") {
    const TinyGym t = queueGym();
    FloorOptions o;
    o.runs = 800;
    const FloorSearch search = anyWait();
    const auto stage = GENERATE(FloorStage::Classes, FloorStage::Changes);
    std::stop_source stop;
    std::set<FloorStage> told;
    const auto study = studyFloor(
        t.gym, t.draft, o, {}, stop.get_token(),
        [&](FloorStage now, int done, int total) {
            told.insert(now);
            CHECK((done >= 0 && done <= total));
            if (now == stage) stop.request_stop();
        },
        &search);
    REQUIRE(!study.ok());
    CHECK(study.why().english() == "Stopped as asked; there is no answer.");
    CHECK(*told.rbegin() == stage);
}

TEST_CASE("what the simulation refuses, the study refuses") {
    TinyGym t = queueGym();
    t.own("bike", 0, Claim::Set);
    const auto study = studyFloor(t.gym, t.draft, {});
    REQUIRE(!study.ok());
    CHECK(study.why().english().find("can never be served") != std::string::npos);
}

} // namespace bw::test
