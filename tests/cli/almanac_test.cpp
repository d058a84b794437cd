// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/almanac/almanac.hpp"
#include "run_program.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <nlohmann/json.hpp>

namespace bw::test {

using nlohmann::json;

namespace {
Block monthOf(const char* text, const char* title, std::optional<Format> format,
              std::initializer_list<std::pair<const char*, bool>> uses) {
    std::vector<Slot> slots;
    for (const auto& [id, main] : uses) {
        slots.push_back(slot(id, reps(5, 5)));
        slots.back().main = main;
    }
    Block b = block(text, {section(SectionKind::Strength,
                                   {group(rounds(2, 2), secondsRange(60, 60), std::move(slots))})});
    b.title = title;
    b.format = format;
    return b;
}

std::string threeMonthsBundle() {
    Gym gym;
    gym.settings.name = "Tide Mill";
    gym.shelf.put(exercise("floor-press", Pattern::HorizontalPush));
    gym.shelf.put(exercise("towel-row", Pattern::HorizontalPull));
    gym.shelf.put(exercise("box-squat", Pattern::Squat));
    gym.put(
        monthOf("2026-11", "Ebb", Format::Opposed, {{"floor-press", true}, {"towel-row", false}}));
    gym.put(monthOf("2026-12", "Flood", Format::Opposed,
                    {{"floor-press", true}, {"box-squat", false}}));
    gym.put(monthOf("2027-02", "", {}, {{"floor-press", false}, {"towel-row", true}}));
    return writeBundle(bundleOf(gym));
}

json ratio(const Ratio& r) { return r.value() ? json(*r.value()) : json(nullptr); }
} // namespace

TEST_CASE("almanac says for the demo what the engine computes") {
    const TempFolder folder;
    Gym gym;
    layOver(gym, demoBundle());
    const Almanac engine = almanac(gym, {6, month("2026-10")});
    const auto ran = bwright(folder.path(), {"almanac", "--bundle", demoFile(), "--months", "6",
                                             "--month", "2026-10", "--json"});
    REQUIRE(ran.code == 0);
    const json said = json::parse(ran.out);
    CHECK(said.at("from") == "2026-05");
    CHECK(said.at("until") == "2026-10");
    REQUIRE(said.at("months").size() == 6);
    for (std::size_t m = 0; m < 6; ++m) {
        const json& at = said["months"][m];
        CHECK(at.at("month") == engine.months[m].month.text());
        CHECK(at.at("new").size() == engine.months[m].fresh.size());
        CHECK(at.at("format") == wordOf(*engine.months[m].block->format));
        CHECK(at.at("balance").at("push_pull") == ratio(engine.months[m].balance.pushPull()));
        CHECK(at.at("balance").at("knee_hip") == ratio(engine.months[m].balance.kneeHip()));
    }
    CHECK(said.at("window").at("push_pull") == ratio(engine.window.pushPull()));
    std::size_t inView = 0;
    for (const AlmanacRow& row : engine.rows) {
        if (!row.usedInView()) continue;
        const json& at = said.at("exercises").at(inView++);
        INFO(row.exercise.text());
        CHECK(at.at("exercise") == row.exercise.text());
        CHECK(at.at("last_used") == row.last.text());
        CHECK(at.at("first_used") == row.first.text());
        std::size_t used = 0;
        for (std::size_t m = 0; m < row.cells.size(); ++m) {
            if (!row.cells[m].used()) continue;
            const json& cell = at.at("months").at(used++);
            CHECK(cell.at("month") == engine.months[m].month.text());
            CHECK(cell.at("streak") == row.cells[m].streak);
            CHECK(cell.at("main") == row.cells[m].main);
            CHECK(cell.at("main_streak") == row.cells[m].mainStreak);
        }
        CHECK(at.at("months").size() == used);
    }
    CHECK(said.at("exercises").size() == inView);
}

TEST_CASE("almanac without --json is three tables for people") {
    const TempFolder folder;
    writeText(folder / "gym.json", threeMonthsBundle());
    const auto ran =
        bwright(folder.path(), {"almanac", "--bundle", (folder / "gym.json").string()});
    CHECK(ran.code == 0);
    CHECK(ran.err.empty());
    CHECK(ran.out == "Tide Mill · 2026-11 to 2027-02\n\n"
                     "month    title     format   new  push:pull  knee:hip\n"
                     "2026-11  Ebb       opposed            1.00         –\n"
                     "2026-12  Flood     opposed    1          –         –\n"
                     "2027-01  no block\n"
                     "2027-02                               1.00         –\n"
                     "window                                2.00         –\n"
                     "\n"
                     "format           months  last used\n"
                     "heavy-then-long       0  never\n"
                     "opposed               2  2026-12\n"
                     "heavy-then-fast       0  never\n"
                     "straight-heavy        0  never\n"
                     "round-trip            0  never\n"
                     "\n"
                     "                 26        27\n"
                     "                 11   12   01   02   last used\n"
                     "squat\n"
                     "  box-squat            1             2026-12\n"
                     "horizontal-push\n"
                     "  floor-press     1*   2*        1   2027-02\n"
                     "horizontal-pull\n"
                     "  towel-row       1              1*  2027-02\n"
                     "\n"
                     "A number: months in a row; *: a main lift.\n");
}

TEST_CASE("almanac shows all months at 0, one at 1, and refuses what is no number of months") {
    const TempFolder folder;
    writeText(folder / "gym.json", threeMonthsBundle());
    const auto run = [&](const char* months) {
        return bwright(folder.path(), {"almanac", "--bundle", (folder / "gym.json").string(),
                                       "--months", months, "--json"});
    };
    CHECK(json::parse(run("0").out).at("months").size() == 4);
    const json one = json::parse(run("1").out);
    REQUIRE(one.at("months").size() == 1);
    CHECK(one["exercises"].size() == 2); // the squat was used before
    CHECK(one["formats"][1].at("last_used") == "2026-12");
    CHECK(run("-1").code == 2);
    CHECK(run("many").code == 2);
}

} // namespace bw::test
