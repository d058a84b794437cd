// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/draft.hpp"
#include "support/catch.hpp"

using namespace bw;
using namespace bw::test;

namespace {
// A draft of September whose strength section has these main lifts, all squats; and such months.
Block mains(const char* month, Format format, const std::vector<const char*>& lifts) {
    std::vector<Group> groups;
    for (const char* id : lifts) {
        Slot s = slot(id, reps(5, 5));
        s.main = true;
        groups.push_back(group(rounds(2, 3), secondsRange(60, 90), {s}));
    }
    Block b = block(month, {section(SectionKind::Strength, std::move(groups))});
    b.format = format;
    return b;
}
Draft drafted(Format format, const std::vector<const char*>& lifts) {
    Draft d = cleanDraft();
    for (const char* id : {"lift-a", "lift-b", "lift-c", "lift-d", "lift-e"})
        d.gym.shelf.put(careful(id, Pattern::Squat, "strength-heavy"));
    d.block = mains("2026-09", format, lifts);
    return d;
}
void before(Draft& d, const char* month, Format format, const std::vector<const char*>& lifts) {
    d.gym.put(mains(month, format, lifts));
}
constexpr auto kStraight = Format::StraightHeavy, kLong = Format::HeavyThenLong;
} // namespace

TEST_CASE("to a gym without earlier months nothing is new, stale or left out") {
    const Draft d = drafted(kStraight, {"lift-a"});
    for (const char* rule : {"novelty", "staleness", "carry-over"}) CHECK(d.findAll(rule).empty());
}

TEST_CASE("up to three new exercises are right, a fourth is looked at, none is noted") {
    const auto found = [](const std::vector<const char*>& now) {
        Draft d = drafted(kStraight, now);
        before(d, "2026-08", kLong, {"lift-a"});
        return d.findAll("novelty");
    };
    CHECK(found({"lift-a", "lift-b", "lift-c", "lift-d"}).empty());
    const auto many = found({"lift-b", "lift-c", "lift-d", "lift-e", "lift-b"});
    REQUIRE(many.size() == 1);
    CHECK(many[0].level == Level::Look);
    CHECK(many[0].measured == 4); // twice the same is one
    CHECK(many[0].also.size() == 4);
    const auto none = found({"lift-a"});
    REQUIRE(none.size() == 1);
    CHECK(none[0].level == Level::Note);
    CHECK(none[0].text.english() == "Nothing in this month is new to this gym.");
}

TEST_CASE("nothing new is not said while a slot is open, and can be mended outside the strength") {
    Draft d = drafted(kStraight, {"lift-a"});
    d.block.sections.push_back(
        section(SectionKind::Finisher,
                {group(rounds(1, 2), secondsRange(30, 60), {slot("swing", reps(15, 15))})}));
    Block august = d.block;
    august.month = month("2026-08");
    d.gym.put(august);
    d.gym.shelf.put(careful("new-swing", Pattern::Hinge, "finisher"));
    const Draft fresh =
        d.after(remedy(d.findAll("novelty").at(0), "Use new-swing instead of swing"));
    CHECK(fresh.findAll("novelty").empty());
    d.block.sections[1].groups[0].slots.push_back(Slot{});
    CHECK(d.findAll("novelty").empty());
}

TEST_CASE("a main lift may stay three months in a row") {
    Draft d = drafted(kStraight, {"lift-a", "lift-b"});
    before(d, "2026-08", kLong, {"lift-a"});
    before(d, "2026-07", kStraight, {"lift-a"});
    CHECK(d.findAll("staleness").empty());
    before(d, "2026-06", kLong, {"lift-a"});
    const auto found = d.findAll("staleness");
    REQUIRE(found.size() == 1);
    CHECK(found[0].measured == 4);
    CHECK(found[0].place == Place{0, 0, 0});
    CHECK(d.after(remedy(found[0], "Use ")).findAll("staleness").empty());
    d.limit("staleness.main_months", 4);
    CHECK(d.findAll("staleness").empty());
}

TEST_CASE("a month between, or one in which it was no main lift, breaks the row") {
    Draft d = drafted(kStraight, {"lift-a"});
    before(d, "2026-08", kLong, {"lift-a"});
    before(d, "2026-06", kLong, {"lift-a"});
    before(d, "2026-05", kLong, {"lift-a"});
    CHECK(d.findAll("staleness").empty()); // July is missing
    Block july = mains("2026-07", kStraight, {"lift-a"});
    july.sections[0].groups[0].slots[0].main = false;
    d.gym.put(july);
    CHECK(d.findAll("staleness").empty());
}

