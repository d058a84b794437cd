// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/draft.hpp"
#include "support/catch.hpp"

using namespace bw;
using namespace bw::test;

namespace {
// Strength groups of one exercise each, three rounds in every week.
Draft only(const std::vector<std::pair<const char*, Pattern>>& rows) {
    Draft d = cleanDraft();
    Section& strength = d.section(kStrength);
    strength.groups.clear();
    for (const auto& [id, pattern] : rows) {
        d.gym.shelf.put(careful(id, pattern, "strength-long"));
        strength.groups.push_back(
            group(rounds(3, 3), secondsRange(60, 90), {slot(id, reps(8, 8))}));
    }
    d.block.sections = {strength};
    d.block.format.reset();
    return d;
}
void stored(Draft& d, const char* month, const std::vector<std::pair<const char*, Pattern>>& rows) {
    Block b = only(rows).block;
    b.month = bw::test::month(month);
    for (const auto& [id, pattern] : rows) d.gym.shelf.put(careful(id, pattern, "strength-long"));
    d.gym.put(b);
}
Slot open() {
    Slot s;
    s.role = RoleId::parse("strength-long").value();
    return s;
}
constexpr auto kPush = Pattern::HorizontalPush, kPull = Pattern::HorizontalPull;
} // namespace

TEST_CASE("pushes and pulls are held to the month's band, its ends included") {
    Draft d = only({{"press", kPush}, {"dip", kPush}, {"row", kPull}});
    const auto found = d.findAll("push-pull");
    REQUIRE(found.size() == 1);
    CHECK(found[0].level == Level::Look);
    CHECK(found[0].measured == 2);
    CHECK(found[0].limit == band(0.6, 1.4));
    CHECK(found[0].place == Place{});
    d.limit("push-pull.block", 0.6, 2, true);
    CHECK(d.findAll("push-pull").empty());
    d.limit("push-pull.block", 2.1, 3, true);
    const auto low = d.findAll("push-pull");
    REQUIRE(low.size() == 1);
    CHECK(low[0].basis.english() == "This gym's setting.");
    CHECK(low[0].text.english().find("fewer than 2.1") != std::string::npos);
}

TEST_CASE("a month without any push or pull is left to pattern-missing") {
    for (const Pattern p : {kPush, kPull}) {
        const Draft d = only({{"alone", p}});
        CHECK(d.findAll("push-pull").empty());
        CHECK_FALSE(d.findAll("pattern-missing").empty());
    }
    CHECK(only({{"squat", Pattern::Squat}}).findAll("knee-hip").empty());
}

TEST_CASE("while an open slot could bring what is missing, it is only noted") {
    Draft d = only({{"press", kPush}, {"dip", kPush}, {"row", kPull}});
    d.group(kStrength - 2).slots.push_back(open());
    const auto found = d.findAll("push-pull");
    REQUIRE(found.size() == 1);
    CHECK(found[0].level == Level::Note);
    const Draft filled = d.after(remedy(found[0], "Put ring-row into the open slot"));
    CHECK(filled.findAll("push-pull").empty());
    // An open slot that wants something else could not.
    d.slot(0, 0, 1).patterns = {Pattern::Squat};
    CHECK(d.findAll("push-pull").at(0).level == Level::Look);
}

TEST_CASE("a month in its band is held to the window too, which is only noted") {
    Draft d = only({{"press", kPush}, {"row", kPull}});
    CHECK(d.findAll("push-pull").empty());
    stored(d, "2026-08", {{"press", kPush}, {"dip", kPush}});
    const auto found = d.findAll("push-pull");
    REQUIRE(found.size() == 1);
    CHECK(found[0].level == Level::Note);
    CHECK(found[0].about == "window");
    CHECK(found[0].measured == 3);
    CHECK(found[0].limit == band(0.75, 1.25));
    CHECK(found[0].text.english().starts_with("Over 2 months"));
    d.limit("balance.window_months", 1);
    CHECK(d.findAll("push-pull").empty());
    d.limit("balance.window_months", 3);
    d.limit("push-pull.block", 0.1, 0.5, true); // the month speaks first
    REQUIRE(d.findAll("push-pull").size() == 1);
    CHECK(d.findAll("push-pull")[0].about.empty());
}

TEST_CASE("a change of rounds that the program offers brings the ratio nearer") {
    Draft d = only({{"press", kPush}, {"dip", kPush}, {"row", kPull}});
    for (const Finding f = d.findAll("push-pull").at(0); const Remedy& r : f.remedies) {
        const auto after = d.after(r).findAll("push-pull");
        CHECK((after.empty() || after[0].measured < 2));
    }
    CHECK(d.findAll("push-pull").at(0).remedies.size() == 2);
    // Nothing to turn: one round each, and the most rounds there are.
    d.group(0, 0).rounds = d.group(0, 1).rounds = rounds(1, 1);
    d.group(0, 2).rounds = rounds(20, 20);
    d.limit("push-pull.block", 0.2, 0.3, true);
    const auto stuck = d.findAll("push-pull");
    REQUIRE(stuck.size() == 1);
    for (const Remedy& r : stuck[0].remedies) CHECK(d.after(r).findAll("push-pull").size() <= 1);
}

