// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/set_shorthand.hpp"
#include "support/catch.hpp"

using namespace bw;

namespace {
LiftedSet lifted(std::optional<double> kg, int reps, std::optional<double> rir = {}) {
    LiftedSet set{reps, {}, {}};
    if (kg) set.load = Mass::fromKg(*kg).value();
    if (rir) set.rir = Rir::of(*rir).value();
    return set;
}
using Sets = std::vector<LiftedSet>;
Sets read(std::string_view text, MassUnit unit = MassUnit::Kg) {
    const auto sets = parseSets(text, unit);
    INFO(std::string(text));
    REQUIRE(sets.ok());
    return *sets;
}
} // namespace

TEST_CASE("a set is load times repetitions, then how many were left") {
    CHECK(read("40x5 2") == Sets{lifted(40, 5, 2)});
    CHECK(read("37,5 × 6") == Sets{lifted(37.5, 6)});
    CHECK(read(" 40 KG * 5  1.5 left ") == Sets{lifted(40, 5, 1.5)});
    CHECK(read("40x5 RPE 8") == Sets{lifted(40, 5, 2)});
    CHECK(read("8") == Sets{lifted({}, 8)});
    CHECK(read("8 0") == Sets{lifted({}, 8, 0)});
    CHECK(read("0x0") == Sets{lifted(0, 0)});
    CHECK(read("").empty());
    CHECK(read("  ").empty());
}

TEST_CASE("sets alike are counted, others stand one after the other") {
    CHECK(read("40x5x3 2") == Sets(3, lifted(40, 5, 2)));
    CHECK(read("bw x8x2 1") == Sets(2, lifted({}, 8, 1)));
    CHECK(read("40x5; 45x5 1;") == Sets{lifted(40, 5), lifted(45, 5, 1)});
    CHECK(read("40x5 2;=;=") == Sets(3, lifted(40, 5, 2)));
}

TEST_CASE("a load without a unit is in the gym's own") {
    CHECK(read("90x5", MassUnit::Lb).front().load == Mass::fromLb(90).value());
    CHECK(read("90 kg x 5", MassUnit::Lb).front().load == Mass::fromKg(90).value());
    CHECK(read("90lb x5").front().load == Mass::fromLb(90).value());
}

TEST_CASE("what is no set is refused whole, and the sentence shows how to write it") {
    for (const char* text : {"forty", "40x", "x5", "40x5 2 3", "40x5 x", "40x5x0", "=", "; 40x5",
                             "40x5;;40x5", "40x5.5", "-40x5", "40x5 -1", "bw 8", "1e3x5"}) {
        INFO(text);
        const auto sets = parseSets(text, MassUnit::Kg);
        REQUIRE_FALSE(sets.ok());
        CHECK(sets.why().english().find("write 40x5 2") != std::string::npos);
    }
    for (const char* text :
         {"40x1001", "2001x5", "40x5 11", "40x5x101", "40x5 RPE 11", "40x5x100;=", "5x1 RPE 12"}) {
        INFO(text);
        const auto sets = parseSets(text, MassUnit::Kg);
        REQUIRE_FALSE(sets.ok());
        CHECK(sets.why().english().find("out of range") != std::string::npos);
    }
}

TEST_CASE("what is written reads back as the same sets") {
    const Sets all[] = {{lifted(40, 5, 2)},
                        {lifted(37.5, 5, 2), lifted(37.5, 5, 2), lifted(40, 3)},
                        {lifted({}, 8, 0.5)},
                        {lifted({}, 8), lifted({}, 8), lifted({}, 6, 0)},
                        {lifted(0, 10)}};
    for (const Sets& sets : all) CHECK(read(setsText(sets, MassUnit::Kg)) == sets);
    CHECK(setsText(all[1], MassUnit::Kg) == "37.5×5×2 2; 40×3");
    CHECK(setsText(all[3], MassUnit::Kg) == "bw×8×2; 6 0");
    CHECK(setsText({}, MassUnit::Kg).empty());
}
