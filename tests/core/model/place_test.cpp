// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/place.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <set>

using namespace bw;
using namespace bw::test;

namespace {
// Strength twice, with a power section between: groups of 2 + 1 and 1.
Block mixed() {
    const auto pair = [] {
        return group(rounds(1, 1), secondsRange(0, 0),
                     {slot("a", reps(1, 1)), slot("b", reps(1, 1))});
    };
    return block("2026-09",
                 {section(SectionKind::Strength, {pair(), pair()}),
                  section(SectionKind::Power, {pair()}), section(SectionKind::Strength, {pair()})});
}
} // namespace

TEST_CASE("a place is written kind/group/slot, counted from one") {
    const Block b = mixed();
    CHECK(placeText(b, {}) == "session");
    CHECK(placeText(b, {1}) == "power");
    CHECK(placeText(b, {0, 1}) == "strength/2");
    CHECK(placeText(b, {0, 1, 0}) == "strength/2/1");
}

TEST_CASE("groups of a second section of a kind are counted on") {
    const Block b = mixed();
    CHECK(placeText(b, {2, 0, 1}) == "strength/3/2");
    CHECK(placeFrom(b, "strength/3/2") == Place{2, 0, 1});
}

TEST_CASE("every place but the later sections of a kind reads back as itself") {
    const Block b = mixed();
    std::set<std::string> texts;
    for (int s = 0; s < 3; ++s)
        for (int g = 0; g < static_cast<int>(b.sections[static_cast<std::size_t>(s)].groups.size());
             ++g)
            for (int n = -1; n < 2; ++n) {
                const Place place{s, g, n};
                INFO(placeText(b, place));
                CHECK(texts.insert(placeText(b, place)).second);
                CHECK(placeFrom(b, placeText(b, place)) == place);
            }
    CHECK(placeFrom(b, "session") == Place{});
    CHECK(placeFrom(b, "strength") == Place{0});
    CHECK(placeFrom(b, "power") == Place{1});
}

TEST_CASE("a text that names no place of the block gives none") {
    const Block b = mixed();
    for (const char* bad :
         {"", "finisher", "strength/4", "strength/0", "strength/1/3", "strength/1/0",
          "strength/1/1/1", "strength/", "strength/x", "strength/1/", "Strength/1", "strength/-1",
          "power/2", "session/1", "strength/1 "}) {
        INFO(bad);
        CHECK_FALSE(placeFrom(b, bad));
    }
}

TEST_CASE("groups carry letters through the whole session, from Z on two") {
    const Block b = mixed();
    CHECK(groupLetter(b, {0, 0}) == "A");
    CHECK(groupLetter(b, {1, 0}) == "C");
    CHECK(groupLetter(b, {2, 0, 1}) == "D");
    Block many = block("2026-09", {section(SectionKind::Strength, std::vector<Group>(30))});
    CHECK(groupLetter(many, {0, 25}) == "Z");
    CHECK(groupLetter(many, {0, 26}) == "AA");
    CHECK(groupLetter(many, {0, 29}) == "AD");
}

TEST_CASE("what stands at a place is found, and nothing where nothing stands") {
    Block b = mixed();
    CHECK(sectionAt(b, {1}) == &b.sections[1]);
    CHECK(groupAt(b, {0, 1}) == &b.sections[0].groups[1]);
    CHECK(slotAt(b, {0, 1, 1}) == &b.sections[0].groups[1].slots[1]);
    CHECK(sectionAt(b, {}) == nullptr);
    CHECK(sectionAt(b, {3}) == nullptr);
    CHECK(groupAt(b, {0}) == nullptr);
    CHECK(groupAt(b, {0, 2}) == nullptr);
    CHECK(slotAt(b, {0, 1}) == nullptr);
    CHECK(slotAt(b, {0, 1, 2}) == nullptr);
    CHECK(slotAt(b, {9, 1, 1}) == nullptr);
}

TEST_CASE("the usual stair starts with low rounds and ends with the highest effort") {
    const auto stair = defaultStair();
    REQUIRE(stair.size() == 4);
    CHECK(stair[0].rounds == RoundsMode::Low);
    for (std::size_t i = 1; i < 4; ++i) {
        CHECK(stair[i].rounds == RoundsMode::Open);
        CHECK(stair[i].rir < stair[i - 1].rir);
    }
    CHECK(stair[0].intent == Intent::Learn);
    CHECK(stair[3].intent == Intent::Challenge);
}
