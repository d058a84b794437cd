// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/pattern_kin.hpp"
#include "core/rules/draft.hpp"
#include "support/catch.hpp"

using namespace bw;
using namespace bw::test;

namespace {
Exercise of(std::string_view id, Pattern pattern, const char* role = "strength-long") {
    return careful(id, pattern, role);
}
// One strength section with one group of these, in a format.
Draft grouped(Format format, const std::vector<Exercise>& exercises) {
    Draft d = cleanDraft();
    d.gym.settings.limits.clear();
    d.block.format = format;
    Group g = group(rounds(2, 3), secondsRange(60, 120), {});
    for (const Exercise& e : exercises) {
        d.gym.shelf.put(e);
        g.slots.push_back(slot(e.id.text(), reps(8, 8)));
    }
    d.block.sections = {section(SectionKind::Strength, {g})};
    return d;
}
bool pairs(Format format, const Exercise& a, const Exercise& b) {
    return grouped(format, {a, b}).findAll("pairing").empty();
}
using enum Pattern;
} // namespace

TEST_CASE("neighbours and opposites hold both ways round") {
    for (std::size_t i = 0; i < kCount<Pattern>; ++i)
        for (std::size_t j = 0; j < kCount<Pattern>; ++j) {
            const auto a = static_cast<Pattern>(i), b = static_cast<Pattern>(j);
            CHECK(book::neighbours(a, b) == book::neighbours(b, a));
            CHECK(book::opposites(a, b) == book::opposites(b, a));
            CHECK_FALSE((book::neighbours(a, b) && book::opposites(a, b) && a == b));
        }
    CHECK(book::neighbours(Squat, Lunge));
    CHECK(book::neighbours(HorizontalPush, VerticalPush));
    CHECK_FALSE(book::neighbours(Squat, Hinge));
    CHECK(book::opposites(HorizontalPush, VerticalPull));
    CHECK(book::opposites(Squat, Hinge));
    CHECK_FALSE(book::opposites(HorizontalPush, VerticalPush));
}

TEST_CASE("a pair is what the format says") {
    CHECK(pairs(Format::HeavyThenLong, of("a", Squat), of("b", Squat)));
    CHECK(pairs(Format::HeavyThenLong, of("a", Squat), of("b", Lunge)));
    CHECK_FALSE(pairs(Format::HeavyThenLong, of("a", Squat), of("b", Hinge)));
    CHECK(pairs(Format::Opposed, of("a", HorizontalPush), of("b", VerticalPull)));
    CHECK_FALSE(pairs(Format::Opposed, of("a", HorizontalPush), of("b", VerticalPush)));
    CHECK(pairs(Format::HeavyThenFast, of("a", Squat), of("b", Squat, "power")));
    CHECK_FALSE(pairs(Format::HeavyThenFast, of("a", Squat), of("b", HorizontalPush, "power")));
}

TEST_CASE("the second of heavy-then-fast is explosive") {
    Draft d = grouped(Format::HeavyThenFast, {of("a", Squat), of("b", Squat)});
    const auto found = d.findAll("pairing");
    REQUIRE(found.size() == 1);
    CHECK(found[0].limitName == "explosive");
    CHECK(d.after(remedy(found[0], "Use box-jump instead of b (A2)")).findAll("pairing").empty());
}

TEST_CASE("half of either exercise is enough to be related, a little less is not") {
    const auto mixed = [](double hinge) {
        Exercise e = of("b", Hinge);
        e.patterns = Shares<Pattern>::of(
                         {{Hinge, Share::of(hinge).value()}, {Carry, Share::of(1 - hinge).value()}})
                         .value();
        return e;
    };
    CHECK(pairs(Format::Opposed, of("a", Squat), mixed(0.5)));
    Draft d = grouped(Format::Opposed, {of("a", Squat), mixed(0.2)});
    REQUIRE(d.findAll("pairing").size() == 1);
    CHECK(d.findAll("pairing")[0].measured == Approx(0.2));
    d.limit("pairing.related_share", 0.2);
    CHECK(d.findAll("pairing").empty());
}

TEST_CASE("when all pairs are of another format, the month may be called that") {
    const Draft d =
        grouped(Format::HeavyThenLong, {of("a", HorizontalPush), of("b", VerticalPull)});
    const Draft called = d.after(remedy(d.findAll("pairing").at(0), "Call the month opposed"));
    CHECK(called.block.format == Format::Opposed);
    CHECK(called.findAll("pairing").empty());
}

TEST_CASE("main lifts and locked slots keep their exercise") {
    Draft d = grouped(Format::HeavyThenLong, {of("a", Squat), of("b", HorizontalPush)});
    CHECK_NOTHROW(remedy(d.findAll("pairing").at(0), "Use step-up instead of b (A2)"));
    d.slot(0, 0, 1).locked = true;
    for (const Finding f = d.findAll("pairing").at(0); const Remedy& r : f.remedies)
        CHECK(r.label.english().find("instead of b ") == std::string::npos);
    d.slot(0, 0, 0).main = true;
    for (const Finding f = d.findAll("pairing").at(0); const Remedy& r : f.remedies)
        CHECK_FALSE(r.action);
}

