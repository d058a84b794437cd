// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_program.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace bw::test {

using nlohmann::json;

namespace {
struct Demo { // the demo in a gym file
    TempFolder folder;
    std::string gym = (folder / "gym.bwgym").string(), csv = (folder / "a.csv").string();
    Demo() { REQUIRE(run({"import", "--gym", gym, "--bundle", demoFile()}).code == 0); }
    [[nodiscard]] Ran run(std::vector<std::string> arguments) const {
        return bwright(folder.path(), std::move(arguments));
    }
    [[nodiscard]] Ran bring(const std::string& table, std::vector<std::string> more = {}) const {
        writeText(csv, table);
        std::vector<std::string> arguments{"import", "--gym", gym, "--csv", csv};
        arguments.insert(arguments.end(), more.begin(), more.end());
        return run(arguments);
    }
    [[nodiscard]] std::string table() const { return run({"export", "--gym", gym, "--csv"}).out; }
};

constexpr const char* kHead = "member,date,exercise,set,reps,rir,load_kg\r\n";
} // namespace

TEST_CASE("the table of results comes out, and goes in again without changing anything") {
    const Demo d;
    const std::string table = d.table();
    CHECK(table.find("member,name,date,exercise,exercise_name,set,reps,rir,load_kg\r\n"
                     "m-001,Marit Oyelaran,2025-10-01,dumbbell-floor-press,") == 0);
    CHECK(static_cast<std::size_t>(std::count(table.begin(), table.end(), '\n')) ==
          1 + demoBundle().results.size());
    const auto again = d.bring(table);
    CHECK(again.code == 0);
    CHECK(again.out == d.gym + ": 0 new results brought in, 0 changed, 13188 there already.\n");
    CHECK(d.table() == table);
    CHECK(d.run({"export", "--bundle", demoFile(), "--csv", "--month", "2026-11"}).out.size() <
          table.size());
}

TEST_CASE("a dry run says what a table would change, and changes nothing") {
    const Demo d;
    const std::string before = d.table();
    const std::string rows = std::string(kHead) + "m-001,2026-11-24,front-rack-squat,1,5,2,42\r\n"
                                                  "m-001,2025-10-01,front-rack-squat,1,5,2,36\r\n"
                                                  "m-001,2025-10-01,front-rack-squat,2,5,2,38\r\n";
    const auto dry = d.bring(rows, {"--dry-run", "--json"});
    CHECK(dry.code == 0);
    const json said = json::parse(dry.out);
    CHECK(said.at("rows") == 3);
    CHECK(said.at("new") == 1);
    CHECK(said.at("changed") == 1);
    CHECK(said.at("there_already") == 1);
    CHECK(said.at("stored") == false);
    CHECK(d.table() == before);
    CHECK(d.bring(rows).code == 0);
    CHECK(d.table() != before);
    CHECK(d.bring(rows).out == d.gym + ": 0 new results brought in, 0 changed, 3 there already.\n");
}

TEST_CASE("a table with one faulty row is refused whole, each fault by its line") {
    const Demo d;
    const std::string before = d.table();
    const auto bad = d.bring(std::string(kHead) + "m-001,2026-11-24,front-rack-squat,1,5,2,42\r\n"
                                                  "m-099,2026-11-24,front-rack-squat,1,5,2,42\r\n");
    CHECK(bad.code == 2);
    CHECK(bad.out.empty());
    CHECK(bad.err == "line 3, member: There is no member “m-099”.\n"
                     "1 of 2 rows have faults. Nothing was stored.\n");
    CHECK(d.table() == before);
}

TEST_CASE("import takes bundles or one table, and says so") {
    const Demo d;
    CHECK(d.run({"import", "--gym", d.gym}).err ==
          "Name what to bring in: --bundle FILE, or --csv FILE.\n");
    CHECK(d.run({"import", "--gym", d.gym, "--bundle", demoFile(), "--csv", d.csv}).code == 2);
    CHECK(d.run({"import", "--gym", d.gym, "--bundle", demoFile(), "--dry-run"}).code == 2);
    CHECK(d.run({"import", "--gym", d.gym, "--csv", "nothing.csv"}).code == 3);
    writeText(d.csv, kHead);
    const std::string none = (d.folder / "none.bwgym").string();
    CHECK(d.run({"import", "--gym", none, "--csv", d.csv}).code == 3);
    CHECK_FALSE(std::filesystem::exists(none));
}

} // namespace bw::test
