// SPDX-License-Identifier: GPL-3.0-or-later
// The rules of the simulated class: kit-short, kit-queue, overrun-chance, third-round.
#include "blockwright/model/shorthand.hpp"
#include "blockwright/rules/floor_search.hpp"
#include "core/floor/floor_gym.hpp"
#include "core/rules/draft.hpp"
#include "support/catch.hpp"

#include <cmath>

using namespace bw;
using namespace bw::test;

namespace {
void needs(Draft& d, std::string_view exerciseId, KitNeeds wanted) {
    Exercise e = *d.gym.shelf.find(ex(exerciseId));
    e.needs = std::move(wanted);
    d.gym.shelf.put(std::move(e));
}
KitNeed one(std::string_view id, int count = 1) { return {kit(id), count, {}}; }

// Twelve members come to one bike, in a finisher of three stations where all start at it.
Draft queued() {
    Draft d = cleanDraft();
    d.gym.put(kitItem("bike", 1, Claim::Set));
    needs(d, "swing", {{one("bike")}});
    d.gym.shelf.put(careful("burpee", Pattern::Hinge, "finisher"));
    const auto station = [](std::string_view id) {
        return bw::test::group(rounds(1, 2), secondsRange(30, 60),
                               {bw::test::slot(id, reps(15, 15))});
    };
    d.section(kFinisher).groups = {station("swing"), station("crawl"), station("step-up")};
    return d;
}

FloorOptions someRuns() {
    FloorOptions o;
    o.runs = 100;
    return o;
}
FloorStudy studied(const Draft& d) {
    const FloorSearch search = floorSearch(d.gym, d.block);
    return studyFloor(d.gym, d.block, someRuns(), {}, {}, {}, &search).value();
}
std::vector<Finding> found(const Draft& d, std::string_view rule, const FloorStudy* study,
                           std::optional<Week> only = {}) {
    auto all = check(d.gym, d.block, only, study).findings;
    std::erase_if(all, [&](const Finding& f) { return f.rule != rule; });
    return all;
}

// A study of week 2 in which something is as told.
FloorStudy told(const Draft& d, const std::function<void(FloorAnswer&)>& as) {
    FloorOptions o = someRuns();
    o.steady = true;
    o.week = week(2);
    auto answer = std::make_shared<FloorAnswer>(simulateFloor(d.gym, d.block, o).value());
    as(*answer);
    return {{{.week = week(2), .answer = std::move(answer), .changes = {}}}};
}
FloorStudy waiting(const Draft& d, double seconds) {
    return told(d, [&](FloorAnswer& a) {
        a.overrunChance = 0;
        a.kit.at(0).wait = {MeanTime{seconds * 1000}, Millis{200'000}};
    });
}
FloorStudy overrunning(const Draft& d, double chance) {
    return told(d, [&](FloorAnswer& a) { a.overrunChance = chance; });
}
FloorStudy reaching(const Draft& d, double share) {
    return told(d, [&](FloorAnswer& a) {
        for (FloorSectionEnd& s : a.sections)
            for (FloorGroupRounds& g : s.groups) g.reachedHigh = 1;
        a.sections.at(kStrength).groups.at(1).reachedHigh = share;
    });
}
} // namespace

TEST_CASE("kit-short stops a slot whose kit the gym has too little of for one member") {
    Draft d = cleanDraft();
    d.gym.put(kitItem("hurdle", 0, Claim::Group));
    needs(d, "box-jump", {{one("hurdle", 2)}});
    const auto all = d.findAll("kit-short");
    REQUIRE(all.size() == 1);
    CHECK(all[0].level == Level::Stop);
    CHECK(all[0].place == Place{kPower, 0, 0});
    CHECK(all[0].measured == 2);
    CHECK(all[0].limit == number(0));
    CHECK(all[0].weeks == std::vector<int>{1, 2, 3, 4});
    CHECK(all[0].text.english() ==
          "box-jump (B1) takes 2 of “hurdle” and the gym has none: nobody can do it, even in "
          "turns.");
    SECTION("one of two is not enough either, and says so") {
        d.gym.put(kitItem("hurdle", 1, Claim::Group));
        CHECK(d.findAll("kit-short").at(0).text.english().find("the gym has 1") !=
              std::string::npos);
    }
    SECTION("an exercise with kit at hand mends it") {
        Exercise jump = careful("broad-jump", Pattern::Squat, "power");
        d.gym.shelf.put(jump);
        jump = careful("hurdle-hop", Pattern::Squat, "power");
        jump.needs = {{one("hurdle")}};
        d.gym.shelf.put(jump);
        const auto again = d.findAll("kit-short");
        REQUIRE(again.at(0).remedies.size() == 1);
        CHECK(d.after(remedy(again[0], "Use broad-jump instead of box-jump (B1)"))
                  .findAll("kit-short")
                  .empty());
    }
}

TEST_CASE("kit-short is content with kit for one, in any alternative, or borrowed by the limit") {
    Draft d = cleanDraft();
    needs(d, "box-jump", {{one("hurdle", 2)}});
    SECTION("a gym that has told no kit has all") {}
    SECTION("just enough") { d.gym.put(kitItem("hurdle", 2, Claim::Group)); }
    SECTION("another way") {
        d.gym.put(kitItem("box", 1, Claim::Group));
        needs(d, "box-jump", {{one("hurdle", 2)}, {one("box")}});
    }
    SECTION("two will be borrowed") {
        d.gym.put(kitItem("box", 1, Claim::Group));
        d.limit("kit-short.missing_units", 2);
    }
    CHECK(d.findAll("kit-short").empty());
}

TEST_CASE("the rules of the simulated class are silent about weeks that were not simulated") {
    const Draft d = queued();
    for (const char* rule : {"kit-queue", "overrun-chance", "third-round"}) {
        CHECK(found(d, rule, nullptr).empty());
        CHECK(found(d, rule, nullptr, week(2)).empty());
    }
    const FloorStudy second = waiting(d, 400);
    CHECK(found(d, "kit-queue", &second, week(1)).empty());
    CHECK(found(d, "kit-queue", &second).at(0).weeks == std::vector<int>{2});
}

TEST_CASE("kit-queue looks at a mean wait of more than 2 minutes and stops at more than 5") {
    Draft d = queued();
    const auto at = [&](double seconds) {
        const FloorStudy study = waiting(d, seconds);
        return found(d, "kit-queue", &study);
    };
    CHECK(at(120).empty());
    REQUIRE(at(120.1).size() == 1);
    const Finding look = at(120.1)[0];
    CHECK(look.level == Level::Look);
    CHECK(look.place == Place{kFinisher, 0, 0});
    CHECK(look.about == "bike");
    CHECK(look.measured == Approx(120.1));
    CHECK(look.limit == number(120));
    CHECK(look.unit == "s");
    CHECK(look.text.english() ==
          "In the simulated class a member waits 2:00 for “bike” on average, one in ten longer "
          "than 3:20; the gym has 1.");
    CHECK(at(300).at(0).level == Level::Look);
    CHECK(at(300.1).at(0).level == Level::Stop);
    CHECK(at(300.1).at(0).limit == number(300));
    d.limit("kit-queue.look_seconds", 60);
    d.limit("kit-queue.stop_seconds", 90);
    CHECK(at(60).empty());
    CHECK(at(60.1).at(0).level == Level::Look);
    CHECK(at(90.1).at(0).level == Level::Stop);
    CHECK(at(90.1).at(0).basis.english() == "This gym's setting.");
}

TEST_CASE("kit-queue names every slot that may take the kit") {
    Draft d = queued();
    d.gym.put(kitItem("rower", 9, Claim::Set));
    needs(d, "crawl", {{one("rower")}, {one("bike")}});
    const FloorStudy study = waiting(d, 400);
    const Finding f = found(d, "kit-queue", &study).at(0);
    CHECK(f.place == Place{kFinisher, 0, 0});
    CHECK(f.also == std::vector<Place>{{kFinisher, 1, 0}});
}

TEST_CASE("overrun-chance looks at more than a tenth and stops at more than half") {
    Draft d = queued();
    const auto at = [&](double chance) {
        const FloorStudy study = overrunning(d, chance);
        return found(d, "overrun-chance", &study);
    };
    CHECK(at(0.1).empty());
    REQUIRE(at(0.11).size() == 1);
    const Finding look = at(0.11)[0];
    CHECK(look.level == Level::Look);
    CHECK(look.place.isSession());
    CHECK(look.measured == 0.11);
    CHECK(look.limit == number(0.1));
    CHECK(look.text.english().starts_with("11 % of 1 simulated classes run over the 1:00:00 "));
    CHECK(at(0.5).at(0).level == Level::Look);
    CHECK(at(0.51).at(0).level == Level::Stop);
    d.limit("overrun-chance.look_share", 0.6);
    d.limit("overrun-chance.stop_share", 0.7);
    CHECK(at(0.6).empty());
    CHECK(at(0.61).at(0).level == Level::Look);
}

TEST_CASE("third-round notes less than a quarter of the members at the highest round, and looks at "
          "none") {
    Draft d = cleanDraft();
    const auto at = [&](double share) {
        const FloorStudy study = reaching(d, share);
        return found(d, "third-round", &study);
    };
    CHECK(at(0.25).empty());
    REQUIRE(at(0.24).size() == 1);
    const Finding note = at(0.24)[0];
    CHECK(note.level == Level::Note);
    CHECK(note.place == Place{kStrength, 1});
    CHECK(note.limit == number(0.25));
    CHECK(note.text.english() ==
          "Group D (bench-press + ring-row) is open up to round 3, and 24 % of the members get "
          "there in the simulated class.");
    CHECK(at(0.011).at(0).level == Level::Note);
    CHECK(at(0.01).at(0).level == Level::Look);
    CHECK(at(0).at(0).text.english().find("nobody gets there") != std::string::npos);
    const Draft fewer = d.after(remedy(note, "Set the rounds of group D to 2 instead of 2–3"));
    CHECK(fewer.group(kStrength, 1).rounds == rounds(2, 2));
    CHECK(d.after(remedy(note, "Set the rest of group D to 60 s")).group(kStrength, 1).rest ==
          secondsRange(60, 60));
}

TEST_CASE("third-round has nothing to say where the week or the group leaves no choice") {
    Draft d = cleanDraft();
    SECTION("rounds of the group are one number") { d.group(kStrength, 1).rounds = rounds(3, 3); }
    SECTION("the week asks for low rounds") { d.block.stair[1].rounds = RoundsMode::Low; }
    SECTION("the week asks for high rounds") { d.block.stair[1].rounds = RoundsMode::High; }
    const FloorStudy study = reaching(d, 0);
    CHECK(found(d, "third-round", &study).empty());
}

TEST_CASE("the study of a calm draft finds nothing and tries nothing") {
    Draft d = cleanDraft();
    d.gym.put(kitItem("bike", 12, Claim::Set));
    needs(d, "swing", {{one("bike")}});
    const FloorStudy study = studied(d);
    REQUIRE(study.weeks.size() == 4);
    for (const FloorWeek& w : study.weeks) CHECK(w.changes.empty());
    for (const char* rule : {"kit-short", "kit-queue", "overrun-chance"})
        CHECK(found(d, rule, &study).empty());
}

TEST_CASE("simulated, a queue is found, and every remedy keeps what its label says") {
    const Draft d = queued();
    const FloorStudy study = studied(d);
    std::string all;
    for (const FloorWeek& w : study.weeks)
        for (const ProvenChange& c : w.changes) all += c.label.english() + '\n';
    INFO(all);
    for (const char* kind :
         {"Start spread over groups E, F, G: saves", "Use burpee instead of swing (E1): saves",
          "Cut the rounds of group E from 1–2 to 1: saves"})
        CHECK(all.find(kind) != std::string::npos);

    const auto queue = found(d, "kit-queue", &study);
    REQUIRE(queue.size() == 1);
    CHECK(queue[0].level == Level::Stop);
    REQUIRE(queue[0].remedies.size() == 3);
    FloorOptions o = someRuns();
    o.week = week(queue[0].weeks.front());
    const FloorAnswer now = simulateFloor(d.gym, d.block, o).value();
    for (const Remedy& r : queue[0].remedies) {
        const Draft then = d.after(r);
        const FloorAnswer after = simulateFloor(then.gym, then.block, o).value();
        const MeanTime saves = now.finish.mean - after.finish.mean;
        INFO(r.label.english());
        CHECK(r.label.english().ends_with(
            ": saves " + clockText(Millis{std::llround(saves.count() / 1000) * 1000})));
        const auto wait = std::ranges::find(after.kit, kit("bike"), &FloorKitUse::kit);
        CHECK((wait == after.kit.end() ||
               wait->wait.mean + MeanTime{15'000} <= useOf(now, "bike").wait.mean));
    }
}

TEST_CASE("a class that runs over is offered what makes it shorter, the most saved first") {
    Draft d = queued();
    d.gym.settings.classMinutes = 45;
    const FloorStudy study = studied(d);
    const auto over = found(d, "overrun-chance", &study);
    REQUIRE(over.size() == 1);
    CHECK(over[0].level == Level::Stop);
    REQUIRE(over[0].remedies.size() == 3);
    FloorOptions o = someRuns();
    o.week = week(over[0].weeks.front());
    MeanTime last{0};
    for (const Remedy& r : over[0].remedies) {
        const Draft then = d.after(r);
        const MeanTime finish = simulateFloor(then.gym, then.block, o)->finish.mean;
        CHECK(finish >= last);
        last = finish;
    }
    CHECK(last + MeanTime{15'000} <= simulateFloor(d.gym, d.block, o)->finish.mean);
}

TEST_CASE("a locked slot keeps its exercise, whatever the queue") {
    Draft d = queued();
    d.slot(kFinisher, 0, 0).locked = true;
    for (const FloorWeek& w : studied(d).weeks)
        for (const ProvenChange& c : w.changes)
            CHECK_FALSE(c.label.english().starts_with("Use burpee instead of swing"));
}

TEST_CASE("a group that moves within its section takes its heads along") {
    Draft d = queued();
    d.section(kFinisher).start = StartCounts{{12, 0, 0}};
    std::vector<std::string> moves;
    for (const FloorIdea& idea : floorSearch(d.gym, d.block).ideas(studied(d).weeks[0])) {
        Block after = d.block;
        idea.change(after);
        if (!idea.saves.english().starts_with("Move")) continue;
        moves.push_back(idea.saves.english()); // what it saves is not known yet
        const Section& s = after.sections[kFinisher];
        for (std::size_t g = 0; g < 3; ++g)
            CHECK(std::get<StartCounts>(s.start).heads[g] ==
                  (s.groups[g].slots[0].exercise == ex("swing") ? 12 : 0));
    }
    CHECK(moves == std::vector<std::string>{"Move group E behind F: saves ",
                                            "Move group E behind G: saves "});
}
