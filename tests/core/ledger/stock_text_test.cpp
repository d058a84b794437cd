// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/stock_text.hpp"
#include "support/catch.hpp"

using namespace bw;

namespace {
Mass kg(double n) { return Mass::fromKg(n).value(); }
LoadStock read(std::string_view text) { return parseStock(text, MassUnit::Kg).value(); }
} // namespace

TEST_CASE("Loads in stock are read as a coach lists them, and written in one form") {
    const LoadStock bells{{kg(8), 2}, {kg(12), 4}, {kg(16), 1}};
    for (const char* text : {"8x2, 12x4, 16", "8×2, 12×4, 16", "16; 8 * 2;12X4", " 8 x 2,12x4, 16 ",
                             "8kg x2, 12 kg x 4, 16 kg", "8, 8, 12x3, 12, 16,"}) {
        INFO(text);
        CHECK(read(text) == bells);
    }
    CHECK(stockText(bells, MassUnit::Kg) == "8×2, 12×4, 16");
    CHECK(read(stockText(bells, MassUnit::Kg)) == bells);
    CHECK(piecesOf(bells) == 7);
    CHECK(read("  ").empty());
    CHECK(stockText({}, MassUnit::Kg).empty());
    CHECK(read("1.25x8, 2.5x4") == LoadStock{{kg(1.25), 8}, {kg(2.5), 4}});
    CHECK(stockText(read("2.5x4, 1.25x8"), MassUnit::Kg) == "1.25×8, 2.5×4");
}

TEST_CASE("A load without a unit is in the gym's, and one with a unit in that") {
    const auto pounds = parseStock("35x2, 16 kg", MassUnit::Lb);
    REQUIRE(pounds);
    CHECK(*pounds == LoadStock{{Mass::fromLb(35).value(), 2}, {kg(16), 1}});
    CHECK(stockText(*pounds, MassUnit::Lb) == "35×2, 35.27");
}

TEST_CASE("What could be one load or two is not guessed at, and nonsense is told from range") {
    const auto why = [](std::string_view text) {
        const auto stock = parseStock(text, MassUnit::Kg);
        return stock ? std::string() : stock.why().english();
    };
    CHECK(why("2,5x4").find("“2,5” could be one load or two") == 0);
    CHECK(why("16,24").find("could be") != std::string::npos);
    CHECK(why("8x2,12x4").empty());
    for (const char* text : {"heavy", "8x", "x4", "8xx2", "8x2.5", "8 stone", "-8", "8x2 12x4",
                             "nan", "1e999", "8x-2"}) {
        INFO(text);
        CHECK(why(text).find("is not understood") != std::string::npos);
    }
    for (const char* text : {"0", "2001", "8x0", "8x1001"}) {
        INFO(text);
        CHECK(why(text).find("out of range") != std::string::npos);
    }
    CHECK(why("8x600, 12x600") == "These are more than 1000 in all.");
}
