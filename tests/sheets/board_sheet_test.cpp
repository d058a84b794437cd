// SPDX-License-Identifier: GPL-3.0-or-later
// The board on every screen: nothing is cut or runs into other text, and what is read at five
// metres is large enough.
#include "sheets/board/board_ink.hpp"
#include "sheets/board_sheet.hpp"
#include "sheets/demo_month.hpp"
#include "sheets/ink.hpp"
#include "sheets/legibility.hpp"
#include "sheets/low_tide.hpp"
#include "sheets/sheet_painter.hpp"
#include "sheets/sheet_support.hpp"
#include "support/catch.hpp"

#include <algorithm>
#include <cmath>

using namespace bw;
using namespace bw::test;

namespace {
const Week kSecond = Week::of(2).value();
constexpr QSizeF kScreens[] = {{1280, 720},  {1920, 1080}, {3840, 2160},
                               {1280, 1024}, {1080, 1920}, {3440, 1440}};

Board boardOf(const DemoMonth& month, QSizeF screen) {
    Board board = layoutBoard(month.gym, *month.block, kSecond, screen);
    addLoads(board, month.matter(), kSecond, month.gym.settings.massUnit);
    return board;
}

template <class Visit> void eachPage(const Board& board, const BoardTime& time, Visit visit) {
    for (std::size_t s = 0; s < board.sections.size(); ++s)
        for (const bool loads : {false, true}) {
            const auto& pages = loads ? board.sections[s].loads : board.sections[s].rows;
            REQUIRE_FALSE(pages.empty());
            for (std::size_t p = 0; p < pages.size(); ++p) {
                CAPTURE(s, p, loads);
                visit(BoardMoment{s, p, loads, time});
            }
        }
}

const BoardTime kTimes[] = {{}, {Millis{754'000}, false}, {Millis{5'400'000}, true}};

void checkScreens(const DemoMonth& month) {
    for (const QSizeF screen : kScreens) {
        const Board board = boardOf(month, screen);
        for (const BoardTime& time : kTimes)
            eachPage(board, time, [&](const BoardMoment& moment) {
                CAPTURE(screen.width());
                CHECK(overflowText(boardPage(board, moment)) == "");
            });
    }
}

double leastCap(const Layout& page, bool afar) {
    const TypeRuler ruler(page.family);
    double least = 1e9;
    for (const TextItem& t : textsOf(page))
        if (!afar || t.rank != Rank::Second) least = std::min(least, ruler.cap(t.type.em));
    return least;
}

QString squeezed(QString text) { return text.remove(QLatin1Char(' ')); }

// All exercises of a section over its pages.
QString rowsText(const Board& board, std::size_t section) {
    QString text;
    for (std::size_t p = 0; p < board.sections[section].rows.size(); ++p)
        text += allText(boardPage(board, {section, p, false, {}}));
    return squeezed(text);
}
} // namespace

TEST_CASE("the demo's board overflows on no screen, before, during and after its time") {
    checkScreens(demoMonth());
}

TEST_CASE("random months with names of up to sixty characters overflow on no screen") {
    for (std::uint32_t seed = 1; seed <= 6; ++seed) {
        CAPTURE(seed);
        checkScreens(randomGym(seed, 60, 9));
    }
}

TEST_CASE("names of two hundred characters stand whole on the board") {
    for (std::uint32_t seed = 100; seed < 103; ++seed) {
        CAPTURE(seed);
        const DemoMonth month = randomGym(seed, 200, 2);
        checkScreens(month);
        const Board board = boardOf(month, {1920, 1080});
        for (std::size_t s = 0; s < board.sections.size(); ++s)
            for (const BoardGroup& group : board.sections[s].part.groups)
                for (const BoardRow& row : group.rows)
                    CHECK(rowsText(board, s).contains(squeezed(row.name)));
    }
}

TEST_CASE("letters that are read at five metres stand 25 mm high on a display of 40 inches") {
    // 40 in across at 16:9: 40 * 25.4 * 16 / sqrt(16^2 + 9^2) = 885.5 mm wide
    const double mmPerPixel = 40 * 25.4 * 16 / std::sqrt(16.0 * 16 + 9.0 * 9) / 1920;
    const Board board = boardOf(demoMonth(), {1920, 1080});
    const double pixels = 1920 / board.paper.width();
    const double slack = 0.02; // of a millimetre
    eachPage(board, {Millis{754'000}, false}, [&](const BoardMoment& moment) {
        const Layout page = boardPage(board, moment);
        CHECK(leastCap(page, true) * pixels * mmPerPixel >= 25 - slack);
        CHECK(leastCap(page, false) * pixels * mmPerPixel >= 15 - slack);
        CHECK(leastCap(page, false) >= 2 * thresholdHeight(5));
    });
}

TEST_CASE("names of forty characters wrap on the board and are not set smaller") {
    for (std::uint32_t seed = 1; seed <= 6; ++seed) {
        const DemoMonth month = randomGym(seed, 40, 2);
        const Board board = boardOf(month, {1280, 720});
        for (std::size_t s = 0; s < board.sections.size(); ++s)
            for (std::size_t p = 0; p < board.sections[s].rows.size(); ++p)
                CHECK(leastCap(boardPage(board, {s, p, false, {}}), true) >= kBoardCap - 0.02);
    }
}

TEST_CASE("every exercise of a section is on its board, and the next section below") {
    const Board board = boardOf(demoMonth(), {1920, 1080});
    REQUIRE(board.sections.size() >= 3);
    for (std::size_t s = 0; s < board.sections.size(); ++s) {
        for (const BoardGroup& group : board.sections[s].part.groups)
            for (const BoardRow& row : group.rows)
                CHECK(rowsText(board, s).contains(squeezed(row.label)));
        if (s + 1 < board.sections.size())
            CHECK(board.sections[s].next.contains(board.sections[s + 1].part.name));
    }
    CHECK(board.sections.back().next == "The last section");
}

TEST_CASE("the board says how the time stands in words") {
    const Millis plan{600'000};
    CHECK(clockWords(plan, {}).state == "Space starts");
    CHECK(clockWords(plan, {Millis{61'999}, false}).figures == "1:01");
    CHECK(clockWords(plan, {Millis{61'999}, false}).state == "8:59 left");
    CHECK(clockWords(plan, {Millis{600'999}, false}).state == "0:00 left");
    CHECK_FALSE(clockWords(plan, {Millis{600'999}, false}).over);
    CHECK(clockWords(plan, {Millis{680'000}, false}).state == "1:20 over");
    CHECK(clockWords(plan, {Millis{680'000}, false}).over);
    CHECK(clockWords(plan, {Millis{61'000}, true}).state == "paused");
    CHECK(clockWords(plan, {}).plan == "planned 10:00");
    CHECK(clockWords(Millis{0}, {Millis{61'000}, false}).state.isEmpty());
}

TEST_CASE("running over shows by shapes that do not stand there before") {
    const Board board = boardOf(demoMonth(), {1920, 1080});
    const Millis plan = board.sections[0].part.planned;
    const auto shapes = [&](Millis elapsed) {
        int fills = 0, strokes = 0;
        const Layout page = boardPage(board, {0, 0, false, {elapsed, false}});
        for (const Item& item : page.pages[0].items) {
            fills += std::holds_alternative<FillItem>(item);
            strokes += std::holds_alternative<StrokeItem>(item);
        }
        return std::pair(fills, strokes);
    };
    const auto [fillsIn, strokesIn] = shapes(plan);
    const auto [fillsOver, strokesOver] = shapes(plan + plan / 4);
    CHECK(fillsOver == fillsIn + 1);     // the triangle
    CHECK(strokesOver >= strokesIn + 5); // the hatching
}

TEST_CASE("the board's text keeps a contrast of 4.5 to 1 on a light and a dark ground") {
    for (const bool dark : {false, true})
        for (const Ink ink : {Ink::Text, Ink::Quiet, Ink::Accent})
            CHECK(contrast(boardColour(ink, dark), boardGround(dark)) >= 4.5);
}

TEST_CASE("loads on the board tell of no flag, and only of active members") {
    DemoMonth month = randomGym(7, 12, 3);
    REQUIRE(
        std::ranges::any_of(month.gym.members, [](const Member& m) { return !m.flags.empty(); }));
    month.gym.members[0].active = false;
    const auto parts = boardParts(month.gym, *month.block, kSecond);
    for (const BoardLoads& loads : boardLoads(month.matter(), kSecond, MassUnit::Kg, parts)) {
        CHECK(loads.lines.size() == 2);
        for (const BoardLoads::Line& line : loads.lines) {
            CHECK(line.cells.size() == loads.labels.size());
            CHECK(line.cells.filter(QStringLiteral("instead")).isEmpty());
        }
    }
}