TEST_CASE("the same format two months in a row is looked at, with one that has rested longest") {
    Draft d = drafted(kStraight, {"lift-a"});
    before(d, "2026-08", kStraight, {"lift-b"});
    const auto found = d.findAll("staleness");
    REQUIRE(found.size() == 1);
    CHECK(found[0].about == "format");
    CHECK(found[0].measured == 2);
    CHECK_FALSE(found[0].remedies.at(0).action); // groups of one suit no other format
    for (Group& g : d.block.sections[0].groups) g.slots.push_back(slot("lift-c", reps(10, 10)));
    before(d, "2026-07", Format::HeavyThenFast, {"lift-b"});
    before(d, "2026-06", Format::Opposed, {"lift-b"});
    // Heavy-then-long was never used.
    const Draft other =
        d.after(remedy(d.findAll("staleness").at(0), "Make the month heavy-then-long"));
    CHECK(other.findAll("staleness").empty());
    d.block.format.reset();
    CHECK(d.findAll("staleness").empty());
}

TEST_CASE("one main lift of last month is enough to carry over") {
    Draft d = drafted(kStraight, {"lift-b", "lift-a"});
    before(d, "2026-08", kLong, {"lift-a", "lift-c"});
    CHECK(d.findAll("carry-over").empty());
    before(d, "2026-08", kLong, {"lift-c", "lift-d"});
    const auto found = d.findAll("carry-over");
    REQUIRE(found.size() == 1);
    CHECK(found[0].level == Level::Note);
    CHECK(found[0].text.english().find("lift-c, lift-d") != std::string::npos);
    CHECK(d.after(found[0].remedies.at(0)).findAll("carry-over").empty());
    d.limit("carry-over.lifts", 0);
    CHECK(d.findAll("carry-over").empty());
}

TEST_CASE("a lift that is there but not marked is offered to be marked") {
    Draft d = drafted(kStraight, {"lift-a", "lift-b"});
    before(d, "2026-08", kLong, {"lift-a"});
    d.slot(0, 0, 0).main = false;
    const Draft marked = d.after(remedy(d.findAll("carry-over").at(0), "Mark lift-a (A1)"));
    CHECK(marked.slot(0, 0, 0).main);
    CHECK(marked.findAll("carry-over").empty());
}

TEST_CASE("a last month without main lifts asks for none") {
    Draft d = drafted(kStraight, {"lift-a"});
    Block august = mains("2026-08", kLong, {"lift-b"});
    august.sections[0].groups[0].slots[0].main = false;
    d.gym.put(august);
    CHECK(d.findAll("carry-over").empty());
}

namespace {
Member flagged(const char* name, Demand demand, FlagLevel level) {
    return {MemberId::parse(name).value(), name, {{demand, level, {}, {}}}, true, {}};
}
Draft pressing() {
    Draft d = cleanDraft();
    Exercise press = careful("press-up-high", Pattern::VerticalPush, "strength-heavy");
    (void)press.demands.set(Demand::Overhead, 3);
    d.gym.shelf.put(press);
    d.slot(kStrength, 1, 0).exercise = ex("press-up-high");
    return d;
}
} // namespace

TEST_CASE("one note a slot names all members whose flags meet it, and what they do instead") {
    Draft d = pressing();
    for (const char* name : {"ann", "bo"})
        d.gym.put(flagged(name, Demand::Overhead, FlagLevel::Limit));
    d.gym.put(flagged("cy", Demand::Knee, FlagLevel::Avoid));
    const auto found = d.findAll("member-flag");
    REQUIRE(found.size() == 1);
    CHECK(found[0].level == Level::Note);
    CHECK(found[0].measured == 2);
    CHECK(found[0].text.english() ==
          "press-up-high (D1) asks for overhead; flags rule it out for ann, bo.");
    CHECK(found[0].remedies.at(0).label.english() == "For ann, bo: bench-press");
    CHECK(found[0].basis.english().find("a licensed professional decides") != std::string::npos);
    CHECK(d.after(remedy(found[0], "Use bench-press instead")).findAll("member-flag").empty());
    d.slot(kStrength, 1, 0).locked = true;
    for (const Finding f = d.findAll("member-flag").at(0); const Remedy& r : f.remedies)
        CHECK_FALSE(r.action);
    d.limit("member-flag.members", 2);
    CHECK(d.findAll("member-flag").empty());
}

TEST_CASE("a member for whom nothing fits is looked at") {
    Draft d = pressing();
    d.gym.put(flagged("ann", Demand::Overhead, FlagLevel::Avoid));
    d.gym.shelf.remove(ex("bench-press"));
    const auto found = d.findAll("member-flag");
    REQUIRE(found.size() == 1);
    CHECK(found[0].level == Level::Look);
    CHECK(found[0].remedies.at(0).label.english() ==
          "For ann: leave it out; nothing on the Shelf fits");
    Member gone = flagged("ann", Demand::Overhead, FlagLevel::Avoid);
    gone.active = false;
    d.gym.put(gone);
    CHECK(d.findAll("member-flag").empty());
}