TEST_CASE("straight-heavy stands alone, a round-trip has three or four, pairs two") {
    const std::vector<Exercise> four{of("a", Squat), of("b", Squat), of("c", Squat),
                                     of("d", Squat)};
    const auto sized = [&](Format f, std::size_t n) {
        return grouped(f, {four.begin(), four.begin() + static_cast<std::ptrdiff_t>(n)});
    };
    CHECK(sized(Format::StraightHeavy, 1).findAll("pairing").empty());
    CHECK(sized(Format::RoundTrip, 3).findAll("pairing").empty());
    CHECK(sized(Format::RoundTrip, 4).findAll("pairing").empty());
    Draft two = sized(Format::StraightHeavy, 4);
    CHECK(two.findAll("pairing").at(0).level == Level::Look);
    Draft alone = two.after(remedy(two.findAll("pairing")[0], "Split group A into groups of 1"));
    CHECK(alone.block.sections[0].groups.size() == 4);
    CHECK(alone.findAll("pairing").empty());
    for (std::size_t g = 0; g < 4; ++g) {
        CHECK(alone.group(0, static_cast<int>(g)).slots[0].exercise == four[g].id);
        CHECK(alone.group(0, static_cast<int>(g)).rest == two.group(0).rest);
    }
    const Draft trip = sized(Format::RoundTrip, 2);
    CHECK(trip.after(remedy(trip.findAll("pairing").at(0), "Add an open slot to group A"))
              .findAll("pairing")
              .empty());
    const Draft lone = sized(Format::HeavyThenLong, 1);
    CHECK(lone.findAll("pairing").at(0).level == Level::Note);
    const Draft pairs4 = sized(Format::HeavyThenLong, 4);
    CHECK(pairs4.after(remedy(pairs4.findAll("pairing").at(0), "Split group A into groups of 2"))
              .findAll("pairing")
              .empty());
    CHECK_FALSE(sized(Format::HeavyThenLong, 3).findAll("pairing").at(0).remedies.at(0).action);
}

TEST_CASE("heads told by count are spread when their group is split") {
    Draft d = grouped(Format::StraightHeavy, {of("a", Squat), of("b", Squat)});
    d.section(0).start = StartCounts{{12}};
    const Draft split = d.after(remedy(d.findAll("pairing").at(0), "Split"));
    CHECK(split.block.sections[0].start == Start{StartSpread{}});
}

TEST_CASE("without a format, and with an open slot, nothing is said of pairs") {
    Draft d = grouped(Format::HeavyThenLong, {of("a", Squat), of("b", HorizontalPush)});
    d.slot(0, 0, 1) = Slot{};
    CHECK(d.findAll("pairing").empty());
    d = grouped(Format::HeavyThenLong, {of("a", Squat)});
    d.block.format.reset();
    CHECK(d.findAll("pairing").empty());
}

namespace {
Exercise asking(std::string_view id, int grip, int lumbar = 0) {
    Exercise e = of(id, HorizontalPull);
    (void)e.demands.set(Demand::Grip, grip);
    (void)e.demands.set(Demand::Lumbar, lumbar);
    return e;
}
} // namespace

TEST_CASE("two in a row that both ask for grip are looked at, once a pair") {
    Draft d = grouped(Format::HeavyThenLong, {asking("a", 2), asking("b", 3)});
    const auto found = d.findAll("overlap");
    REQUIRE(found.size() == 1);
    CHECK(found[0].level == Level::Look);
    CHECK(found[0].place == Place{0, 0, 1});
    CHECK(found[0].also == std::vector<Place>{{0, 0, 0}});
    CHECK(found[0].measured == 2);
    CHECK(d.after(remedy(found[0], "Use ring-row instead of b (A2)")).findAll("overlap").empty());
    d.limit("overlap.demand", 3);
    CHECK(d.findAll("overlap").empty());
    CHECK(grouped(Format::HeavyThenLong, {asking("a", 1), asking("b", 3)})
              .findAll("overlap")
              .empty());
    CHECK(grouped(Format::HeavyThenLong, {asking("a", 2), asking("b", 0, 3)})
              .findAll("overlap")
              .empty());
}

TEST_CASE("from the last to the first of a round, and from group to group, it is only noted") {
    Draft d = grouped(Format::RoundTrip, {asking("a", 2), of("b", Squat), asking("c", 2)});
    REQUIRE(d.findAll("overlap").size() == 1);
    CHECK(d.findAll("overlap")[0].level == Level::Note);
    CHECK(
        d.findAll("overlap")[0].text.english().starts_with("After c (A3) the round begins again"));
    d.group(0).rounds = rounds(1, 1); // no second round
    CHECK(d.findAll("overlap").empty());
    // A second group: from c to d; and, when members start spread, from e back to a.
    for (const char* id : {"d", "e"}) d.gym.shelf.put(asking(id, 2));
    d.gym.shelf.put(of("f", Squat));
    d.section(0).groups.push_back(
        group(rounds(1, 1), secondsRange(0, 0),
              {slot("d", reps(8, 8)), slot("f", reps(8, 8)), slot("e", reps(8, 8))}));
    CHECK(d.findAll("overlap").size() == 1);
    CHECK(d.findAll("overlap")[0].place == Place{0, 1, 0});
    d.section(0).start = StartSpread{};
    CHECK(d.findAll("overlap").size() == 2);
}