TEST_CASE("an upper body that only works one way has no ratio and is told so in sets") {
    const Draft flat = only({{"press", kPush}, {"row", kPull}});
    const auto found = flat.findAll("horizontal-vertical");
    REQUIRE(found.size() == 1);
    CHECK(found[0].measured == 0);
    CHECK(found[0].unit == "sets");
    CHECK(found[0].limit == number(6 / 5.0)); // six horizontal sets, at most five to one
    const Draft tall = only({{"overhead", Pattern::VerticalPush}});
    CHECK(tall.findAll("horizontal-vertical").at(0).limit.lo == Approx(3 * 0.3));
    CHECK(only({{"squat", Pattern::Squat}}).findAll("horizontal-vertical").empty());
}

TEST_CASE("one-sided work and planes are shares, and only noted") {
    Draft d = only({{"press", kPush}, {"row", kPull}});
    CHECK(d.findAll("one-sided").at(0).text.english() ==
          "Nothing in this month works one side at a time.");
    Exercise side = careful("side-lunge", Pattern::Lunge, "strength-long");
    side.sides = Sides::Each;
    side.planes = Shares<Plane>::of({{Plane::Frontal, Share::whole()}}).value();
    d.gym.shelf.put(side);
    const auto planes = d.findAll("planes");
    REQUIRE(planes.size() == 2);
    CHECK(planes[0].about == "frontal");
    CHECK(planes[1].about == "transverse");
    CHECK(planes[0].level == Level::Note);
    d.group(0, 1).slots.push_back(slot("side-lunge", reps(8, 8)));
    CHECK(d.findAll("one-sided").empty());
    CHECK(d.findAll("planes").size() == 1);
    d.limit("one-sided.block", 0, 0.3, true);
    const auto many = d.findAll("one-sided");
    REQUIRE(many.size() == 1);
    CHECK(many[0].measured == Approx(1 / 3.0));
    CHECK(many[0].text.english().starts_with("33.3 % of the month's sets"));
}

namespace {
Draft muscular(int visits) {
    Draft d = only({{"squat", Pattern::Squat}, {"deadlift", Pattern::Hinge}});
    const auto train = [&](const char* id, const char* muscle, double share) {
        Exercise e = *d.gym.shelf.find(ex(id));
        e.muscles = {{MuscleId::parse(muscle).value(), Share::of(share).value()}};
        d.gym.shelf.put(e);
    };
    train("squat", "quadriceps", 1);
    train("deadlift", "hamstrings", 0.5);
    d.block.visitsPerWeek = visits;
    d.limit("muscle-dose.sets", 4, 8, true);
    return d;
}
} // namespace

TEST_CASE("each large muscle has its weekly sets, not fewer and not many more") {
    const auto found = muscular(2).findAll("muscle-dose"); // 6 and 3
    REQUIRE(found.size() == 2);
    CHECK(found[0].about == "hamstrings");
    CHECK(found[0].level == Level::Look);
    CHECK(found[0].measured == 3);
    CHECK(found[1].about == "glutes");                    // its patterns are there, it is not
    const auto many = muscular(3).findAll("muscle-dose"); // 9 and 4.5
    REQUIRE(many.size() == 2);
    CHECK(many[1].about == "quadriceps");
    CHECK(many[1].level == Level::Note);
    const Draft less =
        muscular(3).after(remedy(many[1], "Set the rounds of group A to 2 instead of 3"));
    CHECK(less.findAll("muscle-dose").size() == 1);
}

TEST_CASE(
    "muscles whose patterns are missing altogether, and a Shelf without muscles, say nothing") {
    for (const Finding& f : muscular(2).findAll("muscle-dose")) {
        CHECK(f.about != "chest");
        CHECK(f.about != "lats");
    }
    CHECK(only({{"squat", Pattern::Squat}}).findAll("muscle-dose").empty());
}

TEST_CASE("too little of a muscle is only noted while a strength slot is open") {
    Draft d = muscular(1);
    Exercise curl = careful("curl", Pattern::Hinge, "strength-long");
    curl.muscles = {{MuscleId::parse("hamstrings").value(), Share::whole()}};
    d.gym.shelf.put(curl);
    d.group(0, 1).slots.push_back(open());
    const auto found = d.findAll("muscle-dose"); // 3 and 1.5
    REQUIRE(found.size() == 3);
    CHECK(found[1].about == "hamstrings");
    CHECK(found[1].level == Level::Note);
    const Draft filled = d.after(remedy(found[1], "Put curl into the open slot B2"));
    for (const Finding& f : filled.findAll("muscle-dose")) CHECK(f.about != "hamstrings");
}
