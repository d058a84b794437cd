// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_program.hpp"
#include "store/gym_file.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <nlohmann/json.hpp>

namespace bw::test {

using nlohmann::json;

namespace {
struct Tide { // a folder with a small bundle and where a gym file may go
    TempFolder folder;
    std::string bundle = (folder / "gym.json").string(), gym = (folder / "gym.bwgym").string();
    Tide() { writeText(bundle, smallBundle()); }
    [[nodiscard]] Ran run(std::vector<std::string> arguments) const {
        return bwright(folder.path(), std::move(arguments));
    }
};
} // namespace

TEST_CASE("The demo goes into a gym file and comes out as it was, results and all") {
    const Tide t;
    const auto in = t.run({"import", "--gym", t.gym, "--bundle", demoFile(), "--json"});
    REQUIRE(in.code == 0);
    CHECK(json::parse(in.out) == json{{"gym", t.gym},
                                      {"kit", demoBundle().kit.size()},
                                      {"exercises", demoBundle().shelf.size()},
                                      {"months", demoBundle().blocks.size()},
                                      {"members", demoBundle().members.size()},
                                      {"results", demoBundle().results.size()}});
    const auto out = t.run({"export", "--gym", t.gym});
    REQUIRE(out.code == 0);
    auto reading = readBundle(out.out);
    REQUIRE(reading.bundle);
    CHECK(reading.bundle->settings == demoBundle().settings);
    CHECK(reading.bundle->blocks == demoBundle().blocks);
    CHECK(reading.bundle->members == demoBundle().members);
    CHECK(reading.bundle->results.size() == demoBundle().results.size());
    const auto again = t.run({"check", "--gym", t.gym, "--json"});
    CHECK(again.out == t.run({"check", "--bundle", demoFile(), "--json"}).out);
}

TEST_CASE("import into a gym that is there lays over it, all or nothing") {
    const Tide t;
    REQUIRE(t.run({"import", "--gym", t.gym, "--bundle", t.bundle}).code == 0);
    const auto before = t.run({"export", "--gym", t.gym}).out;

    writeText(t.folder / "bad.json", R"({"format": "blockwright-bundle", "version": 1,
        "gym": {"name": "Elsewhere"}, "blocks": [{"month": "2026-10", "visits_per_week": 99}]})");
    const auto bad =
        t.run({"import", "--gym", t.gym, "--bundle", (t.folder / "bad.json").string()});
    CHECK(bad.code == 2);
    CHECK(bad.err.find("/blocks/0/visits_per_week") != std::string::npos);
    CHECK(t.run({"export", "--gym", t.gym}).out == before);

    writeText(t.folder / "good.json", R"({"format": "blockwright-bundle", "version": 1,
        "blocks": [{"month": "2026-10", "title": "Neap"}]})");
    CHECK(t.run({"import", "--gym", t.gym, "--bundle", (t.folder / "good.json").string()}).code ==
          0);
    const auto months = json::parse(t.run({"export", "--gym", t.gym}).out).at("blocks");
    REQUIRE(months.size() == 2);
    CHECK(months[1]["title"] == "Neap");
}

TEST_CASE("import does not write where somebody else writes, and says who") {
    const Tide t;
    REQUIRE(t.run({"import", "--gym", t.gym, "--bundle", t.bundle}).code == 0);
    const auto held = GymFile::open(t.gym);
    REQUIRE((held.ok() && (*held)->writable()));
    const auto ran = t.run({"import", "--gym", t.gym, "--bundle", t.bundle});
    CHECK(ran.code == 3);
    CHECK(ran.err.find("process") != std::string::npos);
    CHECK(t.run({"time", "--gym", t.gym}).code == 0); // reading is no harm
}

TEST_CASE("export --month writes that month alone; --out writes a file, whole or not at all") {
    const Tide t;
    const std::string out = (t.folder / "one.bundle.json").string();
    const auto ran =
        t.run({"export", "--bundle", demoFile(), "--month", "2026-03", "--out", out, "--json"});
    REQUIRE(ran.code == 0);
    CHECK(json::parse(ran.out) == json{{"file", out}});
    const auto months = json::parse(readText(out)).at("blocks");
    REQUIRE(months.size() == 1);
    CHECK(months[0]["month"] == "2026-03");

    const auto nowhere = (t.folder / "no folder" / "one.json").string();
    CHECK(t.run({"export", "--bundle", t.bundle, "--out", nowhere}).code == 3);
    CHECK(t.run({"export", "--bundle", t.bundle, "--json"}).code == 2); // only with --out
    CHECK(t.run({"export", "--bundle", t.bundle, "--out", t.folder.path().string()}).code == 3);
}

TEST_CASE("export writes a month's classes as a calendar") {
    const TempFolder folder;
    const auto run = [&](std::vector<std::string> more) {
        std::vector<std::string> args{"export", "--bundle", demoFile(), "--calendar"};
        args.insert(args.end(), more.begin(), more.end());
        return bwright(folder.path(), args);
    };
    const auto ran = run({"--days", "tue,thu", "--at", "07:15"});
    REQUIRE(ran.code == 0);
    CHECK(ran.out.rfind("BEGIN:VCALENDAR\r\n", 0) == 0);
    CHECK(ran.out.find("DTSTART:20261201T071500\r\n") != std::string::npos); // a Tuesday
    CHECK(ran.out.find("Harbour lights") != std::string::npos);
    CHECK(run({"--at", "7pm"}).code == 2);
    CHECK(run({"--days", "someday"}).code == 2);
    CHECK(run({"--csv"}).code == 2);
}

} // namespace bw::test
