// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/floor/kit_moves.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
std::set<Mass> masses(std::initializer_list<int> kg) {
    std::set<Mass> out;
    for (const int m : kg) out.insert(Mass::fromKg(m).value());
    return out;
}
KitLine line(const char* id, int units, std::initializer_list<int> kg = {}) {
    return {kit(id), units, units, masses(kg), {}, {}};
}
} // namespace

TEST_CASE("kit between two sections comes out, stays or goes away") {
    const auto moves = kitMoves({line("mat", 12), line("bell", 6), line("bike", 3)},
                                {line("bell", 8), line("bar", 2), line("bike", 2)});
    REQUIRE(moves.size() == 4);
    CHECK(moves[0].kit == kit("bell"));
    CHECK(moves[0].before == 6);
    CHECK(moves[0].comesOut());
    CHECK(moves[0].cleared() == 0);
    CHECK(moves[1].kit == kit("bar"));
    CHECK(moves[1].before == 0);
    CHECK(moves[1].comesOut());
    CHECK_FALSE(moves[2].comesOut());
    CHECK(moves[2].cleared() == 1);
    CHECK(moves[3].kit == kit("mat"));
    CHECK(moves[3].now == 0);
    CHECK(moves[3].cleared() == 12);
}

TEST_CASE("as many bells of other loads come out too, where both loads are known") {
    const auto added = [](KitLine before, KitLine now) { return kitMoves({before}, {now})[0]; };
    const KitMove other = added(line("bell", 6, {12, 16}), line("bell", 6, {8, 16}));
    CHECK(other.added == masses({8}));
    CHECK(other.comesOut());
    CHECK_FALSE(added(line("bell", 6, {12, 16}), line("bell", 6, {16})).comesOut());
    CHECK_FALSE(added(line("bell", 6), line("bell", 6, {16})).comesOut());
    CHECK_FALSE(added(line("bell", 6, {16}), line("bell", 6)).comesOut());
}

TEST_CASE("what the gym has none of is neither brought nor cleared") {
    CHECK(kitMoves({line("sled", 0)}, {}).empty());
    CHECK_FALSE(kitMoves({}, {line("sled", 0)})[0].comesOut());
}

TEST_CASE("stations share kit when together they would take more than stands there") {
    KitSection section;
    section.kit = {line("rack", 6), line("bell", 9)};
    section.stations = {{{0, 0}, 4, {line("rack", 6), line("bell", 4)}},
                        {{0, 1}, 4, {line("bell", 5)}},
                        {{0, 2}, 4, {line("rack", 6)}}};
    CHECK(kitSharers(section, 0, kit("rack")) == std::vector<std::size_t>{2});
    CHECK(kitSharers(section, 2, kit("rack")) == std::vector<std::size_t>{0});
    CHECK(kitSharers(section, 0, kit("bell")).empty()); // 4 and 5 of 9
    CHECK(kitSharers(section, 0, kit("none")).empty());
}
