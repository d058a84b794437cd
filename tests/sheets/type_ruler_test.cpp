// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/type_ruler.hpp"
#include "support/catch.hpp"

using namespace bw;

namespace {
const Type kType{10.0};
}

TEST_CASE("the ruler measures in millimetres, whatever the device") {
    const TypeRuler ruler("DejaVu Sans");
    // figures of DejaVu Sans are 1303 of 2048 wide, all alike (its hmtx table)
    CHECK(ruler.width("0", kType) == Approx(10.0 * 1303 / 2048).epsilon(0.002));
    for (const char* figure : {"1", "5", "9"})
        CHECK(ruler.width(figure, kType) == Approx(ruler.width("0", kType)));
    CHECK(ruler.width("00", {3.0}) == Approx(0.6 * ruler.width("0", kType)));
    CHECK(ruler.cap(10.0) == Approx(10.0 * 1493 / 2048).epsilon(0.01)); // its OS/2 table
    CHECK(ruler.emOfCap(ruler.cap(7.0)) == Approx(7.0));
    CHECK(ruler.width("Squat", {10.0, Weight::Bold}) > ruler.width("Squat", kType));
}

TEST_CASE("text is broken at spaces into even lines") {
    const TypeRuler ruler("DejaVu Sans");
    const double room = ruler.width("Half-kneeling anti-rotation", kType) + 0.1;
    const QString name = "Half-kneeling anti-rotation press";
    CHECK(ruler.wrap(name, kType, room) == QStringList{"Half-kneeling", "anti-rotation press"});
    CHECK(ruler.wrap(name, kType, room, TypeRuler::Lines::Full) ==
          QStringList{"Half-kneeling anti-rotation", "press"});
    CHECK(ruler.wrap(name, kType, 1000) == QStringList{name});
    CHECK(ruler.wrap("  two   words ", kType, 1000) == QStringList{"two words"});
    CHECK(ruler.wrap("", kType, 100).isEmpty());
}

TEST_CASE("a word longer than the line is broken after a hyphen, or anywhere, and kept whole") {
    const TypeRuler ruler("DejaVu Sans");
    const double room = ruler.width("kneeling-", kType) + 0.1;
    CHECK(ruler.wrap("half-kneeling-press", kType, room) ==
          QStringList{"half-", "kneeling-", "press"});
    const QStringList lines = ruler.wrap("Donaudampfschifffahrtsgesellschaft", kType, room);
    CHECK(lines.size() > 2);
    CHECK(lines.join("") == "Donaudampfschifffahrtsgesellschaft");
    for (const QString& line : lines) CHECK(ruler.width(line, kType) <= room);
}

TEST_CASE("a room of no width gives a letter a line and comes to an end") {
    const TypeRuler ruler("DejaVu Sans");
    CHECK(ruler.wrap("abc", kType, 0).size() == 3);
    CHECK(ruler.wrap("ab cd", kType, -5).size() == 4);
}

TEST_CASE("a font that is not installed gives the system's sans") {
    const TypeRuler ruler("No Such Face");
    CHECK(ruler.width("Squat", kType) > 10);
    CHECK(ruler.cap(10.0) > 5);
}
